import type { Candidate } from '@sorrel/engine/nutrients';
import { useGarden } from '../../app/garden-context.tsx';
import { Cited } from '../../kit/cited.tsx';
import page from '../../kit/page.module.css';
import { chance, label, type WebCode } from '../../words/label.ts';
import styles from './symptoms.module.css';

/** Causes shown; the rest are unlikely and told as one. */
const SHOWN = 5;

/** What may lie behind it, likeliest first, with rough chances: a bar for the eye, a figure for everyone. */
export function Causes({
  candidates,
  shown = SHOWN,
}: {
  readonly candidates: readonly Candidate[];
  readonly shown?: number;
}) {
  const rest = candidates.slice(shown).reduce((sum, { probability }) => sum + probability, 0);
  return (
    <>
      <ol className={styles.causes}>
        {candidates.slice(0, shown).map((each) => (
          <li key={each.cause}>
            <span className={styles.cause}>
              {each.name}{' '}
              <span className={styles.kind}>{label(`web.symptoms-cause-${each.kind}` satisfies WebCode)}</span>
            </span>
            <span className={styles.chance}>{label('web.symptoms-chance', { chance: chance(each.probability) })}</span>
            <svg width="100%" height="10" aria-hidden="true" focusable="false">
              <rect x="0" y="0" width="100%" height="10" className={styles.track} />
              <rect x="0" y="0" width={`${each.probability * 100}%`} height="10" className={styles.bar} />
            </svg>
            <Cited sources={each.sources} basis={each.basis} />
          </li>
        ))}
      </ol>
      <p className={page.small}>{label('web.symptoms-causes-rest', { chance: chance(rest) })}</p>
    </>
  );
}

/** The likeliest so far in one line: seen above the question on a phone, and told to a screen reader as it changes. */
export function Likeliest({ candidates }: { readonly candidates: readonly Candidate[] }) {
  const { speaker } = useGarden();
  const first = candidates[0];
  return (
    <p role="status" className={styles.likeliest}>
      {first === undefined
        ? ''
        : label('web.symptoms-so-far', {
            cause: speaker.say({
              code: 'nutrients.symptom-candidate',
              parameters: { name: first.name, chance: { value: first.probability, dimension: 'share' } },
            }),
          })}
    </p>
  );
}
