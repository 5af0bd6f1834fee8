import { label } from '../words/label.ts';
import styles from './memory.module.css';

/** Marks a figure that nobody could look up. */
export function Memory() {
  return <span className={styles.memory}>{label('web.from-memory')}</span>;
}
