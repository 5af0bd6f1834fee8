import { memo } from 'react';
import type { TestPoint } from '../engine/test-points.ts';
import type { Picture } from '../engine/wished-picture.ts';
import { label, monthShort } from '../words/label.ts';
import styles from './forecast-chart.module.css';
import { bandPath, linePath } from './paths.ts';
import { dayNumber, linear, monthTicks, phTicks } from './time-scale.ts';
import { useWidth } from './use-width.ts';

interface Props {
  readonly forecast: Picture;
  readonly wanted?: { readonly low: number; readonly high: number } | undefined;
  readonly tests: readonly TestPoint[];
  /** Past and planned, positive sweetens. */
  readonly applications: readonly { readonly date: string; readonly currency: number }[];
}

const HEIGHT = 280;
const EDGE = { top: 14, right: 12, bottom: 34, left: 38 };
const BOTTOM = HEIGHT - EDGE.bottom;
const AXIS_STEP = 0.25;
/** Older tests than this would squeeze what is to come. */
const YEARS_BACK = 2;

/** Where the pH is going: most likely line, bands, tests as dots with error bars, applications as arrows. */
export function ForecastChart({ forecast, wanted, tests, applications }: Props) {
  const [ref, width] = useWidth<HTMLDivElement>();
  return (
    <div ref={ref} className={styles.chart}>
      {width === 0 ? null : <Drawing {...{ forecast, wanted, tests, applications }} width={width} />}
    </div>
  );
}

function Drawing({ forecast, wanted, tests, applications, width }: Props & { readonly width: number }) {
  const { dates, median, bands } = forecast;
  const start = dates[0] ?? '';
  const end = dates.at(-1) ?? start;
  const oldest = dayNumber(start) - YEARS_BACK * 365.25;
  const seen = tests.filter((test) => dayNumber(test.date) >= oldest);
  const put = applications.filter(({ date }) => dayNumber(date) >= oldest && date <= end);
  const from = [start, ...seen.map((test) => test.date), ...put.map(({ date }) => date)].sort()[0] ?? start;
  const band80 = bands.find((band) => band.share === 0.8);
  const values = [
    ...(band80 === undefined ? [] : [...band80.low, ...band80.high]),
    ...median,
    ...seen.flatMap(({ mean, sd }) => [mean - sd, mean + sd]),
    ...(wanted === undefined ? [] : [wanted.low, wanted.high]),
  ];
  // In whole steps, so that the axis stands still while a slider moves what is drawn on it.
  const low = Math.floor((Math.min(...values) - 0.15) / AXIS_STEP) * AXIS_STEP;
  const high = Math.ceil((Math.max(...values) + 0.15) / AXIS_STEP) * AXIS_STEP;
  const { x, y } = scales({ low, high, from, end, width });
  const across = dates.map((date) => x(dayNumber(date)));
  const shown = bands.filter((band) => band.share < 0.9).sort((a, b) => b.share - a.share);
  return (
    <svg width={width} height={HEIGHT} aria-hidden="true" focusable="false">
      <Axes {...{ low, high, from, end, width }} wantedLow={wanted?.low} wantedHigh={wanted?.high} />
      {shown.map((band) => (
        <path
          key={band.share}
          d={bandPath(across, band.low.map(y), band.high.map(y))}
          className={band.share > 0.6 ? styles.band80 : styles.band50}
        />
      ))}
      <path d={linePath(across, median.map(y))} className={styles.median} />
      {put.map(({ date, currency }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two may share a day
        <g key={index} transform={`translate(${x(dayNumber(date))} ${BOTTOM})`}>
          <line y2={-(BOTTOM - EDGE.top)} className={styles.applied} />
          <path d={currency > 0 ? 'M0-14 7-2H-7Z' : 'M0-2 7-14H-7Z'} className={styles.arrow} />
        </g>
      ))}
      {seen.map(({ date, mean, sd }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two may share a day
        <g key={index} transform={`translate(${x(dayNumber(date))} 0)`}>
          <path
            d={`M0 ${y(mean - 1.96 * sd)}V${y(mean + 1.96 * sd)}M-5 ${y(mean - 1.96 * sd)}h10M-5 ${y(mean + 1.96 * sd)}h10`}
            className={styles.error}
          />
          <circle cy={y(mean)} r="5.5" className={styles.test} />
        </g>
      ))}
    </svg>
  );
}

