import {
  type Danger,
  type Nutrient,
  nutrientName,
  type PlaceNutrients,
  type UsableLine,
  usablePicture,
} from '@sorrel/engine/nutrients';
import type { Place } from '@sorrel/engine/plan';
import { useMemo } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import page from '../../kit/page.module.css';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import type { PhScale } from '../../ph-line/ph-scale.ts';
import { label } from '../../words/label.ts';
import styles from './usable.module.css';

const HEIGHT = 40;
const TOP = 5;
const BOTTOM = HEIGHT - 3;

interface Props {
  readonly found: PlaceNutrients;
  readonly medium: Place['medium'];
}

/**
 * Each nutrient as a small line along the one pH axis, with the grey band of how sure it is, and uprights for the pH of
 * today and of the plan. Shapes and words carry it, not colour; the words beside each lane say what it shows.
 */
export function UsableLines({ found, medium }: Props) {
  const { speaker } = useGarden();
  const { today, planned } = found;
  const picture = useMemo(() => usablePicture(medium), [medium]);
  const { low, high } = picture;
  const scale: PhScale = {
    low,
    high,
    ticks: Array.from({ length: high - low + 1 }, (_, index) => low + index),
    at: (ph) => (Math.min(high, Math.max(low, ph)) - low) * (100 / (high - low)),
  };
  const words = new Map<Nutrient | Danger, string>();
  for (const line of found.lines) {
    const now = speaker.say({ code: `nutrients.word-${line.today.word}` });
    const then = line.planned === undefined ? now : speaker.say({ code: `nutrients.word-${line.planned.word}` });
    words.set(line.nutrient, now === then ? now : label('web.usable-then', { today: now, planned: then }));
  }
  for (const { danger, word } of found.dangers)
    words.set(danger, speaker.say({ code: `nutrients.danger-word-${word}` }));
  const name = ({ subject, danger }: UsableLine) =>
    danger ? speaker.say({ code: `nutrients.name-${subject as Danger}` }) : nutrientName(subject);
  return (
    <figure className={styles.figure}>
      <figcaption className={page.small}>
        {speaker.say({ code: `nutrients.picture-series-${found.series}` })}
      </figcaption>
      <ul className={styles.key} aria-hidden="true">
        <Key text={label('web.usable-picture-key-line')}>
          <path d="M2 16 C14 2 26 2 46 12" className={styles.curve} />
        </Key>
        <Key text={label('web.usable-picture-key-risk')}>
          <path d="M2 4 L24 16 L46 17" className={styles.risk} />
        </Key>
        <Key text={label('web.usable-picture-key-band')}>
          <rect x="2" y="4" width="44" height="12" className={styles.band} />
        </Key>
        <Key text={label('web.usable-picture-key-today')}>
          <line x1="24" x2="24" y1="0" y2="20" className={styles.today} />
        </Key>
        {planned === undefined ? null : (
          <Key text={label('web.usable-picture-key-planned')}>
            <line x1="24" x2="24" y1="0" y2="20" className={styles.planned} />
          </Key>
        )}
      </ul>
      <div className={styles.axis}>
        <PhAxis scale={scale} />
      </div>
      <ul className={styles.lanes}>
        {picture.lines.map((line) => (
          <li key={line.subject}>
            <span className={styles.subject}>{name(line)}</span>
            <span className={styles.said}>{words.get(line.subject)}</span>
            <span className={styles.lane}>
              <Lane line={line} scale={scale} today={today} planned={planned} />
            </span>
          </li>
        ))}
      </ul>
    </figure>
  );
}

function Key({ text, children }: { readonly text: string; readonly children: React.ReactNode }) {
  return (
    <li>
      <svg width="48" height="20" viewBox="0 0 48 20" role="presentation">
        {children}
      </svg>
      {text}
    </li>
  );
}

interface LaneProps {
  readonly line: UsableLine;
  readonly scale: PhScale;
  readonly today: number;
  readonly planned: number | undefined;
}

/** Stretches with the window; strokes keep their width. */
function Lane({ line: { points, danger }, scale, today, planned }: LaneProps) {
  const y = (value: number) => BOTTOM - value * (BOTTOM - TOP);
  const path = (list: readonly (readonly [number, number])[]) =>
    list.map(([ph, value], index) => `${index === 0 ? 'M' : 'L'}${scale.at(ph)} ${y(value)}`).join('');
  const band = [
    ...points.map(({ ph, high }) => [ph, high] as const),
    ...[...points].reverse().map(({ ph, low }) => [ph, low] as const),
  ];
  return (
    <svg width="100%" height={HEIGHT} aria-hidden="true" focusable="false" className={styles.drawing}>
      <svg width="100%" height={HEIGHT} viewBox={`0 0 100 ${HEIGHT}`} preserveAspectRatio="none" role="presentation">
        {scale.ticks.map((ph) => (
          <line key={ph} x1={scale.at(ph)} x2={scale.at(ph)} y1="0" y2={HEIGHT} className={styles.grid} />
        ))}
        <path d={`${path(band)}Z`} className={styles.band} />
        <line x1="0" x2="100" y1={BOTTOM} y2={BOTTOM} className={styles.floor} />
        <path d={path(points.map(({ ph, value }) => [ph, value]))} className={danger ? styles.risk : styles.curve} />
        <line x1={scale.at(today)} x2={scale.at(today)} y1="0" y2={HEIGHT} className={styles.today} />
        {planned === undefined ? null : (
          <line x1={scale.at(planned)} x2={scale.at(planned)} y1="0" y2={HEIGHT} className={styles.planned} />
        )}
      </svg>
    </svg>
  );
}
