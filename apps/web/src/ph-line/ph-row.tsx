import styles from './ph-line.module.css';
import { type PhMarks, type PhScale, rowGeometry } from './ph-scale.ts';

const HEIGHT = 48;
const MIDDLE = HEIGHT / 2;
const percent = (share: number) => `${share}%`;

/**
 * One place on the pH line: today as a dot, smeared by its uncertainty; a bracket for what the plants want; an arrow
 * for the plan. Shapes alone carry it, so that it survives a photocopier. What it shows must also stand beside it in words.
 */
export function PhRow({ marks, scale }: { readonly marks: PhMarks; readonly scale: PhScale }) {
  const { smears, mark, wanted, arrow } = rowGeometry(marks, scale);
  return (
    <svg className={styles.row} width="100%" height={HEIGHT} aria-hidden="true" focusable="false">
      {scale.ticks.map((ph) => (
        <line
          key={ph}
          x1={percent(scale.at(ph))}
          x2={percent(scale.at(ph))}
          y1="0"
          y2={HEIGHT}
          className={styles.grid}
        />
      ))}
      {wanted === undefined ? null : (
        <>
          <rect
            x={percent(wanted.from)}
            width={percent(wanted.width)}
            y="7"
            height={HEIGHT - 14}
            className={styles.wanted}
          />
          <Bracket at={wanted.from} turn={1} />
          <Bracket at={wanted.from + wanted.width} turn={-1} />
        </>
      )}
      {smears.map(({ share, from, width }) => (
        <rect
          key={share}
          x={percent(from)}
          width={percent(width)}
          y={MIDDLE - 8}
          height="16"
          className={styles.smear}
        />
      ))}
      {arrow === undefined ? null : (
        <>
          <line x1={percent(arrow.from)} x2={percent(arrow.to)} y1={MIDDLE} y2={MIDDLE} className={styles.shaft} />
          <svg x={percent(arrow.to)} y={MIDDLE} overflow="visible" role="presentation">
            <path d={arrow.way === 'right' ? 'M1 0-11-7-11 7Z' : 'M-1 0 11-7 11 7Z'} className={styles.head} />
          </svg>
        </>
      )}
      {mark === undefined ? null : <circle cx={percent(mark)} cy={MIDDLE} r="7" className={styles.mark} />}
    </svg>
  );
}

function Bracket({ at, turn }: { readonly at: number; readonly turn: 1 | -1 }) {
  return (
    <svg x={percent(at)} overflow="visible" role="presentation">
      <path d={`M${7 * turn} 6H0V${HEIGHT - 6}H${7 * turn}`} className={styles.bracket} />
    </svg>
  );
}
