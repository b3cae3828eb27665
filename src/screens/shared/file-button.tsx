import { useRef } from 'react';

/** A button that opens the file picker. */
export function FileButton(props: {
  readonly label: string;
  readonly accept: string;
  readonly main?: boolean;
  readonly onFile: (file: File) => void;
}) {
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={picker}
        className="unseen"
        type="file"
        tabIndex={-1}
        aria-hidden="true"
        aria-label={props.label}
        accept={props.accept}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) props.onFile(file);
        }}
      />
      <button type="button" className={props.main ? 'main' : undefined} onClick={() => picker.current?.click()}>
        {props.label}
      </button>
    </>
  );
}
