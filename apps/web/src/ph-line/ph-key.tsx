import { label } from '../words/label.ts';
import styles from './ph-line.module.css';
import { PhRow } from './ph-row.tsx';
import { phScale } from './ph-scale.ts';

const scale = phScale([]);
const parts = [
  { code: 'web.ph-key-now', marks: { low: 9, high: 0, present: { mean: 6, sd: 0.35 } } },
  { code: 'web.ph-key-wanted', marks: { low: 5, high: 7 } },
  { code: 'web.ph-key-plan', marks: { low: 9, high: 0, present: { mean: 4.8, sd: 0.001 }, aim: 7.2 } },
] as const;

/** What the marks of the pH line mean. */
export function PhKey() {
  return (
    <ul className={styles.key}>
      {parts.map(({ code, marks }) => (
        <li key={code}>
          <span className={styles.sample}>
            <PhRow marks={marks} scale={{ ...scale, ticks: [] }} />
          </span>
          {label(code)}
        </li>
      ))}
    </ul>
  );
}
