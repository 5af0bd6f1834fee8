import { useMemo } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Icon } from '../../kit/icon.tsx';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { PhRow } from '../../ph-line/ph-row.tsx';
import { phScale } from '../../ph-line/ph-scale.ts';
import styles from './garden-line.module.css';
import { figuresOf, marksOf, needIcon, verdictOf } from './verdict.ts';

interface Props {
  /** Places shown, in order. */
  readonly places: readonly PlannedPlace[];
  /** All places of the garden, so that the axis stays where it is while she filters. */
  readonly all: readonly PlannedPlace[];
  readonly day: string;
}

/** The signature picture: every place a row on one pH axis; each row leads to its place. */
export function GardenLine({ places, all, day }: Props) {
  const { speaker } = useGarden();
  const scale = useMemo(() => phScale(all.flatMap(({ plan }) => (plan === undefined ? [] : [marksOf(plan)]))), [all]);
  return (
    <div className={styles.line}>
      <div className={styles.axis}>
        <div className={styles.picture}>
          <PhAxis scale={scale} />
        </div>
      </div>
      <ol className={styles.rows}>
        {places.map((planned) => {
          const { plan } = planned;
          const verdict = verdictOf(planned, day, speaker);
          return (
            <li key={planned.id}>
              <Link href={`/place/${planned.id}`} className={styles.row}>
                <span className={styles.name}>{planned.name}</span>
                <span className={styles.figures}>{plan === undefined ? null : figuresOf(plan, speaker)}</span>
                <span className={styles.picture}>
                  {plan === undefined ? null : <PhRow marks={marksOf(plan)} scale={scale} />}
                </span>
                <span className={styles.verdict} data-need={verdict.need}>
                  <Icon name={needIcon[verdict.need]} size={20} />
                  <span>
                    {verdict.text}
                    {verdict.when === undefined ? null : <span className={styles.when}> {verdict.when}</span>}
                  </span>
                </span>
              </Link>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
