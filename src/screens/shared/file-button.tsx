import { useRef } from 'react';

/** A button that opens the file picker. */
export function FileButton(props: {
  readonly label: string;
  readonly accept: string;
  readonly main?: boolean;
  /** Several at once where `multiple` is set. */
  readonly onFile: (file: File, all: readonly File[]) => void;
  readonly multiple?: boolean;
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
        multiple={props.multiple}
        onChange={(event) => {
          const all = [...(event.target.files ?? [])];
          event.target.value = '';
          if (all[0]) props.onFile(all[0], all);
        }}
      />
      <button type="button" className={props.main ? 'main' : undefined} onClick={() => picker.current?.click()}>
        {props.label}
      </button>
    </>
  );
}
