import type { Place, Recommendation } from '@sorrel/engine/plan';
import { useGarden } from '../../app/garden-context.tsx';
import { Icon, type IconName } from '../../kit/icon.tsx';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { PhRow } from '../../ph-line/ph-row.tsx';
import { phScale } from '../../ph-line/ph-scale.ts';
import { chance, day, label, listed } from '../../words/label.ts';
import { marksOf } from '../garden/verdict.ts';
import styles from './decision.module.css';

const sign: Readonly<Record<Recommendation['decision'], IconName>> = {
  'leave alone': 'fine',
  raise: 'up',
  lower: 'down',
  'not practical': 'leaf',
  'grow something else': 'leaf',
  'find out first': 'look',
};

/** The answer in plain words, its picture, and the few figures it rests on. */
export function Decision({ place, plan }: { readonly place: Place; readonly plan: Recommendation }) {
  const { speaker } = useGarden();
  const said = [...new Set(plan.reasons.map(speaker.say))];
  const [headline, ...further] = said;
  const marks = marksOf(plan);
  const scale = phScale([marks]);
  return (
    <div className={styles.decision}>
      <p className={styles.headline}>
        <span className={styles.sign}>
          <Icon name={sign[plan.decision]} size={30} />
        </span>
        <span>{headline}</span>
      </p>
      {further.length === 0 ? null : (
        <div className={styles.further}>
          {further.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </div>
      )}
      <div className={styles.line}>
        <PhAxis scale={scale} />
        <PhRow marks={marks} scale={scale} />
      </div>
      <Facts place={place} plan={plan} />
    </div>
  );
}

function Facts({ place, plan }: { readonly place: Place; readonly plan: Recommendation }) {
  const { speaker } = useGarden();
  const { present, target, requirement, overshootChance } = plan;
  const perVolume = place.kind === 'container';
  const dimension = perVolume ? 'massPerVolume' : 'massPerArea';
  const figures =
    requirement === undefined
      ? undefined
      : {
          amount: speaker.rough(Math.abs(requirement.best), dimension),
          low: speaker.rough(Math.min(Math.abs(requirement.low), Math.abs(requirement.high)), dimension),
          high: speaker.rough(Math.max(Math.abs(requirement.low), Math.abs(requirement.high)), dimension),
        };
  return (
    <dl className={styles.facts}>
      <div>
        <dt>{label('web.place-now')}</dt>
        {present === undefined ? (
          <dd>{label('web.table-unknown')}</dd>
        ) : (
          <dd>
            {label('web.place-now-text', {
              ph: speaker.ph(present.mean),
              spread: speaker.ph(Math.max(0.1, 1.96 * present.sd)),
            })}
            <span className={styles.soft}>{day(present.date)}</span>
          </dd>
        )}
      </div>
      {target.conflicts.length > 0 ? null : (
        <div>
          <dt>{label('web.place-wanted')}</dt>
          <dd>
            {label('web.place-wanted-text', {
              low: speaker.ph(target.low),
              high: speaker.ph(target.high),
              aim: speaker.ph(target.aim),
            })}
            <span className={styles.soft}>{whom(place, plan)}</span>
          </dd>
        </div>
      )}
      {figures === undefined || plan.applications.length === 0 ? null : (
        <div>
          <dt>{label('web.place-need')}</dt>
          <dd>
            {label((requirement?.best ?? 0) < 0 ? 'web.place-need-acid' : 'web.place-need-lime', figures)}
            {overshootChance === undefined ? null : (
              <span className={styles.soft}>{label('web.place-risk', { chance: chance(overshootChance) })}</span>
            )}
          </dd>
        </div>
      )}
    </dl>
  );
}

function whom(place: Place, { target }: Recommendation): string {
  if (target.basis === 'own figures') return label('web.place-own');
  if (target.basis === 'default') return label('web.place-general');
  const names = place.plants.map(
    ({ name, basis }) => name + (basis === 'memory' ? ` (${label('web.from-memory')})` : ''),
  );
  return label('web.place-for', { plants: listed(names) });
}
