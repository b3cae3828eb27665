import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { say } from '../../words/say.ts';

/**
 * The browser's own modal dialog: it keeps the focus inside, gives it back, and closes on Esc.
 * `side` opens it beside the page instead of over its middle.
 */
export function Dialog(props: {
  readonly title: string;
  readonly onClose: () => void;
  readonly side?: boolean;
  readonly children: ReactNode;
}) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // Before the page is painted and, on leaving, before the dialog is taken out: only then is the focus given back.
  useLayoutEffect(() => {
    const dialog = ref.current;
    if (dialog && !dialog.open) dialog.showModal();
    return () => dialog?.close();
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Esc is the keyboard's way; the browser turns it into a cancel event.
    <dialog
      ref={ref}
      className={props.side ? 'panel panel-side' : 'panel'}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
      onClick={(event) => {
        if (event.target === ref.current) props.onClose();
      }}
    >
      <div className="panel-inside">
        <header className="panel-head">
          <h2 id={titleId} className="voice">
            {props.title}
          </h2>
          <button type="button" onClick={props.onClose}>
            {say('Close')}
          </button>
        </header>
        {props.children}
      </div>
    </dialog>
  );
}
