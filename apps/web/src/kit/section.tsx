import type { ReactNode } from 'react';
import { label, type WebCode } from '../words/label.ts';
import styles from './section.module.css';

interface Props {
  /** Also the address of the section within the page. */
  readonly id: string;
  readonly title: WebCode;
  readonly children: ReactNode;
}

/** A titled part of a screen. */
export function Section({ id, title, children }: Props) {
  return (
    <section aria-labelledby={id} className={styles.section}>
      <h2 id={id}>{label(title)}</h2>
      {children}
    </section>
  );
}
