import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import page from '../../kit/page.module.css';
import { day, hasLabel, label } from '../../words/label.ts';
import type { TestEntry } from './draft.ts';
import styles from './test.module.css';

/** The tests a place has already, each open to correction. */
export function KnownTests({ planned }: { readonly planned: PlannedPlace }) {
  const { record } = useGarden();
  const ids = record.from.places.find((each) => each.id === planned.id)?.tests ?? [];
  const tests = planned.entry.tests ?? [];
  return (
    <section className={page.page} aria-labelledby="known">
      <h2 id="known">{label('web.test-known', { place: planned.name })}</h2>
      {tests.length === 0 ? (
        <p className={page.soft}>{label('web.test-known-none')}</p>
      ) : (
        <ul className={`${page.plain} ${styles.tests}`}>
          {tests.map((test, index) => (
            <li key={ids[index]} className={page.row}>
              <span>
                <strong>{day(test.date)}</strong> {label('web.test-known-line', { ph: phOf(test), by: byOf(test) })}
              </span>
              <Link href={`/test/${planned.id}/${ids[index]}`}>{label('web.test-known-correct')}</Link>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

export const phOf = (test: TestEntry): string =>
  test.ph === undefined ? label('web.test-no-ph') : label('web.row-ph', { ph: test.ph.value });

export function byOf(test: TestEntry): string {
  const code = `web.by-${test.by}`;
  return test.laboratory ?? (hasLabel(code) ? label(code) : test.by);
}
