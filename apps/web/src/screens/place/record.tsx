import { takenBack } from '@sorrel/store/record';
import { useCallback } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useAsync } from '../../app/use-async.ts';
import type { Entry, Numbered } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import { type Kind, remove } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button } from '../../kit/button.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Loading } from '../../kit/loading.tsx';
import { Section } from '../../kit/section.tsx';
import { day, label, type WebCode } from '../../words/label.ts';
import styles from './record.module.css';

const kindLabel = (kind: Kind): string => label(`web.kind-${kind}` satisfies WebCode);

/** Every entry about the place, newest first; each can be taken back. */
export function PlaceRecord({ planned }: { readonly planned: PlannedPlace }) {
  return (
    <Section id="record" title="web.sec-record">
      <Disclosure title={label('web.record-open')}>{() => <Entries place={planned.id} />}</Disclosure>
    </Section>
  );
}

function Entries({ place }: { readonly place: string }) {
  const store = useStore();
  const { record, write, takeBack } = useGarden();
  // A newer record of the garden means newer entries.
  const load = useCallback(() => store.entries(record.id), [store, record]);
  const fetched = useAsync(load);
  if (fetched.state === 'loading') return <Loading />;
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const all = fetched.value;
  const gone = takenBack(all);
  const kinds = new Map<string, Kind>();
  const here = all.filter(({ entry }) => isAbout(entry, place, kinds, all));
  const removed = new Set(
    here.flatMap(({ entry }) => (entry.action === 'remove' && !gone.has(entry.id) ? [entry.thing] : [])),
  );
  return (
    <>
      <p className={styles.soft}>{label('web.record-lead')}</p>
      <ol className={styles.entries}>
        {[...here].reverse().map(({ entry, number }) => {
          const off = gone.has(entry.id);
          const mayRemove =
            entry.action === 'add' &&
            entry.kind !== 'place' &&
            entry.kind !== 'garden' &&
            !off &&
            !removed.has(entry.id);
          return (
            <li key={number} className={off ? styles.off : undefined}>
              <div>
                <p className={styles.what}>
                  {sayEntry(entry, kinds, all)} {off ? <span>({label('web.record-undone')})</span> : null}
                </p>
                <p className={styles.soft}>{label('web.record-by', { date: day(entry.at), who: entry.by })}</p>
              </div>
              <div className={styles.buttons}>
                {mayRemove ? (
                  <Button
                    look="quiet"
                    onClick={() =>
                      void write(
                        [remove(record.id, entry.id)],
                        label('web.record-removed', { kind: kindLabel(entry.kind) }),
                      )
                    }
                  >
                    {label('web.record-remove-test')}
                  </Button>
                ) : null}
                {(entry.action === 'correct' || entry.action === 'remove') && !off ? (
                  <Button look="quiet" onClick={() => void takeBack(entry.id)}>
                    {label('web.undo')}
                  </Button>
                ) : null}
              </div>
            </li>
          );
        })}
      </ol>
    </>
  );
}

/** Whether an entry is about the place or something that happened there; fills `kinds` with what each thing is. */
function isAbout(entry: Entry, place: string, kinds: Map<string, Kind>, all: readonly Numbered[]): boolean {
  if (entry.action === 'add') {
    const mine = entry.id === place || ('place' in entry && entry.place === place);
    if (mine) kinds.set(entry.id, entry.kind);
    return mine;
  }
  if (entry.action === 'undo') {
    const about = all.find((each) => each.entry.id === entry.entry)?.entry;
    return about !== undefined && isAbout(about, place, kinds, all);
  }
  return kinds.has(entry.thing);
}

function sayEntry(entry: Entry, kinds: ReadonlyMap<string, Kind>, all: readonly Numbered[]): string {
  if (entry.action === 'undo') {
    const about = all.find((each) => each.entry.id === entry.entry)?.entry;
    return label('web.record-undo', { what: about === undefined ? '' : sayEntry(about, kinds, all) });
  }
  if (entry.action === 'remove')
    return label('web.record-remove', { kind: kindLabel(kinds.get(entry.thing) ?? 'observation') });
  const said = label(entry.action === 'add' ? 'web.record-add' : 'web.record-correct', { kind: kindLabel(entry.kind) });
  return [said, gist(entry)].filter(Boolean).join(': ');
}

/** The one line that tells this entry from its neighbours. */
function gist(entry: Extract<Entry, { action: 'add' | 'correct' }>): string {
  switch (entry.kind) {
    case 'test':
    case 'reading': {
      const { date, ph } = entry.content;
      return [ph === undefined ? undefined : label('web.row-ph', { ph: ph.value }), day(date)]
        .filter(Boolean)
        .join(', ');
    }
    case 'application':
      return `${entry.content.amount} ${entry.content.material}, ${day(entry.content.date)}`;
    case 'task':
      return `${entry.content.task}, ${day(entry.content.date)}`;
    case 'observation':
      return [entry.content.plant, entry.content.symptom, day(entry.content.date)].filter(Boolean).join(', ');
    case 'place':
      return entry.content.name;
    default:
      return '';
  }
}
