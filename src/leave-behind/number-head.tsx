import type { ReactNode } from 'react';

/** Head of a column of numbers. */
export function NumberHead({ children }: { readonly children: ReactNode }) {
  return (
    <th scope="col" className="number">
      {children}
    </th>
  );
}
