import { rowColumns } from '@sorrel/engine/document';
import { useDeferredValue, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { Entry } from '../../data/garden-store.ts';
import { add } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Field } from '../../kit/field.tsx';
import page from '../../kit/page.module.css';
import { Table } from '../../kit/table.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { counted, day as dayText, label } from '../../words/label.ts';
import { type ImportRow, planImport } from './plan-import.ts';
import styles from './test.module.css';

const EXAMPLE = `place,date,ph,ph_method,buffer_ph,buffer,om,test_depth,cores,area
North bed,2026-10-02,5.4,water-1:1,6.3,sikora,4.2,6 in,12,48 sq ft
Herb corner,2026-10-02,6.6,water-1:1,,,3.1,6 in,10,2 m2
`;
/** More rows than this are counted, not drawn. */
const MOST_DRAWN = 200;

/** A table of tests, pasted or opened: what would be added is shown first. */
export function ImportTable() {
  const { planned, record, write } = useGarden();
  const [, go] = useLocation();
  const today = planned.read.garden.settings.today;
  const [text, setText] = useState('');
  const [fallback, setFallback] = useState(planned.places[0]?.id ?? '');
  const [day, setDay] = useState(today);
  const [newPlaces, setNewPlaces] = useState(true);
  const settled = useDeferredValue(text);
  const plan = useMemo(
    () =>
      planImport(settled, {
        today,
        region: record.document.region,
        places: planned.places,
        fallback: fallback === '' ? undefined : fallback,
        day: day === '' ? today : day,
        newPlaces,
      }),
    [settled, today, record, planned, fallback, day, newPlaces],
  );
  const bad = plan.rows.filter((row) => row.fate === 'bad');
  const good = plan.rows.filter((row) => row.fate !== 'bad');
  const adds = plan.rows.filter((row) => row.fate === 'adds' || row.fate === 'adds-place');

  const save = async () => {
    const made = new Map<string, string>();
    const entries = adds.flatMap((row): Entry[] => {
      if (row.test === undefined) return [];
      const known = row.place ?? made.get(row.name.toLowerCase());
      if (known !== undefined) return [add(record.id, 'test', row.test, known)];
      const place = add(record.id, 'place', row.newPlace ?? { name: row.name });
      made.set(row.name.toLowerCase(), place.id);
      return [place, add(record.id, 'test', row.test, place.id)];
    });
    if (await write(entries, counted('web.import-saved', adds.length))) go('/');
  };

  return (
    <div className={page.page}>
      <section className={page.sheet}>
        <Field label={label('web.import-text')} hint={label('web.import-text-hint')}>
          {(props) => (
            <textarea
              {...props}
              className={`${props.className} ${styles.paste}`}
              rows={8}
              spellCheck={false}
              value={text}
              onChange={(event) => setText(event.target.value)}
            />
          )}
        </Field>
        <div className={page.actions}>
          <Field label={label('web.import-file')}>
            {(props) => (
              <input
                {...props}
                type="file"
                accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
                onChange={async (event) => {
                  const file = event.target.files?.[0];
                  if (file !== undefined) setText(await file.text());
                }}
              />
            )}
          </Field>
        </div>
        <div className={page.grid}>
          {planned.places.length === 0 ? null : (
            <Select
              label={label('web.import-place')}
              value={fallback}
              onChange={setFallback}
              options={planned.places.map(({ id, name }) => ({ value: id, label: name }))}
            />
          )}
          <TextInput label={label('web.import-day')} type="date" max={today} value={day} onChange={setDay} />
        </div>
        <Tick checked={newPlaces} onChange={setNewPlaces}>
          {label('web.import-new')}
        </Tick>
        <Disclosure title={label('web.import-columns-help')}>
          {() => (
            <>
              <p>{label('web.import-columns-text')}</p>
              <ul className={styles.found}>
                {rowColumns.map((name) => (
                  <li key={name}>{name}</li>
                ))}
              </ul>
              <div>
                <Button onClick={() => setText(EXAMPLE)}>{label('web.import-example')}</Button>
              </div>
            </>
          )}
        </Disclosure>
      </section>

      {plan.known.length === 0 && plan.unknown.length === 0 ? (
        <p className={page.soft}>{label('web.import-nothing')}</p>
      ) : (
        <section className={styles.tight} aria-labelledby="preview">
          <h2 id="preview">{label('web.import-preview')}</h2>
          {plan.known.length === 0 ? null : (
            <div className={page.head}>
              <h3>{label('web.import-known-columns')}</h3>
              <ul className={styles.found}>
                {plan.known.map((name) => (
                  <li key={name}>{name}</li>
                ))}
              </ul>
              {plan.ofPlaces ? <p className={page.small}>{label('web.import-place-columns')}</p> : null}
            </div>
          )}
          {plan.unknown.length === 0 ? null : (
            <Callout kind="care" title={label('web.import-unknown-columns')}>
              <ul>
                {plan.unknown.map(({ title, meant }) => (
                  <li key={title}>
                    {title}
                    {meant === undefined ? null : ` – ${label('web.import-meant', { column: meant })}`}
                  </li>
                ))}
              </ul>
            </Callout>
          )}
          {bad.length === 0 ? null : (
            <Callout kind="wrong" title={counted('web.import-bad', bad.length)}>
              <p>{label('web.import-bad-text')}</p>
              <ul>
                {bad.slice(0, MOST_DRAWN).map((row) => (
                  <li key={row.line}>
                    <strong>{label('web.import-line-at', { line: row.line, place: row.name })}</strong>{' '}
                    {row.faults.map((fault) => `${fault.message} ${fault.fix}`).join(' ')}
                  </li>
                ))}
              </ul>
            </Callout>
          )}
          {plan.rows.length === 0 ? <p>{label('web.import-only-heading')}</p> : null}
          {good.length === 0 ? null : (
            <>
              <h3>{counted('web.import-good', good.length)}</h3>
              <Table
                caption={label('web.import-preview')}
                columns={['web.test-place', 'web.import-status', 'web.f-ph.value', 'web.test-date', 'web.import-line']}
                rows={good.slice(0, MOST_DRAWN).map((row) => ({
                  key: String(row.line),
                  cells: [
                    row.name,
                    fateText(row),
                    String(row.test?.ph?.value ?? ''),
                    dayText(row.test?.date ?? day),
                    String(row.line),
                  ],
                }))}
              />
            </>
          )}
          <div className={page.actions}>
            <Button look="main" disabled={adds.length === 0} onClick={() => void save()}>
              {adds.length === 0 ? label('web.import-nothing') : counted('web.import-save', adds.length)}
            </Button>
          </div>
        </section>
      )}
    </div>
  );
}

function fateText({ fate }: ImportRow): string {
  if (fate === 'adds') return label('web.import-adds');
  if (fate === 'adds-place') return label('web.import-adds-place');
  return label(fate === 'there' ? 'web.import-there' : 'web.import-no-place');
}
