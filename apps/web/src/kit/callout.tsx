import type { ReactNode } from 'react';
import styles from './callout.module.css';
import { Icon } from './icon.tsx';

interface Props {
  readonly kind?: 'note' | 'care' | 'wrong';
  readonly title?: string;
  readonly children: ReactNode;
}

/** Something to notice: a note, a caution, or an entry that is wrong. Told by sign and title, not by colour alone. */
export function Callout({ kind = 'note', title, children }: Props) {
  return (
    <div className={`${styles.callout} ${styles[kind]}`}>
      {kind === 'note' ? null : <Icon name="care" />}
      <div className={styles.words}>
        {title === undefined ? null : <p className={styles.title}>{title}</p>}
        {children}
      </div>
    </div>
  );
}
