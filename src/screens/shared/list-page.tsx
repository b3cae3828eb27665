import type { ReactNode } from 'react';

/** A page beside those of a household: the mark, the ways on, then what it is about; `wide` where it is a table. */
export function ListPage(props: {
  readonly links: readonly (readonly [address: string, name: string])[];
  readonly wide?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <div className="list-screen">
      <header className="list-head">
        <p className="mark voice">Plainwarmth</p>
        {props.links.map(([address, name]) => (
          <a key={address} href={address}>
            {name}
          </a>
        ))}
      </header>
      <main className={props.wide ? 'list-page' : 'list-page settings'}>{props.children}</main>
    </div>
  );
}
