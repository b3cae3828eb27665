/** A label, an entry, a note under it and a refusal in words: the frame of every field. */
import type { ReactNode } from 'react';
import { TermMark } from './glossary-page.tsx';

export interface FieldIds {
  readonly entry: string;
  readonly note: string;
  readonly refusal: string;
}

export const fieldIds = (id: string): FieldIds => ({ entry: id, note: `${id}-note`, refusal: `${id}-refusal` });

export function describedBy(ids: FieldIds, hasNote: boolean, hasRefusal: boolean): string | undefined {
  const parts = [...(hasRefusal ? [ids.refusal] : []), ...(hasNote ? [ids.note] : [])];
  return parts.length > 0 ? parts.join(' ') : undefined;
}

export function Field(props: {
  readonly ids: FieldIds;
  readonly label: string;
  readonly note?: ReactNode;
  readonly refusal?: string | null;
  readonly children: ReactNode;
}) {
  return (
    <div className="field">
      <div className="field-head">
        <label className="field-label" htmlFor={props.ids.entry}>
          {props.label}
        </label>
        <TermMark label={props.label} />
      </div>
      <div className="field-entry">{props.children}</div>
      {props.refusal ? (
        <p className="field-refusal" id={props.ids.refusal} role="alert">
          {props.refusal}
        </p>
      ) : null}
      {props.note ? (
        <p className="field-note" id={props.ids.note}>
          {props.note}
        </p>
      ) : null}
    </div>
  );
}
