import { agreementOf, type CheckVerdict } from '@sorrel/engine/day';
import { ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { counted, label } from '../../words/label.ts';
import { ControlChart } from './control-chart.tsx';
import type { Day, Meter } from './day-model.ts';
import { DayScreen } from './day-screen.tsx';
import { signed } from './signed.ts';

/** How far each meter can be trusted, and which readings to repeat. */
export default function Meters() {
  return (
    <DayScreen>
      {({ day }) => (
        <div className={page.page}>
          <header className={page.head}>
            <div className={page.row}>
              <h1>{label('web.day-meters-title')}</h1>
              <ButtonLink href="/readings">{label('web.day-meters-on')}</ButtonLink>
            </div>
            <p className={page.lead}>{label('web.day-meters-lead')}</p>
          </header>
          <ToRepeat day={day} />
          {day.meters.length === 0 ? <p>{label('web.day-meters-none')}</p> : null}
          {day.meters.map((meter) => (
            <MeterSheet key={meter.name} meter={meter} />
          ))}
          <Agreement day={day} />
        </div>
      )}
    </DayScreen>
  );
}

function ToRepeat({ day }: { readonly day: Day }) {
  if (day.meters.length === 0) return null;
  return (
    <Section id="repeat" title="web.day-repeat-title">
      {day.repeat.length === 0 ? (
        <p>{label('web.day-repeat-none')}</p>
      ) : (
        <>
          <p>{counted('web.day-repeat-text', day.repeat.length)}</p>
          <Table
            caption={label('web.day-repeat-title')}
            cards
            columns={['web.day-sample', 'web.day-ph', 'web.day-read-meter', 'web.day-repeat-why', 'web.day-repeat-do']}
            rows={day.repeat.map(({ id, sample, meter, why }) => ({
              key: id,
              cells: [
                sample.code,
                sample.readings.find((reading) => reading.id === id)?.content.ph.value.toFixed(2) ?? '',
                meter,
                label(`web.day-repeat-${why}`),
                <ButtonLink key="again" look="quiet" href={`/readings?code=${encodeURIComponent(sample.code)}`}>
                  {label('web.day-repeat-again', { code: sample.code })}
                </ButtonLink>,
              ],
            }))}
          />
        </>
      )}
    </Section>
  );
}

function MeterSheet({ meter }: { readonly meter: Meter }) {
  const after = readBefore(meter);
  const bad = meter.checks.filter(({ sound, check }) => !sound && check !== 'duplicate');
  const last = meter.checks.findLast(({ check }) => check !== 'duplicate');
  const standing =
    last === undefined
      ? label('web.day-meter-unchecked')
      : last.sound
        ? bad.length === 0
          ? label('web.day-meter-sound')
          : counted('web.day-meter-sound-again', bad.length)
        : label('web.day-meter-unsound');
  return (
    <section className={page.sheet} aria-label={label('web.day-meter', { name: meter.name })}>
      <h2>{label('web.day-meter', { name: meter.name })}</h2>
      <p>
        {counted('web.day-meter-readings', meter.readings.length)}{' '}
        {counted('web.day-meter-checks', meter.checks.length)}
      </p>
      <Callout kind={last?.sound ? 'note' : 'care'}>
        <p>{standing}</p>
      </Callout>
      {meter.checks.length === 0 ? null : (
        <>
          <ControlChart checks={meter.checks} after={after} />
          <p className={page.small}>
            {label('web.day-chart-how')} <Memory />
          </p>
          <Disclosure title={label('web.day-meter-table')}>
            {() => (
              <Table
                caption={label('web.day-meter-table')}
                cards
                columns={[
                  'web.day-chart-after',
                  'web.day-plan-check',
                  'web.day-meter-should',
                  'web.day-meter-showed',
                  'web.day-meter-off',
                  'web.day-meter-verdict',
                ]}
                rows={meter.checks.map((check, index) => ({
                  key: check.id,
                  cells: [
                    String(after[index] ?? 0),
                    label(`web.day-check-${check.check}`),
                    check.expected.toFixed(2),
                    check.shown.toFixed(2),
                    signed(check.off),
                    verdictOf(check),
                  ],
                }))}
              />
            )}
          </Disclosure>
        </>
      )}
    </section>
  );
}

/** How many samples the meter had read at each of its checks. */
function readBefore({ acts }: Meter): readonly number[] {
  let read = 0;
  const found: number[] = [];
  for (const { did } of acts)
    if (did === 'reading') read++;
    else found.push(read);
  return found;
}

function verdictOf({ sound, passed, check }: CheckVerdict): string {
  if (sound) return label('web.day-verdict-fine');
  if (check === 'duplicate') return label('web.day-verdict-duplicate');
  return label(passed ? 'web.day-verdict-drift' : 'web.day-verdict-beyond');
}

function Agreement({ day }: { readonly day: Day }) {
  const pairs = day.meters.flatMap(({ checks }) =>
    checks.filter(({ check }) => check === 'duplicate').map(({ expected, shown }) => [expected, shown] as const),
  );
  const agreement = agreementOf(pairs);
  if (agreement === undefined) return null;
  return (
    <p>{counted('web.day-agreement', agreement.pairs, { agree: agreement.agree, sd: agreement.sd.toFixed(2) })}</p>
  );
}
