import { materials } from '@sorrel/almanac/materials';
import { defaultProduct } from '@sorrel/engine/materials';
import type { Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { addMonths, print } from '@sorrel/engine/units';
import { memo, useDeferredValue, useMemo, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { ForecastChart } from '../../chart/forecast-chart.tsx';
import { correct } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { testPoints } from '../../engine/test-points.ts';
import { type ForecastState, useForecast } from '../../engine/use-forecast.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Field } from '../../kit/field.tsx';
import { Section } from '../../kit/section.tsx';
import { Slider } from '../../kit/slider.tsx';
import { chance, day as dayText, label } from '../../words/label.ts';
import styles from './what-if.module.css';
import { type Wish, wishedPlan } from './what-if-plan.ts';

interface Props {
  readonly planned: PlannedPlace;
  readonly place: Place;
  readonly plan: Recommendation;
  readonly settings: Settings;
}

const MONTHS_AHEAD = 12;

/** Sliders for target, depth, material and day. The quick dose answers at once; held to the forecast it follows. */
export function WhatIf(props: Props) {
  return (
    <Section id="what-if" title="web.sec-what-if">
      <Disclosure title={label('web.if-lead')}>{() => <Sliders {...props} />}</Disclosure>
    </Section>
  );
}

function Sliders({ planned, place, plan, settings }: Props) {
  const { planned: garden, speaker, record, write } = useGarden();
  const [wish, setWish] = useState<Wish>({});
  const own = garden.read.garden.products;
  const products = useMemo(() => offered(own), [own]);
  // A place that has learned from its retests takes longer to plan than a frame: the slider moves first, its answer follows.
  const settled = useDeferredValue(wish);
  const wished = useMemo(
    () => wishedPlan(place, plan, own, products, settings, settled),
    [place, plan, own, products, settings, settled],
  );
  const asked = wished.plan === plan ? undefined : wished.plan;
  const first = useMemo(() => wished.plan.applications.filter((each) => !each.onlyIfRetest), [wished]);
  const answer = useForecast(wished.place, wished.settings, first, asked);
  const held = answer.state === 'ready' && answer.held?.of === asked ? answer.held?.plan : undefined;
  const shown = held ?? wished.plan;
  const unchecked =
    shown.applications.length > 0 && (asked === undefined ? planned.checking : held === undefined) && !gaveUp(answer);
  const [reason] = shown.reasons;
  const change = (part: Wish) => setWish((before) => ({ ...before, ...part }));
  const aim = wish.aim ?? plan.target.aim;
  const depth = wish.depth ?? place.depth;
  const dayIndex = wish.day === undefined ? 0 : monthsBetween(settings.today, wish.day);
  const touched = Object.values(wish).some((value) => value !== undefined);
  const outside = aim < plan.target.low || aim > plan.target.high;
  const keep = async () => {
    const { tests: _tests, applications: _applications, ...entry } = planned.entry;
    const target = wished.place.target;
    const kept = await write(
      [
        correct(record.id, planned.id, 'place', {
          ...entry,
          ...(wish.depth === undefined ? {} : { depth: print(wish.depth, 'length', speaker.units) }),
          ...(wish.aim === undefined || target === undefined ? {} : { target: { ...target, aim: wish.aim } }),
        }),
      ],
      label('web.if-kept', { place: planned.name }),
    );
    if (kept) setWish({});
  };
  return (
    <div className={styles.whatIf}>
      <div className={styles.controls}>
        <Slider
          label={label('web.if-aim')}
          min={4}
          max={8}
          step={0.1}
          value={aim}
          text={speaker.ph(aim)}
          onChange={(value) => change({ aim: value })}
        />
        {place.kind === 'container' ? null : (
          <Slider
            label={label('web.if-depth')}
            min={0.05}
            max={0.4}
            step={0.01}
            value={depth}
            text={speaker.rough(depth, 'length')}
            onChange={(value) => change({ depth: value })}
          />
        )}
        <Slider
          label={label('web.if-date')}
          min={0}
          max={MONTHS_AHEAD}
          step={1}
          value={dayIndex}
          text={dayText(wish.day ?? settings.today)}
          onChange={(value) => change({ day: value === 0 ? undefined : addMonths(settings.today, value) })}
        />
        <Field label={label('web.if-material')}>
          {(field) => (
            <select
              {...field}
              value={wish.product ?? ''}
              onChange={({ target: { value } }) => change({ product: value === '' ? undefined : Number(value) })}
            >
              <option value="">{label('web.if-planned')}</option>
              {products.map((product, index) => (
                <option key={product.name} value={index}>
                  {product.name}
                </option>
              ))}
            </select>
          )}
        </Field>
        <div className={styles.buttons}>
          <Button disabled={!touched} onClick={() => setWish({})}>
            {label('web.if-reset')}
          </Button>
          {wish.aim === undefined && wish.depth === undefined ? null : (
            <Button onClick={() => void keep()}>{label('web.if-keep')}</Button>
          )}
        </div>
      </div>
      <div className={styles.answer}>
        {outside ? (
          <Callout kind="care">
            <p>{label('web.if-outside', { low: speaker.ph(plan.target.low), high: speaker.ph(plan.target.high) })}</p>
          </Callout>
        ) : null}
        <p className={styles.reason} aria-live="polite">
          {reason === undefined ? null : speaker.say(reason)}
        </p>
        <table className={styles.table}>
          <thead>
            <tr>
              <td />
              <th scope="col">{label('web.if-plan')}</th>
              <th scope="col">{label('web.if-this')}</th>
            </tr>
          </thead>
          <tbody>
            {comparison.map(({ code, of }) => (
              <tr key={code}>
                <th scope="row">{label(code)}</th>
                <td>{of(plan, speaker)}</td>
                <td>{of(shown, speaker)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className={styles.checking} role="status">
          {unchecked ? label('web.dose-checking-this') : null}
        </p>
        <WishedForecast wished={wished} plan={shown} answer={answer} />
      </div>
    </div>
  );
}

/** Nothing can be foreseen, so there is nothing to hold a dose to. */
const gaveUp = ({ state }: ForecastState) => state === 'unknown' || state === 'failed';

type Speaker = ReturnType<typeof useGarden>['speaker'];
const comparison = [
  {
    code: 'web.if-first',
    of: (plan: Recommendation, speaker: Speaker) => {
      const first = plan.applications.filter((each) => each.number === 1);
      return first.length === 0
        ? label('web.if-none')
        : first
            .map(({ mass, product }) =>
              label('web.step-amount', { amount: speaker.weight(mass), product: product.name }),
            )
            .join(', ');
    },
  },
  {
    code: 'web.if-all',
    of: (plan: Recommendation, speaker: Speaker) =>
      plan.applications.length === 0 ? '–' : speaker.weight(plan.applications.reduce((sum, { mass }) => sum + mass, 0)),
  },
  {
    code: 'web.if-risk',
    of: (plan: Recommendation) => (plan.overshootChance === undefined ? '–' : chance(plan.overshootChance)),
  },
] as const;

/** Drawn again only when the answer is a new one, not with every move of the slider. */
const WishedForecast = memo(function WishedForecast({
  wished: { place, settings },
  plan,
  answer,
}: {
  readonly wished: ReturnType<typeof wishedPlan>;
  readonly plan: Recommendation;
  readonly answer: ForecastState;
}) {
  const first = plan.applications.filter((each) => !each.onlyIfRetest);
  const tests = useMemo(() => testPoints(place, settings), [place, settings]);
  const forecast = useDeferredValue(answer.state === 'ready' ? answer.forecast : undefined);
  if (forecast === undefined) return <div className={styles.room} />;
  return (
    <ForecastChart
      forecast={forecast}
      wanted={plan.target.conflicts.length > 0 ? undefined : plan.target}
      tests={tests}
      applications={first.map(({ earliest, currency }) => ({ date: earliest, currency }))}
    />
  );
});

type Products = ReturnType<typeof useGarden>['planned']['read']['garden']['products'];

/** Her own products first, then the almanac's usual limes and acids that can be bought everywhere. */
function offered(own: Products): Products {
  const usual = materials
    .filter(
      (row) => (row.role === 'liming' || row.role === 'acidifying') && !own.some((mine) => mine.material === row.key),
    )
    .flatMap((row) => {
      const product = defaultProduct(row.key);
      return product.refused === undefined ? [product] : [];
    });
  return [...own, ...usual];
}

function monthsBetween(from: string, to: string): number {
  for (let month = 0; month < MONTHS_AHEAD; month++) if (addMonths(from, month) >= to) return month;
  return MONTHS_AHEAD;
}
