import { findAnyPlant } from '@sorrel/almanac/half-known-plants';
import { plants } from '@sorrel/almanac/plants';
import { plantNotes, plantRangeOf } from '@sorrel/engine/plan';
import { Link, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { NotFound } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import button from '../../kit/button.module.css';
import { Cited } from '../../kit/cited.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { phScale } from '../../ph-line/ph-scale.ts';
import { label } from '../../words/label.ts';
import { type AnyPlant, isHalfKnown } from '../edit-place/plant-search.ts';
import { Apart } from './apart.tsx';
import { Diseases } from './diseases.tsx';
import styles from './plant.module.css';
import { PlantPlaces } from './plant-places.tsx';
import { Published } from './published.tsx';
import { RangeLine } from './range-line.tsx';

/** One plant: what it wants and who says so, where it would fit, its diseases and its unlike neighbours. */
export default function PlantScreen() {
  const { plant: key } = useParams<{ plant: string }>();
  const plant = findAnyPlant(key);
  return plant === undefined ? <Failure error={new NotFound(key)} /> : <PlantPage key={plant.key} plant={plant} />;
}

function PlantPage({ plant }: { readonly plant: AnyPlant }) {
  const { record, speaker } = useGarden();
  const { served } = useStore();
  return (
    <article className={page.page}>
      <header className={page.head}>
        <p className="no-print">
          <Link href="/plants">{label('web.plant-back')}</Link>
        </p>
        <h1>{plant.name}</h1>
        <p className={page.soft}>
          <i lang="la">{plant.botanical}</i>. {label('web.plant-family', { group: plant.group, family: plant.family })}.
          {plant.also.length === 0 ? null : ` ${label('web.plant-also', { names: plant.also.join(', ') })}.`}
        </p>
      </header>
      <Section id="wants" title="web.plant-wants">
        <Wants plant={plant} />
      </Section>
      <PlantPlaces plant={plant} />
      <Diseases plant={plant} />
      {isHalfKnown(plant) ? null : <Apart plant={plantRangeOf(plant)} among={plants} />}
      <Published plant={plant} />
      {served === undefined ? null : (
        <div className="no-print">
          <a
            className={`${button.button} ${button.plain}`}
            href={served.paper(record.id, 'plant.pdf', { plant: plant.key, units: speaker.units })}
            target="_blank"
            rel="noreferrer"
          >
            {label('web.plant-pdf')}
          </a>
        </div>
      )}
    </article>
  );
}

function Wants({ plant }: { readonly plant: AnyPlant }) {
  const { speaker } = useGarden();
  const half = isHalfKnown(plant);
  const ground = half ? undefined : { low: plant.low, high: plant.high };
  const { containerLow, containerHigh } = plant;
  const pots =
    containerLow === undefined || containerHigh === undefined ? undefined : { low: containerLow, high: containerHigh };
  const stands = half
    ? { low: plant.foundLow, high: plant.foundHigh }
    : { low: plant.toleratesLow, high: plant.toleratesHigh };
  const hasStands = stands.low !== undefined || stands.high !== undefined;
  const scale = phScale(
    [ground, pots, { low: stands.low ?? 5, high: stands.high ?? 7 }].filter((each) => each !== undefined),
  );
  const rows = [
    ...(ground === undefined
      ? []
      : [{ name: label('web.plant-row-ground'), best: ground, stands: hasStands ? stands : undefined }]),
    ...(pots === undefined ? [] : [{ name: label('web.plant-row-pots'), best: pots, stands: undefined }]),
    ...(half && hasStands ? [{ name: label('web.plant-row-found'), best: undefined, stands }] : []),
  ];
  const { ph } = speaker;
  const notes = half ? [] : plantNotes(plant);
  return (
    <>
      <div className={styles.picture}>
        <div className={styles.axis}>
          <PhAxis scale={scale} />
        </div>
        {rows.map((row) => (
          <div key={row.name} className={styles.row}>
            <span className={styles.name}>{row.name}</span>
            <span className={styles.drawn}>
              <RangeLine scale={scale} best={row.best} stands={row.stands} />
            </span>
          </div>
        ))}
        <ul className={styles.key}>
          {rows.some(({ best }) => best !== undefined) ? (
            <li>
              <span>
                <RangeLine small scale={keyScale} best={{ low: 4.6, high: 7.4 }} />
              </span>
              {label('web.plant-key-best')}
            </li>
          ) : null}
          {rows.some((row) => row.stands !== undefined) ? (
            <li>
              <span>
                <RangeLine small scale={keyScale} stands={{ low: 4.6, high: 7.4 }} />
              </span>
              {label(half ? 'web.plant-row-found' : 'web.plant-key-stands')}
            </li>
          ) : null}
        </ul>
      </div>
      {ground === undefined ? null : (
        <p>
          {label('web.plant-best', { low: ph(ground.low), high: ph(ground.high) })}{' '}
          {plant.basis === 'memory' ? <Memory /> : null}
        </p>
      )}
      {pots === undefined ? null : <p>{label('web.plant-best-pots', { low: ph(pots.low), high: ph(pots.high) })}</p>}
      {half ? <p>{label(pots === undefined ? 'web.plant-found-only' : 'web.plant-pots-only')}</p> : null}
      {half || !hasStands ? null : (
        <p className={page.soft}>
          {stands.low === undefined
            ? label('web.plant-stands-high', { high: ph(stands.high ?? 0) })
            : stands.high === undefined
              ? label('web.plant-stands-low', { low: ph(stands.low) })
              : label('web.plant-stands', { low: ph(stands.low), high: ph(stands.high) })}
        </p>
      )}
      {notes.length === 0 ? null : (
        <ul className={page.bullets}>
          {notes.map((note) => (
            <li key={note.code}>{speaker.say(note)}</li>
          ))}
        </ul>
      )}
      <Cited sources={plant.sources} basis={plant.basis} />
    </>
  );
}

const keyScale = { ...phScale([]), ticks: [] };
