import { type ReactNode, useState } from 'react';
import styles from './disclosure.module.css';

interface Props {
  readonly title: ReactNode;
  /** Drawn only when first opened. */
  readonly children: () => ReactNode;
}

/** What stands one tap below. */
export function Disclosure({ title, children }: Props) {
  const [seen, setSeen] = useState(false);
  return (
    <details
      className={styles.disclosure}
      onToggle={(event) => {
        if (event.currentTarget.open) setSeen(true);
      }}
    >
      <summary>{title}</summary>
      {seen ? <div className={styles.body}>{children()}</div> : null}
    </details>
  );
}
