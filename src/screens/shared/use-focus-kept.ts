import { useLayoutEffect } from 'react';

/**
 * When what had the focus goes away with a change of `shown`, the focus goes to the page and not to nowhere,
 * so that keyboard and screen reader go on from here.
 */
export function useFocusKept(shown: unknown): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: `shown` says when to look.
  useLayoutEffect(() => {
    if (document.activeElement !== document.body) return;
    document.getElementById('page')?.focus({ preventScroll: true });
  }, [shown]);
}
