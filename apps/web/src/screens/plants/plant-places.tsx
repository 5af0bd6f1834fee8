import { PLACE_VERDICTS, type PlantInPlace, plantInPlace } from '@sorrel/engine/placing';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { correct } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { PhKey } from '../../ph-line/ph-key.tsx';
import { PhRow } from '../../ph-line/ph-row.tsx';
import { type PhMarks, phScale } from '../../ph-line/ph-scale.ts';
import { label } from '../../words/label.ts';
import type { AnyPlant } from '../edit-place/plant-search.ts';
import { fitIcon, fitText } from './fit-words.ts';
import styles from './plant.module.css';

/** Which places of the garden suit a plant, today and after the plan, the best first. */
export function PlantPlaces({ plant }: { readonly plant: AnyPlant }) {
  const { planned } = useGarden();
  const found = useMemo(
    () =>
      planned.places
        .flatMap((each) =>
          each.place === undefined || each.plan === undefined
            ? []
            : [{ each, fit: plantInPlace(plant, each.place, each.plan) }],
        )
        .sort((a, b) => PLACE_VERDICTS.indexOf(a.fit.verdict) - PLACE_VERDICTS.indexOf(b.fit.verdict)),
    [planned, plant],
  );
  const scale = useMemo(() => phScale(found.map(({ each, fit }) => marks(each, fit))), [found]);
  return (
    <Section id="places" title="web.plant-places">
      {found.length === 0 ? (
        <div className={page.sheet}>
          <p>{label('web.plants-no-place')}</p>
          <div>
            <ButtonLink href="/add-place" look="main">
              {label('web.garden-add')}
            </ButtonLink>
          </div>
        </div>
      ) : (
        <>
          <p className={page.lead}>{label('web.plant-places-lead')}</p>
          <PhKey />
          <ul className={styles.places}>
            {found.map(({ each, fit }) => (
              <li key={each.id}>
                <div className={page.row}>
                  <h3>
                    <Link href={`/place/${each.id}`}>{each.name}</Link>
                  </h3>
                  {fit.there ? <span className={styles.there}>{label('web.plant-there')}</span> : null}
                </div>
                <p className={styles.fit}>
                  <Icon name={fitIcon[fit.verdict]} size={20} />
                  {fitText(fit.verdict)}
                </p>
                {fit.range === undefined ? null : (
                  <div aria-hidden="true">
                    <PhAxis scale={scale} />
                    <PhRow marks={marks(each, fit)} scale={scale} />
                  </div>
                )}
                <Reasons fit={fit} />
                <Add plant={plant} place={each} fit={fit} />
              </li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}

const marks = ({ plan }: PlannedPlace, { range, planned }: PlantInPlace): PhMarks => ({
  present: plan?.present,
  // An empty range draws no bracket.
  low: range?.low ?? 7,
  high: range?.high ?? 6.9,
  aim: planned?.ph,
});

function Reasons({ fit }: { readonly fit: PlantInPlace }) {
  const { speaker } = useGarden();
  const said = [...new Set(fit.reasons.map(speaker.say))];
  return said.length === 0 ? null : (
    <ul className={page.bullets}>
      {said.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function Add({
  plant,
  place,
  fit,
}: {
  readonly plant: AnyPlant;
  readonly place: PlannedPlace;
  readonly fit: PlantInPlace;
}) {
  const { record, write } = useGarden();
  if (fit.there) return null;
  if (fit.range === undefined)
    return (
      <div className="no-print">
        <ButtonLink href={`/place/${place.id}/edit`} look="quiet">
          {label('web.plant-own', { place: place.name })}
        </ButtonLink>
      </div>
    );
  const { tests: _tests, applications: _applications, ...entry } = place.entry;
  const add = () =>
    write(
      [correct(record.id, place.id, 'place', { ...entry, plants: [...(entry.plants ?? []), plant.name] })],
      label('web.plant-added', { plant: plant.name, place: place.name }),
    );
  return (
    <div className="no-print">
      <Button look={fit.verdict === 'does not suit' ? 'quiet' : 'plain'} onClick={() => void add()}>
        {label('web.plant-add', { place: place.name })}
      </Button>
    </div>
  );
}
