import type { ReactNode } from 'react';

/** A page that says what stopped us and what to do; never a blank window. */
export function Stopped(props: {
  readonly sentence: string;
  readonly detail: string;
  readonly remedy?: string;
  readonly children?: ReactNode;
}) {
  return (
    <main className="stopped" role="alert">
      <h1 className="voice">{props.sentence}</h1>
      <p>{props.detail}</p>
      {props.remedy ? <p>{props.remedy}</p> : null}
      <div className="actions">{props.children}</div>
    </main>
  );
}
