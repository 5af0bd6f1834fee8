import { qualityLimit } from '@sorrel/almanac/quality-limits';
import { qualityPlan } from '@sorrel/engine/day';
import { useGarden } from '../../app/garden-context.tsx';
import { ButtonLink } from '../../kit/button.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { counted, day as dayText, label } from '../../words/label.ts';
import styles from './day.module.css';
import { type Day, unread } from './day-model.ts';
import { DayScreen } from './day-screen.tsx';

const checks = ['buffer', 'duplicate', 'reference'] as const;

/** The soil day at a glance: how far it is, what comes next, and the plan of checks. */
export default function Overview() {
  const { record } = useGarden();
  const { garden, soilDay } = record.document;
  return (
    <DayScreen>
      {({ day }) => (
        <div className={`${page.page} ${page.narrow}`}>
          <header className={page.head}>
            <h1>{garden}</h1>
            <p className={page.lead}>
              {soilDay === undefined
                ? null
                : soilDay.where === undefined
                  ? label('web.day-when', { date: dayText(soilDay.date) })
                  : label('web.day-when-where', { date: dayText(soilDay.date), where: soilDay.where })}
            </p>
          </header>
          {day.samples.length === 0 ? <EmptyDay /> : <Standing day={day} />}
          <PlanOfChecks samples={day.samples.length} />
        </div>
      )}
    </DayScreen>
  );
}

function EmptyDay() {
  return (
    <div className={page.sheet}>
      <h2>{label('web.day-empty-title')}</h2>
      <p>{label('web.day-empty-text')}</p>
      <ol className={page.bullets}>
        {([1, 2, 3, 4] as const).map((step) => (
          <li key={step}>{label(`web.day-empty-${step}`)}</li>
        ))}
      </ol>
      <p>{label('web.day-empty-privacy')}</p>
      <div>
        <ButtonLink href="/check-in" look="main">
          {label('web.day-first')}
        </ButtonLink>
      </div>
    </div>
  );
}

function Standing({ day }: { readonly day: Day }) {
  const waiting = unread(day);
  const [next] = waiting;
  const figures = [
    ['web.day-checked-in', day.samples.length],
    ['web.day-with-ph', day.samples.length - waiting.length],
    ['web.day-waiting', waiting.length],
    ['web.day-repeat', day.repeat.length],
  ] as const;
  return (
    <>
      <dl className={styles.figures}>
        {figures.map(([code, count]) => (
          <div key={code}>
            <dt>{label(code)}</dt>
            <dd>{count}</dd>
          </div>
        ))}
      </dl>
      <Section id="next" title="web.day-next">
        {next === undefined ? <p>{label('web.day-all-read')}</p> : null}
        <div className={page.actions}>
          {day.repeat.length === 0 ? null : (
            <ButtonLink href="/meters" look="main">
              {counted('web.day-next-repeat', day.repeat.length)}
            </ButtonLink>
          )}
          {next === undefined ? (
            <ButtonLink href="/results" look={day.repeat.length === 0 ? 'main' : 'plain'}>
              {label('web.day-next-results')}
            </ButtonLink>
          ) : (
            <ButtonLink href="/readings" look={day.repeat.length === 0 ? 'main' : 'plain'}>
              {label('web.day-next-read', { code: next.code })}
            </ButtonLink>
          )}
          <ButtonLink href="/check-in">{label('web.day-next-check-in')}</ButtonLink>
          <ButtonLink href="/labels">{label('web.day-next-labels')}</ButtonLink>
          {next === undefined ? null : <ButtonLink href="/lab-file">{label('web.day-next-lab')}</ButtonLink>}
        </div>
      </Section>
    </>
  );
}

function PlanOfChecks({ samples }: { readonly samples: number }) {
  const plan = qualityPlan(samples);
  return (
    <Section id="checks" title="web.day-plan-title">
      <p>
        {samples === 0 ? label('web.day-plan-text-empty') : label('web.day-plan-text', { samples })} <Memory />
      </p>
      <Table
        caption={label('web.day-plan-title')}
        cards
        columns={[
          'web.day-plan-check',
          'web.day-plan-when',
          'web.day-plan-limit',
          ...(samples === 0 ? [] : (['web.day-plan-count'] as const)),
        ]}
        rows={checks.map((check) => {
          const { every, limit } = qualityLimit(check);
          const count = plan.filter((step) => step.check === check).length;
          return {
            key: check,
            cells: [
              label(`web.day-check-${check}`),
              label(`web.day-plan-${check}`, { every }),
              limit.toFixed(1),
              ...(samples === 0 ? [] : [String(count)]),
            ],
          };
        })}
      />
      <p className={page.small}>{label('web.day-plan-reference-what')}</p>
    </Section>
  );
}
