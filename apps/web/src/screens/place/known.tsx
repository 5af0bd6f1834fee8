import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Memory } from '../../kit/memory.tsx';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { day, label, type WebCode } from '../../words/label.ts';
import styles from './known.module.css';

const byCode: Readonly<Record<PlannedTest['by'], WebCode>> = {
  laboratory: 'web.by-laboratory',
  'slurry-meter': 'web.by-slurry-meter',
  'colour-kit': 'web.by-colour-kit',
  'color-kit': 'web.by-color-kit',
  strip: 'web.by-strip',
  probe: 'web.by-probe',
};
type PlannedTest = NonNullable<PlannedPlace['entry']['tests']>[number];

/** Tests as they were printed, the soil as it was told, plants with where their ranges come from. */
export function Known({ planned }: { readonly planned: PlannedPlace }) {
  const { speaker } = useGarden();
  const { entry, place, plan, choices } = planned;
  const tests = [...(entry.tests ?? [])].sort((a, b) => b.date.localeCompare(a.date));
  const soil = soilLines(planned);
  const notes = [...new Set((plan?.notes ?? []).map(speaker.say))];
  return (
    <Section id="known" title="web.sec-known">
      <div className={styles.head}>
        <h3>{label('web.known-tests')}</h3>
        <ButtonLink href={`/test/${planned.id}`}>{label('web.nav-test')}</ButtonLink>
      </div>
      {tests.length === 0 ? (
        <p>{label('web.known-no-tests')}</p>
      ) : (
        <Table
          cards
          caption={label('web.known-tests')}
          columns={[
            'web.known-date',
            'web.known-by',
            'web.known-ph',
            'web.known-in',
            'web.known-depth',
            'web.known-more',
          ]}
          rows={tests.map((test, index) => ({
            key: `${test.date}-${index}`,
            cells: [
              day(test.date),
              [label(byCode[test.by]), test.laboratory].filter(Boolean).join(': '),
              test.ph === undefined ? '–' : String(test.ph.value),
              test.ph?.in ?? '–',
              test.depth ?? '–',
              moreOf(test),
            ],
          }))}
        />
      )}
      {notes.length === 0 ? null : (
        <Callout title={label('web.known-notes')}>
          <ul>
            {notes.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </Callout>
      )}
      <h3>{label('web.known-plants')}</h3>
      {place === undefined || place.plants.length === 0 ? (
        <p>{label('web.known-no-plants')}</p>
      ) : (
        <Table
          cards
          caption={label('web.known-plants')}
          columns={['web.known-plant', 'web.known-plant-range', 'web.known-plant-tolerates', 'web.known-source']}
          rows={place.plants.map((plant) => ({
            key: plant.key,
            cells: [
              plant.name,
              label('web.table-wanted-range', { low: speaker.ph(plant.low), high: speaker.ph(plant.high) }),
              plant.toleratesLow === undefined || plant.toleratesHigh === undefined
                ? '–'
                : label('web.table-wanted-range', {
                    low: speaker.ph(plant.toleratesLow),
                    high: speaker.ph(plant.toleratesHigh),
                  }),
              <span key="from" className={styles.sources}>
                {plant.basis === 'memory' ? <Memory /> : null}
                {plant.sources.join(', ')}
              </span>,
            ],
          }))}
        />
      )}
      <h3>{label('web.known-soil')}</h3>
      {soil.length === 0 ? (
        <p>{label('web.known-no-soil')}</p>
      ) : (
        <ul>
          {soil.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      {choices.length === 0 ? null : (
        <Callout title={label('web.known-choices')}>
          <ul>
            {choices.map((choice) => (
              <li key={choice.field + choice.message.code}>{speaker.say(choice.message)}</li>
            ))}
          </ul>
        </Callout>
      )}
    </Section>
  );
}

/** The soil and the water in the gardener's own words. */
function soilLines({ entry: { soil, water, note } }: PlannedPlace): readonly string[] {
  return [
    ...(soil?.texture === undefined ? [] : [label('web.soil-texture', { value: soil.texture })]),
    ...(soil?.sand === undefined
      ? []
      : [label('web.soil-sizes', { sand: soil.sand, silt: soil.silt ?? '–', clay: soil.clay ?? '–' })]),
    ...(soil?.organicMatter === undefined ? [] : [label('web.soil-organic', { value: soil.organicMatter })]),
    ...(soil?.bulkDensity === undefined ? [] : [label('web.soil-density', { value: soil.bulkDensity })]),
    ...(soil?.stones === undefined ? [] : [label('web.soil-stones', { value: soil.stones })]),
    ...(water === undefined ? [] : [label('web.soil-water', { alkalinity: water.alkalinity })]),
    ...(note === undefined ? [] : [note]),
  ];
}

/** Everything else a report told, as it was typed. */
function moreOf(test: PlannedTest): string {
  const { date: _date, by: _by, ph: _ph, depth: _depth, laboratory: _laboratory, note, ...rest } = test;
  const parts = Object.entries(rest).map(([name, value]) => `${fieldName(name)}: ${plain(value)}`);
  return [...parts, ...(note === undefined ? [] : [note])].join('; ');
}

const fieldName = (name: string): string => name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
const plain = (value: unknown): string =>
  typeof value === 'object' && value !== null ? Object.values(value).map(String).join(' ') : String(value);
