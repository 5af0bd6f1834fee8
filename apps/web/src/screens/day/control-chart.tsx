import { qualityLimit } from '@sorrel/almanac/quality-limits';
import type { CheckVerdict } from '@sorrel/engine/day';
import { useWidth } from '../../chart/use-width.ts';
import { label } from '../../words/label.ts';
import styles from './control-chart.module.css';
import { signed } from './signed.ts';

interface Props {
  readonly checks: readonly CheckVerdict[];
  /** How many samples the meter had read at each check. */
  readonly after: readonly number[];
}

const HEIGHT = 250;
const EDGE = { top: 14, right: 14, bottom: 40, left: 46 };
const BOTTOM = HEIGHT - EDGE.bottom;
/** The axis reaches at least so far to either side of nothing, pH; what is further off stands at its edge with its figure. */
const LEAST = 0.25;
const MOST = 0.35;

/**
 * What a meter was off at each check, in order: dots for the buffer, diamonds for reference soil, squares for a second
 * reading; a line for the trend of the buffer, dashes for the limits. The table under it says the same in words.
 */
export function ControlChart(props: Props) {
  const [ref, width] = useWidth<HTMLDivElement>();
  return (
    <figure className={styles.chart}>
      <div ref={ref}>{width === 0 ? null : <Drawing {...props} width={width} />}</div>
      <figcaption>
        <ul className={styles.key}>
          {marks.map((kind) => (
            <li key={kind}>
              <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true" focusable="false">
                <Mark kind={kind} bad={false} />
              </svg>
              {label(`web.day-check-${kind}`)}
            </li>
          ))}
          <li>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true" focusable="false">
              <Mark kind="buffer" bad />
            </svg>
            {label('web.day-chart-bad')}
          </li>
          <li>
            <svg width="28" height="16" aria-hidden="true" focusable="false">
              <path d="M0 8H28" className={styles.trend} />
            </svg>
            {label('web.day-chart-trend')}
          </li>
          <li>
            <svg width="28" height="16" aria-hidden="true" focusable="false">
              <path d="M0 8H28" className={styles.limit} />
            </svg>
            {label('web.day-chart-limit')}
          </li>
        </ul>
      </figcaption>
    </figure>
  );
}

const marks = ['buffer', 'reference', 'duplicate'] as const;

function Drawing({ checks, after, width }: Props & { readonly width: number }) {
  const most = Math.min(MOST, Math.max(LEAST, ...checks.map(({ off }) => Math.abs(off) + 0.04)));
  const step = (width - EDGE.left - EDGE.right) / Math.max(1, checks.length);
  const x = (index: number) => EDGE.left + (index + 0.5) * step;
  const within = (off: number) => Math.max(-most, Math.min(most, off));
  const y = (off: number) => EDGE.top + ((most - within(off)) / (2 * most)) * (BOTTOM - EDGE.top);
  const { limit } = qualityLimit('buffer');
  // The trend starts anew where the meter was calibrated, so its line is broken there.
  const runs: string[] = [];
  let pen = 'M';
  checks.forEach(({ point, sound }, index) => {
    if (point === undefined) return;
    runs.push(`${pen}${x(index).toFixed(1)} ${y(point.trend).toFixed(1)}`);
    pen = sound ? 'L' : 'M';
  });
  const ticks = [-0.2, -0.1, 0, 0.1, 0.2].filter((tick) => Math.abs(tick) < most);
  const every = Math.ceil(checks.length / Math.max(1, Math.floor((width - EDGE.left) / 34)));
  return (
    <svg width={width} height={HEIGHT} aria-hidden="true" focusable="false">
      {ticks.map((tick) => (
        <g key={tick}>
          <line
            x1={EDGE.left}
            x2={width - EDGE.right}
            y1={y(tick)}
            y2={y(tick)}
            className={tick === 0 ? styles.zero : Math.abs(tick) === limit ? styles.limit : styles.rule}
          />
          <text x={EDGE.left - 8} y={y(tick) + 4} textAnchor="end" className={styles.text}>
            {tick === 0 ? '0' : `${tick > 0 ? '+' : '−'}${Math.abs(tick).toFixed(1)}`}
          </text>
        </g>
      ))}
      {checks.map(({ point }, index) =>
        point === undefined ? null : (
          // Limits of the trend at this check.
          <path
            key={checks[index]?.id}
            d={[point.low, point.high].map((edge) => `M${x(index) - step * 0.45} ${y(edge)}h${step * 0.9}`).join('')}
            className={styles.band}
          />
        ),
      )}
      <path d={runs.join('')} className={styles.trend} />
      {checks.map(({ id, check, off, sound }, index) => (
        <g key={id} transform={`translate(${x(index).toFixed(1)} ${y(off).toFixed(1)})`}>
          <Mark kind={check} bad={!sound} />
          {Math.abs(off) > most ? (
            <text x={13} y={4} className={styles.text}>
              {signed(off)}
            </text>
          ) : null}
        </g>
      ))}
      {checks.map(({ id }, index) =>
        index % every === 0 ? (
          <text key={id} x={x(index)} y={BOTTOM + 16} textAnchor="middle" className={styles.text}>
            {after[index]}
          </text>
        ) : null,
      )}
      <text x={(EDGE.left + width - EDGE.right) / 2} y={HEIGHT - 6} textAnchor="middle" className={styles.text}>
        {label('web.day-chart-after')}
      </text>
    </svg>
  );
}

function Mark({ kind, bad }: { readonly kind: (typeof marks)[number]; readonly bad: boolean }) {
  return (
    <>
      {kind === 'buffer' ? (
        <circle r="4.5" className={styles.solid} />
      ) : (
        <path d={kind === 'reference' ? 'M0-6 6 0 0 6-6 0Z' : 'M-4.5-4.500h9v9h-9Z'} className={styles.open} />
      )}
      {bad ? <circle r="9" className={styles.ring} /> : null}
    </>
  );
}
