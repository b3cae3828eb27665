import { type DragEvent, type ReactNode, useState } from 'react';
import { FileButton } from './file-button.tsx';

/** A place to drop files on, with a button that opens the file picker for those who do not drag. */
export function DropZone(props: {
  readonly label: string;
  readonly accept: string;
  readonly onFiles: (files: readonly File[]) => void;
  readonly children?: ReactNode;
  readonly main?: boolean;
  /** Whether the picker gives several files at once. */
  readonly multiple?: boolean;
}) {
  const [over, setOver] = useState(false);
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
      <FileButton
        label={props.label}
        accept={props.accept}
        {...(props.main ? { main: true } : {})}
        {...(props.multiple ? { multiple: true } : {})}
        onFile={(_, all) => props.onFiles(all)}
      />
    </div>
  );
}
