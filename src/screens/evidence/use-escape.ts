import { useEffect } from 'react';

/** Esc leaves what is open, unless it is meant for a field, a dialog or a term above it. */
export function useEscape(leave: (() => void) | undefined): void {
  useEffect(() => {
    const onKey = ({ key, target }: KeyboardEvent) => {
      const isElsewhere = target instanceof Element && target.closest('input, select, textarea, dialog') !== null;
      if (key === 'Escape' && !isElsewhere && !document.querySelector('dialog[open], :popover-open')) leave?.();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [leave]);
}
