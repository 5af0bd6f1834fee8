import { useGarden } from '../../app/garden-context.tsx';
import { remove } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';
import styles from './day.module.css';
import { signed } from './signed.ts';
import type { DaySession } from './use-day.ts';

const LAST = 8;

/** What this meter did last, so that a slip can be taken back at once. */
export function Lately({ session, meter }: { readonly session: DaySession; readonly meter: string }) {
  const { record } = useGarden();
  const { day, send } = session;
  const found = day.meters.find(({ name }) => name === meter);
  if (found === undefined) return null;
  const codes = new Map(day.samples.map(({ id, code }) => [id, code]));
  const acts = [
    ...found.readings.map(({ id, number, place, content }) => {
      const code = codes.get(place ?? '') ?? '';
      return { id, number, what: code, said: content.ph.value.toFixed(2), of: code };
    }),
    ...found.checks.map(({ id, order, check, off, sound }) => ({
      id,
      number: order,
      what: label(`web.day-check-${check}`),
      said: label(sound ? 'web.day-verdict-good' : 'web.day-verdict-bad', { off: signed(off) }),
      of: label(`web.day-check-${check}`),
    })),
  ].sort((a, b) => b.number - a.number);
  return (
    <Section id="lately" title="web.day-lately">
      <ul className={styles.lately}>
        {acts.slice(0, LAST).map(({ id, what, said, of }) => (
          <li key={id}>
            <strong>{what}</strong>
            <span>{said}</span>
            <Button
              look="quiet"
              aria-label={label('web.day-lately-remove-one', { what: of })}
              onClick={() => void send([remove(record.id, id)], label('web.day-in-removed', { code: of }))}
            >
              {label('web.day-in-remove')}
            </Button>
          </li>
        ))}
      </ul>
    </Section>
  );
}
