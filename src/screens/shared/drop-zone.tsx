import { type DragEvent, type ReactNode, useId, useRef, useState } from 'react';

/** A place to drop files on, with a button that opens the file picker for those who do not drag. */
export function DropZone(props: {
  readonly label: string;
  readonly accept: string;
  readonly onFiles: (files: readonly File[]) => void;
  readonly children?: ReactNode;
  readonly main?: boolean;
}) {
  const [over, setOver] = useState(false);
  const picker = useRef<HTMLInputElement>(null);
  const id = useId();
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const files = [...event.dataTransfer.files];
    if (files.length > 0) props.onFiles(files);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is an extra; the button inside does the same.
    <div
      className={over ? 'drop drop-over' : 'drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div className="drop-words">{props.children}</div>
      <label className="unseen" htmlFor={id}>
        {props.label}
      </label>
      <input
        ref={picker}
        id={id}
        className="unseen"
        type="file"
        tabIndex={-1}
        accept={props.accept}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          if (files.length > 0) props.onFiles(files);
        }}
      />
      <button type="button" className={props.main ? 'main' : undefined} onClick={() => picker.current?.click()}>
        {props.label}
      </button>
    </div>
  );
}
