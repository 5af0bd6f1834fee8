import { useMemo } from 'react';
import { Link, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { NotFound } from '../../data/garden-store.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { forecastSettings } from '../../engine/settings-of.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Section } from '../../kit/section.tsx';
import { label, type WebCode } from '../../words/label.ts';
import { HealthSection } from '../symptoms/health-section.tsx';
import { Decision } from './decision.tsx';
import { ForecastSection } from './forecast-section.tsx';
import { Known } from './known.tsx';
import styles from './place.module.css';
import { PlanSteps } from './plan-steps.tsx';
import { PlaceRecord } from './record.tsx';
import { Ways } from './ways.tsx';
import { WhatIf } from './what-if.tsx';
import { Working } from './working.tsx';

const kindCode: Readonly<Record<string, WebCode>> = {
  bed: 'web.place-kind-bed',
  plot: 'web.place-kind-plot',
  container: 'web.place-kind-container',
};

const sections = [
  ['plan', 'web.sec-plan'],
  ['forecast', 'web.sec-forecast'],
  ['what-if', 'web.sec-what-if'],
  ['ways', 'web.sec-ways'],
  ['health', 'web.sec-health'],
  ['known', 'web.sec-known'],
  ['record', 'web.sec-record'],
] as const;

/** Paper for one place alone. */
const papers = (place: string) =>
  [
    { code: 'web.place-handout', href: `/print?paper=handouts&place=${place}` },
    { code: 'web.place-bed-label', href: `/print?paper=labels&place=${place}` },
    { code: 'web.place-bag-label', href: `/sampling?place=${place}` },
  ] as const;

/** Everything about one place, the decision first. */
export default function PlaceScreen() {
  const { place: id } = useParams<{ place: string }>();
  const { planned } = useGarden();
  const found = planned.places.find((place) => place.id === id);
  if (found === undefined) return <Failure error={new NotFound(id)} />;
  return <PlacePage key={found.id} planned={found} />;
}

function PlacePage({ planned }: { readonly planned: PlannedPlace }) {
  const { planned: garden, record, speaker } = useGarden();
  const { place, plan, entry } = planned;
  const settings = useMemo(() => forecastSettings(garden.read.garden.settings, record), [garden, record]);
  const kind = label(
    entry.situation === 'lawn' ? 'web.place-kind-lawn' : (kindCode[place?.kind ?? 'bed'] ?? 'web.place-kind-bed'),
  );
  return (
    <article className={styles.page}>
      <header className={styles.head}>
        <div>
          <h1>{planned.name}</h1>
          {place === undefined ? null : (
            <p className={styles.soft}>
              {place.kind === 'container'
                ? label('web.place-extent-pots', { kind, volume: speaker.amount(place.volume ?? 0, 'volume') })
                : label('web.place-extent', {
                    kind,
                    area: speaker.amount(place.area, 'area'),
                    depth: speaker.rough(place.depth, 'length'),
                  })}
            </p>
          )}
        </div>
        <div className={styles.buttons}>
          <ButtonLink href={`/place/${planned.id}/edit`}>{label('web.place-edit')}</ButtonLink>
          <Disclosure title={label('web.place-print')}>
            {() => (
              <ul className={styles.papers}>
                {papers(planned.id).map(({ code, href }) => (
                  <li key={code}>
                    <Link href={href}>{label(code)}</Link>
                  </li>
                ))}
              </ul>
            )}
          </Disclosure>
        </div>
      </header>
      {planned.problems.length === 0 ? null : (
        <Callout kind="wrong" title={plan === undefined ? label('web.place-unread') : label('web.garden-problems')}>
          <ul>
            {planned.problems.map((problem) => (
              <li key={`${problem.field}-${problem.code}`}>
                {problem.message} {problem.fix}
              </li>
            ))}
          </ul>
        </Callout>
      )}
      {place === undefined || plan === undefined ? null : (
        <>
          <Decision place={place} plan={plan} />
          <nav aria-label={label('web.sec-nav')} className={styles.nav}>
            <ul>
              {sections.map(([id, code]) => (
                <li key={id}>
                  <a href={`#${id}`}>{label(code)}</a>
                </li>
              ))}
            </ul>
          </nav>
          <Section id="plan" title="web.sec-plan">
            <PlanSteps place={place} plan={plan} checking={planned.checking} />
            <Working place={place} plan={plan} />
          </Section>
          <ForecastSection place={place} plan={plan} settings={settings} />
          <WhatIf planned={planned} place={place} plan={plan} settings={settings} />
          <Ways place={place} plan={plan} settings={settings} />
        </>
      )}
      <HealthSection planned={planned} />
      <Known planned={planned} />
      <PlaceRecord planned={planned} />
    </article>
  );
}
