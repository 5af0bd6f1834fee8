import type { ReactNode } from 'react';
import styles from './tick.module.css';

interface Props {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ReactNode;
}

/** A tick box with its words, the whole line a target. */
export function Tick({ checked, onChange, children }: Props) {
  return (
    <label className={styles.tick}>
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      <span>{children}</span>
    </label>
  );
}
