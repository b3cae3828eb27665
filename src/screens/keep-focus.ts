/**
 * Keyboard and screen reader go on from where they were. A form that closes or a button that waits takes the focus
 * away and leaves it nowhere: then it goes back to the button once that can be pressed again, else to the page.
 * Answers how to stop.
 */
export function keepFocus(root: HTMLElement): () => void {
  let last: Element | null = null;
  const isDisabled = (element: Element) => element.matches(':disabled');

  const onFocusIn = (event: FocusEvent) => {
    last = event.target instanceof Element ? event.target : null;
  };
  // Whoever clicks beside everything means to leave; what was taken away or disabled did not.
  const onFocusOut = ({ target, relatedTarget }: FocusEvent) => {
    if (relatedTarget !== null || !(target instanceof Element)) return;
    queueMicrotask(() => {
      if (target === last && target.isConnected && !isDisabled(target)) last = null;
    });
  };
  const mend = () => {
    const { activeElement, body } = document;
    if (last === null || (activeElement !== null && activeElement !== body)) return;
    if (last.isConnected && isDisabled(last)) return;
    const stands = last.isConnected ? last : root.querySelector('main');
    if (!(stands instanceof HTMLElement || stands instanceof SVGElement)) return;
    if (stands.matches('main:not([tabindex])')) stands.setAttribute('tabindex', '-1');
    stands.focus({ preventScroll: true });
  };
  const watch = new MutationObserver(mend);
  watch.observe(root, { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled'] });
  document.addEventListener('focusin', onFocusIn);
  document.addEventListener('focusout', onFocusOut);
  return () => {
    watch.disconnect();
    document.removeEventListener('focusin', onFocusIn);
    document.removeEventListener('focusout', onFocusOut);
  };
}
