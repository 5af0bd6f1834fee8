import { label } from '../words/label.ts';
import styles from './ph-line.module.css';
import type { PhScale } from './ph-scale.ts';

/** Class of the strip between a whole pH and the next: bronze for sour, teal for sweet. */
const tone = (ph: number): string | undefined =>
  ph < 4
    ? styles.sour3
    : ph < 5
      ? styles.sour2
      : ph < 6
        ? styles.sour1
        : ph < 7
          ? styles.even
          : ph < 8
            ? styles.sweet1
            : ph < 9
              ? styles.sweet2
              : styles.sweet3;

/** The numbers over the rows, with the sour and the sweet end named. */
export function PhAxis({ scale }: { readonly scale: PhScale }) {
  const { ticks, low, high } = scale;
  return (
    <svg className={styles.axis} width="100%" height="46" aria-hidden="true" focusable="false">
      {ticks.slice(0, -1).map((ph) => (
        <rect
          key={ph}
          x={`${scale.at(ph)}%`}
          width={`${scale.at(ph + 1) - scale.at(ph)}%`}
          y="38"
          height="6"
          className={tone(ph)}
        />
      ))}
      {ticks.map((ph) => (
        <text key={ph} x={`${scale.at(ph)}%`} y="32" className={styles.number}>
          {ph}
        </text>
      ))}
      <text x={`${scale.at(low)}%`} y="12" className={styles.low}>
        {label('web.ph-sour')}
      </text>
      <text x="50%" y="12" className={styles.unit}>
        {label('web.ph')}
      </text>
      <text x={`${scale.at(high)}%`} y="12" className={styles.high}>
        {label('web.ph-sweet')}
      </text>
    </svg>
  );
}
