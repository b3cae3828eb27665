/** Turns pages by keys and by swipe. Keys typed into a field or moving a slider are left to it. */
import { useCallback, useEffect, useRef, useState } from 'react';

const SWIPE_PIXELS = 60;

export interface PageTurn {
  readonly page: number;
  readonly goTo: (page: number) => void;
  readonly onPointerDown: (event: {
    clientX: number;
    clientY: number;
    pointerType: string;
    target: EventTarget;
  }) => void;
  readonly onPointerUp: (event: { clientX: number; clientY: number }) => void;
}

const isEntry = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.matches('input:not([type="checkbox"]), select, textarea, [contenteditable]');
/** Space presses what has the focus; only elsewhere does it turn the page. */
const isPressable = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest('button, a, summary, input, label') !== null;

export function usePageTurn(
  pages: number,
  keys: { readonly onClose: () => void; readonly onNotes: () => void },
): PageTurn {
  const [page, setPage] = useState(0);
  const start = useRef<{ x: number; y: number } | null>(null);
  const goTo = useCallback((to: number) => setPage(Math.max(0, Math.min(pages - 1, to))), [pages]);
  const { onClose, onNotes } = keys;

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (isEntry(event.target) && event.key !== 'Escape') return;
      // A dialog over the page has its own keys.
      if (document.querySelector('dialog[open]')) return;
      const turned = turnOf(event, page, pages);
      if (turned !== null) goTo(turned);
      else if (event.key === 'Escape') onClose();
      else if (event.key.toLowerCase() === 'n') onNotes();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [page, pages, goTo, onClose, onNotes]);

  return {
    page,
    goTo,
    onPointerDown: ({ clientX, clientY, pointerType, target }) => {
      start.current = pointerType === 'mouse' || isEntry(target) ? null : { x: clientX, y: clientY };
    },
    onPointerUp: ({ clientX, clientY }) => {
      const from = start.current;
      start.current = null;
      if (!from) return;
      const [across, down] = [clientX - from.x, clientY - from.y];
      if (Math.abs(across) < SWIPE_PIXELS || Math.abs(across) < 2 * Math.abs(down)) return;
      goTo(page + (across < 0 ? 1 : -1));
    },
  };
}

function turnOf(event: KeyboardEvent, page: number, pages: number): number | null {
  switch (event.key) {
    case 'ArrowRight':
    case 'PageDown':
      return page + 1;
    case 'ArrowLeft':
    case 'PageUp':
      return page - 1;
    case ' ':
      return isPressable(event.target) ? null : page + (event.shiftKey ? -1 : 1);
    case 'Home':
      return 0;
    case 'End':
      return pages - 1;
    default:
      return null;
  }
}
