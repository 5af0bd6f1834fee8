import type { Forecast } from '@sorrel/engine/forecast';
import type { Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { useMemo } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { ForecastChart, ForecastKey } from '../../chart/forecast-chart.tsx';
import { testPoints } from '../../engine/test-points.ts';
import { useForecast } from '../../engine/use-forecast.ts';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Loading } from '../../kit/loading.tsx';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { chance, day, label } from '../../words/label.ts';
import { AccountOf } from './account.tsx';

interface Props {
  readonly place: Place;
  readonly plan: Recommendation;
  readonly settings: Settings;
}

/** What will happen if the first step is done, or nothing where nothing is to be done; and what pushes the pH meanwhile. */
export function ForecastSection({ place, plan, settings }: Props) {
  const { applications } = plan;
  const first = useMemo(() => applications.filter((each) => !each.onlyIfRetest), [applications]);
  const answer = useForecast(place, settings, first);
  const tests = useMemo(() => testPoints(place, settings), [place, settings]);
  const marks = useMemo(
    () => [...place.applications, ...first.map(({ earliest, currency }) => ({ date: earliest, currency }))],
    [place, first],
  );
  const wanted = plan.target.conflicts.length > 0 ? undefined : plan.target;
  const forecast = answer.state === 'ready' ? answer.forecast : undefined;
  return (
    <>
      <Section id="forecast" title="web.sec-forecast">
        {answer.state === 'working' ? <Loading code="web.forecast-wait" /> : null}
        {answer.state === 'unknown' ? <p>{label('web.forecast-none')}</p> : null}
        {answer.state === 'failed' ? <Callout kind="wrong">{answer.reason}</Callout> : null}
        {forecast === undefined ? null : (
          <>
            <p>{label(first.length > 0 ? 'web.forecast-lead' : 'web.forecast-lead-rest')}</p>
            <ForecastChart forecast={forecast} wanted={wanted} tests={tests} applications={marks} />
            <ForecastKey />
            <Said forecast={forecast} />
            <Disclosure title={label('web.forecast-table')}>{() => <ForecastTable forecast={forecast} />}</Disclosure>
          </>
        )}
      </Section>
      {forecast === undefined ? null : <AccountOf account={forecast.account} perVolume={place.kind === 'container'} />}
    </>
  );
}

function Said({ forecast }: { readonly forecast: Forecast }) {
  const { speaker } = useGarden();
  const { insideFrom, overshoot, retest, cautions, dates, members } = forecast;
  // Below the sour end is where a sour bed starts; that is no overshooting.
  const lines = [
    ...(insideFrom !== undefined && insideFrom !== dates[0]
      ? [label('web.forecast-inside-now', { date: day(insideFrom) })]
      : []),
    ...(overshoot === undefined || overshoot.above >= 0.5
      ? []
      : [label('web.forecast-over-above', { chance: chance(overshoot.above) })]),
    ...(overshoot === undefined || overshoot.below >= 0.5
      ? []
      : [label('web.forecast-over-below', { chance: chance(overshoot.below) })]),
    `${label('web.forecast-retest', { date: day(retest.date) })} ${speaker.say(retest.why)}`,
    ...cautions.map(speaker.say),
    label('web.forecast-members', { count: members }),
  ];
  return (
    <ul>
      {lines.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

/** Rows of the table: about one a quarter of a year. */
const WEEKS_APART = 13;

function ForecastTable({ forecast }: { readonly forecast: Forecast }) {
  const { speaker } = useGarden();
  const { dates, median, bands, inside } = forecast;
  const band = bands.find((each) => each.share === 0.8);
  const rows = dates.flatMap((date, index) => (index % WEEKS_APART === 0 ? [{ date, index }] : []));
  return (
    <Table
      caption={label('web.forecast-table')}
      columns={['web.forecast-date', 'web.forecast-likely', 'web.forecast-80', 'web.forecast-inside']}
      figures
      rows={rows.map(({ date, index }) => ({
        key: date,
        cells: [
          day(date),
          speaker.ph(median[index] ?? 0),
          label('web.table-wanted-range', {
            low: speaker.ph(band?.low[index] ?? 0),
            high: speaker.ph(band?.high[index] ?? 0),
          }),
          inside[index] === undefined ? '' : chance(inside[index]),
        ],
      }))}
    />
  );
}
