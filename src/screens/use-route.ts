import { useSyncExternalStore } from 'react';
import { formatRoute, parseRoute, type Route } from './routes.ts';

function subscribe(notify: () => void): () => void {
  window.addEventListener('hashchange', notify);
  return () => window.removeEventListener('hashchange', notify);
}

export function useRoute(): Route {
  return parseRoute(useSyncExternalStore(subscribe, () => window.location.hash));
}

export function go(route: Route): void {
  window.location.hash = formatRoute(route);
}
