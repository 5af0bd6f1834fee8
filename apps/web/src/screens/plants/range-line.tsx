import type { PhScale } from '../../ph-line/ph-scale.ts';
import styles from './range-line.module.css';

interface Props {
  readonly scale: PhScale;
  /** Drawn as a bracket; left out where no best range is published. */
  readonly best?: { readonly low: number; readonly high: number } | undefined;
  /** Drawn as a thin line with ends; open where no end is published. */
  readonly stands?: { readonly low?: number | undefined; readonly high?: number | undefined } | undefined;
  readonly small?: boolean;
}

const percent = (share: number) => `${share}%`;

/** A plant's range on the pH line: shapes alone carry it, and it stands beside its words. */
export function RangeLine({ scale, best, stands, small = false }: Props) {
  const height = small ? 24 : 40;
  const middle = height / 2;
  const from = scale.at(stands?.low ?? best?.low ?? scale.low);
  const to = scale.at(stands?.high ?? best?.high ?? scale.high);
  const half = middle - 4;
  return (
    <svg className={styles.line} width="100%" height={height} aria-hidden="true" focusable="false">
      {scale.ticks.map((ph) => (
        <line
          key={ph}
          x1={percent(scale.at(ph))}
          x2={percent(scale.at(ph))}
          y1="0"
          y2={height}
          className={styles.grid}
        />
      ))}
      {stands === undefined ? null : (
        <>
          <line x1={percent(from)} x2={percent(to)} y1={middle} y2={middle} className={styles.stands} />
          {[stands.low === undefined ? undefined : from, stands.high === undefined ? undefined : to].map((at, index) =>
            at === undefined ? null : (
              <line
                // biome-ignore lint/suspicious/noArrayIndexKey: a low end and a high one
                key={index}
                x1={percent(at)}
                x2={percent(at)}
                y1={middle - 5}
                y2={middle + 5}
                className={styles.stands}
              />
            ),
          )}
        </>
      )}
      {best === undefined ? null : (
        <>
          <rect
            x={percent(scale.at(best.low))}
            width={percent(scale.at(best.high) - scale.at(best.low))}
            y={4}
            height={height - 8}
            className={styles.best}
          />
          <svg x={percent(scale.at(best.low))} y={middle} overflow="visible" role="presentation">
            <path d={`M6 ${-half}H0V${half}H6`} className={styles.bracket} />
          </svg>
          <svg x={percent(scale.at(best.high))} y={middle} overflow="visible" role="presentation">
            <path d={`M-6 ${-half}H0V${half}H-6`} className={styles.bracket} />
          </svg>
        </>
      )}
    </svg>
  );
}
