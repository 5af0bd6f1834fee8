import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Icon } from '../../kit/icon.tsx';
import { label } from '../../words/label.ts';
import { needOf } from './need.ts';
import styles from './next-work.module.css';
import { needIcon, verdictOf } from './verdict.ts';

const MOST = 3;

/** The few things that come first; the places are already in the order of their need. */
export function NextWork({ places, day }: { readonly places: readonly PlannedPlace[]; readonly day: string }) {
  const { speaker } = useGarden();
  const first = places.filter((place) => !['fine', 'choose'].includes(needOf(place, day))).slice(0, MOST);
  return (
    <section aria-labelledby="next" className={styles.next}>
      <h2 id="next">{label('web.garden-next')}</h2>
      {first.length === 0 ? (
        <p>{label('web.garden-nothing-next')}</p>
      ) : (
        <ol>
          {first.map((planned) => {
            const verdict = verdictOf(planned, day, speaker);
            return (
              <li key={planned.id}>
                <Link href={`/place/${planned.id}`} className={styles.item}>
                  <Icon name={needIcon[verdict.need]} />
                  <span className={styles.words}>
                    <strong>{planned.name}</strong>
                    <span>{verdict.text}</span>
                    {verdict.when === undefined ? null : <span className={styles.when}>{verdict.when}</span>}
                  </span>
                </Link>
              </li>
            );
          })}
        </ol>
      )}
    </section>
  );
}
