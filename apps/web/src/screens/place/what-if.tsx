import { materials } from '@sorrel/almanac/materials';
import { defaultProduct } from '@sorrel/engine/materials';
import type { Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { addMonths, print } from '@sorrel/engine/units';
import { memo, useCallback, useMemo, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { ForecastChart } from '../../chart/forecast-chart.tsx';
import { correct } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { testPoints } from '../../engine/test-points.ts';
import { useWish } from '../../engine/use-wish.ts';
import type { Picture } from '../../engine/wished-picture.ts';
import { isWish, type Wish, type Wishing } from '../../engine/wished-plan.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Field } from '../../kit/field.tsx';
import { Section } from '../../kit/section.tsx';
import { Slider } from '../../kit/slider.tsx';
import { chance, day as dayText, label } from '../../words/label.ts';
import styles from './what-if.module.css';

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
  const wishing = useMemo(
    () => ({ place, plan, own, offered: products, settings }),
    [place, plan, own, products, settings],
  );
  const { wished, plan: shown, picture, unchecked } = useWish(wishing, wish);
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
        <Wishes wish={wish} setWish={setWish} wishing={wishing} />
        <div className={styles.buttons}>
          <Button disabled={!isWish(wish)} onClick={() => setWish({})}>
            {label('web.if-reset')}
          </Button>
          {wish.aim === undefined && wish.depth === undefined ? null : (
            <Button onClick={() => void keep()}>{label('web.if-keep')}</Button>
          )}
        </div>
      </div>
      <div className={styles.answer}>
        <Answer plan={plan} shown={shown} aim={wish.aim} unchecked={unchecked || (!isWish(wish) && planned.checking)} />
        {picture === undefined ? (
          <div className={styles.room} />
        ) : (
          <WishedChart picture={picture} plan={shown} place={place} settings={settings} />
        )}
      </div>
    </div>
  );
}

interface WishesProps {
  readonly wish: Wish;
  readonly setWish: (change: (before: Wish) => Wish) => void;
  readonly wishing: Wishing;
}

function Wishes({ wish, setWish, wishing: { place, plan, offered, settings } }: WishesProps) {
  const { speaker } = useGarden();
  const change = useCallback((part: Wish) => setWish((before) => ({ ...before, ...part })), [setWish]);
  const { today } = settings;
  const setAim = useCallback((aim: number) => change({ aim }), [change]);
  const setDepth = useCallback((depth: number) => change({ depth }), [change]);
  const setMonth = useCallback(
    (month: number) => change({ day: month === 0 ? undefined : addMonths(today, month) }),
    [change, today],
  );
  const aim = wish.aim ?? plan.target.aim;
  const depth = wish.depth ?? place.depth;
  const dayIndex = wish.day === undefined ? 0 : monthsBetween(today, wish.day);
  return (
    <>
      <Slider
        label={label('web.if-aim')}
        min={4}
        max={8}
        step={0.1}
        value={aim}
        text={speaker.ph(aim)}
        onChange={setAim}
      />
      {place.kind === 'container' ? null : (
        <Slider
          label={label('web.if-depth')}
          min={0.05}
          max={0.4}
          step={0.01}
          value={depth}
          text={speaker.rough(depth, 'length')}
          onChange={setDepth}
        />
      )}
      <Slider
        label={label('web.if-date')}
        min={0}
        max={MONTHS_AHEAD}
        step={1}
        value={dayIndex}
        text={dayText(wish.day ?? today)}
        onChange={setMonth}
      />
      <MaterialChoice value={wish.product} offered={offered} change={change} />
    </>
  );
}

interface MaterialProps {
  readonly value: number | undefined;
  readonly offered: Wishing['offered'];
  readonly change: (part: Wish) => void;
}

const MaterialChoice = memo(function MaterialChoice({ value: chosen, offered, change }: MaterialProps) {
  return (
    <Field label={label('web.if-material')}>
      {(field) => (
        <select
          {...field}
          value={chosen ?? ''}
          onChange={({ target: { value } }) => change({ product: value === '' ? undefined : Number(value) })}
        >
          <option value="">{label('web.if-planned')}</option>
          {offered.map((product, index) => (
            <option key={product.name} value={index}>
              {product.name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
});

interface AnswerProps {
  readonly plan: Recommendation;
  readonly shown: Recommendation;
  readonly aim: number | undefined;
  readonly unchecked: boolean;
}

/** What would be spread, beside what the plan says. */
const Answer = memo(function Answer({ plan, shown, aim, unchecked }: AnswerProps) {
  const { speaker } = useGarden();
  const [reason] = shown.reasons;
  const { low, high } = plan.target;
  return (
    <>
      {aim !== undefined && (aim < low || aim > high) ? (
        <Callout kind="care">
          <p>{label('web.if-outside', { low: speaker.ph(low), high: speaker.ph(high) })}</p>
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
    </>
  );
});

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

interface ChartProps {
  readonly picture: Picture;
  readonly plan: Recommendation;
  readonly place: Place;
  readonly settings: Settings;
}

/** The picture, with the arrows of the plan it is of. */
const WishedChart = memo(function WishedChart({ picture, plan, place, settings }: ChartProps) {
  const tests = useMemo(() => testPoints(place, settings), [place, settings]);
  const { applications, target } = plan;
  const marks = useMemo(
    () =>
      applications.filter((each) => !each.onlyIfRetest).map(({ earliest, currency }) => ({ date: earliest, currency })),
    [applications],
  );
  return (
    <ForecastChart
      forecast={picture}
      wanted={target.conflicts.length > 0 ? undefined : target}
      tests={tests}
      applications={marks}
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
