/** Addresses of the screens, kept after the # so that back and forward work and both hosts serve one page. */

/**
 * The seven stages of the thread, the readings at the plant behind the bill check, and the walk-through. Behind each
 * stands a component without props, named in `stage-view.tsx`.
 */
export const STAGES = ['evidence', 'heat', 'machine', 'prices', 'cost', 'estimate', 'check', 'site', 'walk'] as const;
export type Stage = (typeof STAGES)[number];

export type Route =
  | { readonly screen: 'list' }
  | { readonly screen: 'settings' }
  | { readonly screen: 'help' | 'copies' | 'privacy' }
  | { readonly screen: 'household'; readonly id: string; readonly stage: Stage };

export function parseRoute(hash: string): Route {
  const [screen, id, stage] = hash.replace(/^#?\/?/, '').split('/');
  if (screen === 'settings' || screen === 'help' || screen === 'copies' || screen === 'privacy') return { screen };
  if (screen === 'household' && id) {
    const known = STAGES.find((name) => name === stage);
    return { screen: 'household', id: decodeURIComponent(id), stage: known ?? 'evidence' };
  }
  return { screen: 'list' };
}

export function formatRoute(route: Route): string {
  if (route.screen === 'household') return `#/household/${encodeURIComponent(route.id)}/${route.stage}`;
  return route.screen === 'list' ? '#/' : `#/${route.screen}`;
}
