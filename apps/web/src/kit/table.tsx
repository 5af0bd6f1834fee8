import type { ReactNode } from 'react';
import { label, type WebCode } from '../words/label.ts';
import styles from './table.module.css';

interface Props {
  readonly caption: string;
  readonly columns: readonly WebCode[];
  /** The first cell of a row is its heading. */
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
  /** Columns from the second on hold figures. */
  readonly figures?: boolean;
}

/** A table that scrolls within itself on a narrow screen. */
export function Table({ caption, columns, rows, figures = false }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a keyboard must be able to scroll what does not fit
    <section className={styles.scroll} aria-label={caption} tabIndex={0}>
      <table className={`${styles.table} ${figures ? styles.figures : ''}`}>
        <caption className="hidden-text">{caption}</caption>
        <thead>
          <tr>
            {columns.map((code) => (
              <th key={code} scope="col">
                {label(code)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, cells: [head, ...rest] }) => (
            <tr key={key}>
              <th scope="row">{head}</th>
              {rest.map((cell, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: cells keep their column
                <td key={index}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
