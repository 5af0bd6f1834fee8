import { useCallback, useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useAsync } from '../../app/use-async.ts';
import type { GardenSummary } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Field } from '../../kit/field.tsx';
import { Loading } from '../../kit/loading.tsx';
import { counted, label } from '../../words/label.ts';
import styles from './gardens.module.css';
import { StartDay } from './start-day.tsx';
import { useBegin } from './use-begin.ts';

/** The first screen: her own gardens, the invented ones to look around in, and a way to begin. */
export function Gardens() {
  const store = useStore();
  const load = useCallback(() => store.list(), [store]);
  const fetched = useAsync(load);
  useEffect(() => {
    document.title = label('web.name');
    // The garden's screens are the next thing anybody opens.
    const later = setTimeout(() => void import('../../app/garden-screens.tsx'), 1500);
    return () => clearTimeout(later);
  }, []);
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const all = fetched.state === 'ready' ? fetched.value : undefined;
  const own = all?.filter((garden) => !garden.demo) ?? [];
  const demos = all?.filter((garden) => garden.demo) ?? [];
  return (
    <div className={styles.page}>
      <div className={styles.intro}>
        <h1>{label(own.length === 0 ? 'web.gardens-first' : 'web.gardens-title')}</h1>
        {own.length === 0 ? <p>{label('web.gardens-lead')}</p> : null}
      </div>
      {all === undefined ? <Loading /> : null}
      {own.length === 0 ? null : <List gardens={own} />}
      <section className={styles.start} aria-labelledby="start">
        <h2 id="start">{label('web.gardens-own')}</h2>
        <p>{label('web.gardens-own-text')}</p>
        <Start />
      </section>
      <section className={styles.start} aria-labelledby="start-day">
        <h2 id="start-day">{label('web.day-start-title')}</h2>
        <p>{label('web.day-start-text')}</p>
        <Disclosure title={label('web.day-start-open')}>{() => <StartDay />}</Disclosure>
      </section>
      {demos.length === 0 ? null : (
        <section aria-labelledby="demos">
          <h2 id="demos">{label('web.gardens-look')}</h2>
          <p className={styles.soft}>{label('web.gardens-look-text')}</p>
          <List gardens={demos} />
        </section>
      )}
    </div>
  );
}

function List({ gardens }: { readonly gardens: readonly GardenSummary[] }) {
  return (
    <ul className={styles.list}>
      {gardens.map((garden) => (
        <li key={garden.id}>
          <Link href={`/g/${garden.id}`} className={styles.card}>
            <span className={styles.name}>{garden.name}</span>
            <span className={styles.soft}>{counted('web.places', garden.places)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function Start() {
  const begin = useBegin();
  const [name, setName] = useState('');
  const [problem, setProblem] = useState<string>();
  const start = () => {
    if (name.trim() === '') setProblem(label('web.start-name-missing'));
    else void begin({ garden: name.trim() }, '/add-place');
  };
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <Field label={label('web.start-name')} hint={label('web.start-name-hint')} problem={problem}>
        {(props) => (
          <input
            {...props}
            value={name}
            autoComplete="off"
            onChange={(event) => {
              setName(event.target.value);
              setProblem(undefined);
            }}
          />
        )}
      </Field>
      <Button type="submit" look="main">
        {label('web.start-go')}
      </Button>
    </form>
  );
}
