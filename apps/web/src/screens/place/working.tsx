import type { Derivation, Step, Term } from '@sorrel/engine/derivation';
import type { Place, Recommendation } from '@sorrel/engine/plan';
import { methodById } from '@sorrel/engine/requirement';
import { lazy, Suspense } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Loading } from '../../kit/loading.tsx';
import { Memory } from '../../kit/memory.tsx';
import { Table } from '../../kit/table.tsx';
import { counted, label, type WebCode } from '../../words/label.ts';
import { figure } from './figure.ts';
import styles from './working.module.css';

interface Props {
  readonly place: Place;
  readonly plan: Recommendation;
}

/** How every figure of the plan came about, one tap below it. */
export function Working({ place, plan }: Props) {
  const { derivation } = plan;
  if (derivation === undefined || derivation.steps.length === 0) return null;
  return (
    <Disclosure
      title={
        <span>
          {label('web.sec-working')}{' '}
          <span className={styles.soft}>({counted('web.working-count', derivation.steps.length)})</span>
        </span>
      }
    >
      {() => (
        <>
          <p className={styles.soft}>{label('web.working-lead')}</p>
          <Readings place={place} plan={plan} />
          <Steps derivation={derivation} />
          <Suspense fallback={<Loading code="web.working" />}>
            <Sources derivation={derivation} />
          </Suspense>
        </>
      )}
    </Disclosure>
  );
}

export function Steps({ derivation }: { readonly derivation: Derivation }) {
  return (
    <ol className={styles.steps}>
      {derivation.steps.map((step) => (
        <StepItem key={step.index} step={step} />
      ))}
    </ol>
  );
}

function StepItem({ step }: { readonly step: Step }) {
  return (
    <li className={styles.step}>
      <p className={styles.title}>
        {step.title} {step.basis === 'memory' ? <Memory /> : null}
      </p>
      <p className={styles.formula}>{step.formula}</p>
      {step.terms.length === 0 ? null : (
        <ul className={styles.terms} aria-label={label('web.working-with')}>
          {step.terms.map((term, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a symbol may stand twice
            <li key={index}>
              <span className={styles.figure}>
                {term.symbol} = {figure(term.value, term.unit)}
              </span>{' '}
              <span className={styles.soft}>({origin(term)})</span>
            </li>
          ))}
        </ul>
      )}
      <p className={styles.result}>
        {step.symbol} = {figure(step.value, step.unit)}
      </p>
      {step.note === undefined ? null : <p className={styles.soft}>{step.note}</p>}
      <p className={styles.soft}>
        {label('web.working-source')}: {step.sources.join(', ')}
      </p>
    </li>
  );
}

const originCode: Readonly<Record<Exclude<Term['origin'], 'table' | 'step'>, WebCode>> = {
  entered: 'web.working-entered',
  choice: 'web.working-choice',
};

function origin(term: Term): string {
  if (term.origin === 'step')
    return term.step === undefined ? label('web.working-gives') : label('web.working-step', { number: term.step + 1 });
  return term.origin === 'table' ? (term.source ?? '') : label(originCode[term.origin]);
}

function Readings({ place, plan }: Props) {
  const { speaker } = useGarden();
  const { reconciled, layer } = plan;
  if (reconciled === undefined || reconciled.used.length === 0) return null;
  const perVolume = place.kind === 'container';
  const scale = perVolume ? layer.bulkDensity : layer.mass;
  const rows = [
    ...reconciled.used.map((reading) => ({ reading, state: label('web.working-speaks') })),
    ...reconciled.beside.map((reading) => ({ reading, state: label('web.working-beside') })),
  ];
  return (
    <>
      <h3>{label('web.working-readings')}</h3>
      <Table
        cards
        caption={label('web.working-readings')}
        columns={['web.working-reading', 'web.working-resists', 'web.working-published', 'web.working-state']}
        rows={rows.map(({ reading, state }, index) => {
          const method = methodById(reading.method);
          return {
            key: `${reading.method}-${index}`,
            cells: [
              <>
                {method?.title ?? (reading.kind === 'response' ? label('web.working-response') : reading.kind)}{' '}
                {method?.basis === 'memory' ? <Memory /> : null}
              </>,
              speaker.amount(Math.exp(reading.logBeta0) * scale, perVolume ? 'massPerVolume' : 'massPerArea'),
              `${Number(reading.published.value.toPrecision(3))} ${reading.published.unit}`,
              state,
            ],
          };
        })}
      />
    </>
  );
}

const Sources = lazy(() => import('./sources.tsx'));