interface Frame {
  readonly low: number;
  readonly high: number;
  /** Days, ISO 8601. */
  readonly from: string;
  readonly end: string;
  readonly width: number;
}

const scales = ({ low, high, from, end, width }: Frame) => ({
  x: linear(dayNumber(from) - 10, dayNumber(end), EDGE.left, width - EDGE.right),
  y: linear(low, high, BOTTOM, EDGE.top),
});

interface AxesProps extends Frame {
  readonly wantedLow: number | undefined;
  readonly wantedHigh: number | undefined;
}

/** What stands still while a slider moves: drawn again only when the frame or the wanted range is another. */
const Axes = memo(function Axes({ wantedLow, wantedHigh, ...frame }: AxesProps) {
  const { low, high, from, end, width } = frame;
  const { x, y } = scales(frame);
  return (
    <>
      {wantedLow === undefined || wantedHigh === undefined ? null : (
        <>
          <rect
            x={EDGE.left}
            width={width - EDGE.left - EDGE.right}
            y={y(wantedHigh)}
            height={Math.max(0, y(wantedLow) - y(wantedHigh))}
            className={styles.wanted}
          />
          {[wantedLow, wantedHigh].map((ph) => (
            <line key={ph} x1={EDGE.left} x2={width - EDGE.right} y1={y(ph)} y2={y(ph)} className={styles.edge} />
          ))}
        </>
      )}
      {phTicks(low, high).map((ph) => (
        <g key={ph}>
          <line x1={EDGE.left} x2={width - EDGE.right} y1={y(ph)} y2={y(ph)} className={styles.grid} />
          <text x={EDGE.left - 7} y={y(ph) + 4} className={styles.ph}>
            {ph.toFixed(1)}
          </text>
        </g>
      ))}
      {monthTicks(from, end, Math.max(2, Math.floor((width - 60) / 62))).map((date) => (
        <g key={date}>
          <line x1={x(dayNumber(date))} x2={x(dayNumber(date))} y1={BOTTOM} y2={BOTTOM + 5} className={styles.tick} />
          <text x={x(dayNumber(date))} y={BOTTOM + 21} className={styles.date}>
            {monthShort(date)}
          </text>
        </g>
      ))}
      <line x1={EDGE.left} x2={width - EDGE.right} y1={BOTTOM} y2={BOTTOM} className={styles.tick} />
    </>
  );
});

const samples = [
  { code: 'web.forecast-key-median', shape: <path d="M0 8H28" className={styles.median} /> },
  { code: 'web.forecast-key-50', shape: <path d="M0 2H28V14H0Z" className={styles.sample50} /> },
  { code: 'web.forecast-key-80', shape: <path d="M0 2H28V14H0Z" className={styles.band80} /> },
  {
    code: 'web.forecast-key-wanted',
    shape: (
      <>
        <path d="M0 2H28V14H0Z" className={styles.wanted} />
        <path d="M0 2H28M0 14H28" className={styles.edge} />
      </>
    ),
  },
  {
    code: 'web.forecast-key-test',
    shape: (
      <>
        <path d="M14 0V16M9 0H19M9 16H19" className={styles.error} />
        <circle cx="14" cy="8" r="5" className={styles.test} />
      </>
    ),
  },
  { code: 'web.forecast-key-application', shape: <path d="M14 2 21 14H7Z" className={styles.arrow} /> },
] as const;

/** What the marks of the chart mean. */
export function ForecastKey() {
  return (
    <ul className={styles.key}>
      {samples.map(({ code, shape }) => (
        <li key={code}>
          <svg width="28" height="16" overflow="visible" aria-hidden="true" focusable="false">
            {shape}
          </svg>
          {label(code)}
        </li>
      ))}
    </ul>
  );
}
