import { useCallback, useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { DayProgress, DaySummary, ServedDay } from '../../data/garden-store.ts';
import { Callout } from '../../kit/callout.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import { Distribution } from './distribution.tsx';

interface Props {
  readonly served: ServedDay;
  readonly done: number;
  readonly state: DayProgress['state'];
}

/** How many of the commonest problems are listed. */
const MOST = 10;

/** The day's soils together: for the educator alone. */
export function Summary({ served, done, state }: Props) {
  const { record, speaker } = useGarden();
  const [summary, setSummary] = useState<DaySummary>();
  const [failed, setFailed] = useState(false);
  const load = useCallback(
    () => served.summary(record.id, { units: speaker.units }),
    [served, record.id, speaker.units],
  );
  // While samples are still being planned it would be another every second.
  const settled = state === 'running' ? undefined : done;
  useEffect(() => {
    if (settled === undefined) return;
    let current = true;
    load().then(
      (value) => {
        if (!current) return;
        setSummary(value);
        setFailed(false);
      },
      () => current && setFailed(true),
    );
    return () => {
      current = false;
    };
  }, [load, settled]);
  if (summary === undefined) {
    if (failed) return <Callout kind="wrong">{label('web.no-answer')}</Callout>;
    return settled === undefined ? null : <Loading code="web.working" />;
  }
  return (
    <Section id="summary" title="web.day-out-summary">
      <p className={page.soft}>{label('web.day-out-private')}</p>
      <Calls calls={summary.calls} />
      <Distribution summary={summary} />
      <h3>{label('web.day-out-problems')}</h3>
      <Table
        caption={label('web.day-out-problems')}
        columns={['web.day-out-count', 'web.day-out-problem']}
        rows={summary.problems
          .slice(0, MOST)
          .map(({ code, text, count }) => ({ key: code, cells: [String(count), text] }))}
      />
      <h3>{label('web.day-out-decisions')}</h3>
      <Table
        caption={label('web.day-out-decisions')}
        columns={['web.day-out-decision', 'web.day-out-count']}
        rows={summary.decisions.map(({ decision, text, count }) => ({ key: decision, cells: [text, String(count)] }))}
      />
      <h3>{label('web.day-out-shopping')}</h3>
      {summary.shopping.length === 0 ? (
        <p>{label('web.day-out-nothing-to-buy')}</p>
      ) : (
        <>
          <p className={page.soft}>{label('web.day-out-shopping-text')}</p>
          <Table
            caption={label('web.day-out-shopping')}
            columns={['web.day-out-product', 'web.day-out-needed']}
            rows={summary.shopping.map(({ product, needed }) => ({ key: product, cells: [product, needed] }))}
          />
        </>
      )}
    </Section>
  );
}

function Calls({ calls }: Pick<DaySummary, 'calls'>) {
  return (
    <>
      <h3>{label('web.day-out-calls')}</h3>
      {calls.length === 0 ? (
        <p>{label('web.day-out-calls-none')}</p>
      ) : (
        <>
          <p>{label('web.day-out-calls-text')}</p>
          <Table
            caption={label('web.day-out-calls')}
            cards
            columns={['web.day-sample', 'web.day-in-person', 'web.day-out-why']}
            rows={calls.map(({ code, person, place, why }) => ({
              key: code,
              cells: [
                <Link key="code" href={`/place/${place}`}>
                  {code}
                </Link>,
                person ?? '',
                why.join(' '),
              ],
            }))}
          />
        </>
      )}
    </>
  );
}
