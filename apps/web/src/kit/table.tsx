// biome-ignore-all lint/a11y/noRedundantRoles: drawn as blocks on a phone, cells would lose their meaning in some browsers
import type { ReactNode } from 'react';
import { label, type WebCode } from '../words/label.ts';
import styles from './table.module.css';

interface Props {
  readonly caption: string;
  readonly columns?: readonly WebCode[];
  /** Headings already in words, where they hold figures or dates. */
  readonly head?: readonly string[];
  /** The first cell of a row is its heading. */
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
  /** Columns from the second on hold figures. */
  readonly figures?: boolean;
  /** On a narrow screen each row becomes a card, with the column's name before each cell. */
  readonly cards?: boolean;
}

/** A table that scrolls within itself on a narrow screen. */
export function Table({
  caption,
  columns = [],
  head = columns.map((code) => label(code)),
  rows,
  figures = false,
  cards = false,
}: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex lint/a11y/useSemanticElements: a keyboard must be able to scroll what does not fit
    <div role="group" className={`${styles.scroll} ${cards ? styles.cards : ''}`} aria-label={caption} tabIndex={0}>
      <table role="table" className={`${styles.table} ${figures ? styles.figures : ''}`}>
        <caption className="hidden-text">{caption}</caption>
        <thead role="rowgroup">
          <tr role="row">
            {head.map((text) => (
              <th key={text} scope="col" role="columnheader">
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map(({ key, cells: [first, ...rest] }) => (
            <tr key={key} role="row">
              <th scope="row" role="rowheader">
                {first}
              </th>
              {rest.map((cell, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: cells keep their column
                <td key={index} role="cell" data-head={head[index + 1]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
