import type { PlantRow } from '@sorrel/almanac/plants';
import { apartSaid, plantsApart } from '@sorrel/engine/placing';
import { type PlantRange, plantRangeOf } from '@sorrel/engine/plan';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { counted, label } from '../../words/label.ts';

/** Plants that share no pH with this one: those of the garden first, then those of the almanac. */
export function Apart({ plant, among }: { readonly plant: PlantRange; readonly among: readonly PlantRow[] }) {
  const { planned, speaker } = useGarden();
  const here = useMemo(
    () =>
      plantsApart(
        plant,
        planned.places.flatMap(({ place }) => place?.plants ?? []),
      ),
    [plant, planned],
  );
  const all = useMemo(() => plantsApart(plant, among.map(plantRangeOf)), [plant, among]);
  return (
    <Section id="apart" title="web.plant-apart">
      {here.length === 0 ? (
        <p>{label('web.plant-apart-none')}</p>
      ) : (
        <>
          <p className={page.lead}>{label('web.plant-apart-lead')}</p>
          <ul className={page.bullets}>
            {here.map((other) => (
              <li key={other.key}>{speaker.say(apartSaid(plant.name, plant, other.name, other))}</li>
            ))}
          </ul>
        </>
      )}
      {all.length === 0 ? null : (
        <Disclosure title={counted('web.plant-apart-all', all.length)}>
          {() => (
            <ul className={page.bullets}>
              {all.map((other) => (
                <li key={other.key}>
                  <Link href={`/plants/${other.key}`}>{other.name}</Link>{' '}
                  {label('web.plants-range', { low: speaker.ph(other.low), high: speaker.ph(other.high) })}
                </li>
              ))}
            </ul>
          )}
        </Disclosure>
      )}
      <p className={page.small}>{label('web.plant-apart-no-rule')}</p>
    </Section>
  );
}
