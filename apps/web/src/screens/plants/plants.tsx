import { halfKnownPlants } from '@sorrel/almanac/half-known-plants';
import { plants } from '@sorrel/almanac/plants';
import { useDeferredValue, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Field } from '../../kit/field.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Select } from '../../kit/text-input.tsx';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { phScale } from '../../ph-line/ph-scale.ts';
import { counted, label } from '../../words/label.ts';
import { type AnyPlant, isHalfKnown, looksLike, searchPlants } from '../edit-place/plant-search.ts';
import styles from './plants.module.css';
import { RangeLine } from './range-line.tsx';
import { drawnRange, rangeText } from './range-text.ts';

const all: readonly AnyPlant[] = [...plants, ...halfKnownPlants].sort((a, b) => a.name.localeCompare(b.name));
const groups = [...new Set(all.map(({ group }) => group))].sort();
const scale = phScale([]);
const STEP = 40;

/** Every plant of the almanac on one pH line, to search. */
export default function Plants() {
  const { planned } = useGarden();
  const [typed, setTyped] = useState('');
  const [group, setGroup] = useState('');
  const [most, setMost] = useState(STEP);
  const wanted = useDeferredValue(typed.trim());
  const mine = useMemo(() => {
    const keys = new Set(planned.places.flatMap(({ place }) => place?.plants.map(({ key }) => key) ?? []));
    return all.filter(({ key }) => keys.has(key));
  }, [planned]);
  const { list, near } = useMemo(() => {
    const inGroup = (rows: readonly AnyPlant[]) => (group === '' ? rows : rows.filter((row) => row.group === group));
    if (wanted === '') return { list: inGroup(all), near: false };
    const found = searchPlants(wanted, all.length, 'all');
    const guessed = looksLike(wanted, 'all');
    // A guess is an answer to no name that fits, and is said to be one.
    const near =
      found.length > 0 && found.every((row) => guessed.includes(row)) && !found.some((row) => holds(row, wanted));
    return { list: inGroup(found), near };
  }, [wanted, group]);
  return (
    <div className={page.page}>
      <header className={page.head}>
        <h1>{label('web.plants-title')}</h1>
        <p className={page.lead}>{label('web.plants-lead')}</p>
        <div className={page.actions}>
          <ButtonLink href="/symptoms">{label('web.symptoms')}</ButtonLink>
        </div>
      </header>
      {planned.places.length > 0 ? null : (
        <Callout>
          <p>{label('web.plants-no-place')}</p>
          <ButtonLink href="/add-place" look="main">
            {label('web.garden-add')}
          </ButtonLink>
        </Callout>
      )}
      <div className={`${page.grid} no-print`}>
        <Field label={label('web.plants-search')} hint={label('web.plants-search-hint')}>
          {(props) => (
            <input
              {...props}
              type="search"
              autoComplete="off"
              value={typed}
              onChange={(event) => {
                setTyped(event.target.value);
                setMost(STEP);
              }}
            />
          )}
        </Field>
        <Select
          label={label('web.plants-group')}
          hint={' '}
          value={group}
          onChange={(value) => {
            setGroup(value);
            setMost(STEP);
          }}
          options={[
            { value: '', label: label('web.plants-group-all') },
            ...groups.map((each) => ({ value: each, label: each })),
          ]}
        />
      </div>
      {wanted === '' && group === '' && mine.length > 0 ? (
        <section aria-labelledby="mine" className={styles.part}>
          <h2 id="mine">{label('web.plants-mine')}</h2>
          <List rows={mine} />
        </section>
      ) : null}
      <section aria-labelledby="found" className={styles.part}>
        <h2 id="found" aria-live="polite">
          {counted('web.plants-all', list.length)}
        </h2>
        {list.length === 0 ? <p>{label('web.plants-none')}</p> : near ? <p>{label('web.plants-near')}</p> : null}
        {list.length === 0 ? null : <List rows={list.slice(0, most)} />}
        {list.length <= most ? null : (
          <div>
            <Button onClick={() => setMost(most + 3 * STEP)}>{label('web.plants-more')}</Button>
          </div>
        )}
      </section>
    </div>
  );
}

const holds = (row: AnyPlant, wanted: string): boolean =>
  [row.name, row.botanical, ...row.also].some((name) => name.toLowerCase().includes(wanted.toLowerCase()));

function List({ rows }: { readonly rows: readonly AnyPlant[] }) {
  return (
    <div className={styles.line}>
      <div className={styles.axis}>
        <PhAxis scale={scale} />
      </div>
      <ul className={styles.rows}>
        {rows.map((plant) => (
          <li key={plant.key}>
            <Link href={`/plants/${plant.key}`} className={styles.row}>
              <span className={styles.name}>
                {plant.name} <small lang="la">{plant.botanical}</small>
              </span>
              <span className={styles.picture}>
                <Drawn plant={plant} />
              </span>
              <span className={styles.range}>
                {rangeText(plant)} {plant.basis === 'memory' ? <Memory /> : null}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Drawn({ plant }: { readonly plant: AnyPlant }) {
  const { low, high, best } = drawnRange(plant);
  if (best && low !== undefined && high !== undefined)
    return (
      <RangeLine small scale={scale} best={{ low, high }} stands={isHalfKnown(plant) ? undefined : standsOf(plant)} />
    );
  return <RangeLine small scale={scale} stands={{ low, high }} />;
}

const standsOf = (plant: Exclude<AnyPlant, { readonly foundLow?: unknown }>) => ({
  low: plant.toleratesLow,
  high: plant.toleratesHigh,
});
