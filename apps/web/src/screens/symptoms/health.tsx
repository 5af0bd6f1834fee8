import { nutrientName, type PlaceNutrients, symptomCandidates } from '@sorrel/engine/nutrients';
import { stands, type ThingOf } from '@sorrel/store/record';
import { useMemo } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useStore } from '../../data/store-context.tsx';
import { useThings } from '../../data/use-things.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { Failure } from '../../kit/failure.tsx';
import page from '../../kit/page.module.css';
import { chance, day, label, listed, type WebCode } from '../../words/label.ts';
import { placeUsable } from '../usable/place-usable.ts';
import { answerSaid, stepsOf } from './conversation.ts';
import { evidenceOf } from './evidence.ts';
import { paperQuery } from './paper-query.ts';
import { PhotoList } from './photo-list.tsx';
import styles from './symptoms.module.css';

/** On the screen of a place: what its plants can use, in a line, and what was seen on them. */
export default function Health({ planned }: { readonly planned: PlannedPlace }) {
  const usable = useMemo(() => placeUsable(planned), [planned]);
  return (
    <>
      {(usable === undefined ? [label('web.usable-no-ph')] : gist(usable)).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <div className={`${page.actions} no-print`}>
        <ButtonLink href={`/place/${planned.id}/usable`}>{label('web.usable')}</ButtonLink>
        <ButtonLink href={`/place/${planned.id}/symptoms`}>{label('web.health-look')}</ButtonLink>
      </div>
      <h3>{label('web.health-seen')}</h3>
      <Seen planned={planned} />
    </>
  );
}

const summaries: readonly (readonly [PlaceNutrients['verdicts'][number]['verdict'], WebCode])[] = [
  ['truly short', 'web.usable-summary-short'],
  ['too much', 'web.usable-summary-much'],
  ['enough but locked', 'web.usable-summary-locked'],
];

/** The one or two lines that matter most of what the plants can use. */
function gist({ verdicts, lines }: PlaceNutrients): readonly string[] {
  const told = summaries.flatMap(([verdict, code]) => {
    const names = verdicts.filter((each) => each.verdict === verdict).map(({ nutrient }) => nutrientName(nutrient));
    return names.length === 0 ? [] : [label(code as 'web.usable-summary-short', { names: listed(names) })];
  });
  if (told.length > 0) return told;
  if (verdicts.some(({ verdict }) => verdict === 'enough and usable')) return [label('web.usable-summary-fine')];
  const poor = lines.filter(({ today }) => today.word === 'poor').map(({ nutrient }) => nutrientName(nutrient));
  return [
    poor.length === 0 ? label('web.usable-summary-none') : label('web.usable-summary-poor', { names: listed(poor) }),
  ];
}

function Seen({ planned }: { readonly planned: PlannedPlace }) {
  const fetched = useThings();
  if (fetched.state === 'loading') return null;
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const { things } = fetched.value;
  const seen = [...things.values()]
    .filter((thing): thing is ThingOf<'observation'> => thing.kind === 'observation' && thing.place === planned.id)
    .filter((thing) => stands(thing, things))
    .sort((a, b) => b.content.date.localeCompare(a.content.date) || b.number - a.number);
  if (seen.length === 0) return <p className={page.soft}>{label('web.health-seen-none')}</p>;
  return (
    <ol className={page.plain}>
      {seen.map((thing) => (
        <li key={thing.id} className={page.sheet}>
          <Observation planned={planned} content={thing.content} />
        </li>
      ))}
    </ol>
  );
}

function Observation({
  planned,
  content,
}: {
  readonly planned: PlannedPlace;
  readonly content: ThingOf<'observation'>['content'];
}) {
  const { record, speaker } = useGarden();
  const { served } = useStore();
  const { date, plant = '', answers, symptom, weeds, photos, note } = content;
  const steps = answers === undefined ? [] : stepsOf(answers);
  const first = answers === undefined ? undefined : symptomCandidates(answers, evidenceOf(planned, plant))[0];
  return (
    <>
      <h4 className={styles.when}>{[day(date), plant].filter(Boolean).join(', ')}</h4>
      {steps.length > 0 ? (
        <p>{steps.map(({ question, answer }) => speaker.say(answerSaid(question, answer ?? ''))).join('; ')}.</p>
      ) : symptom === undefined ? null : (
        <p>{symptom}</p>
      )}
      {first === undefined ? null : (
        <p className={page.soft}>{label('web.health-then', { name: first.name, chance: chance(first.probability) })}</p>
      )}
      {weeds === undefined || weeds.length === 0 ? null : <p>{label('web.health-weeds', { names: listed(weeds) })}</p>}
      {note === undefined ? null : <p>{note}</p>}
      {photos === undefined ? null : (
        <PhotoList
          photos={photos}
          describe={(number) =>
            label('web.symptoms-photo-alt', {
              number,
              plant: plant || label('web.symptoms-a-plant'),
              date: day(date),
            })
          }
        />
      )}
      {served === undefined || steps.length === 0 ? null : (
        <p className="no-print">
          <a
            className={styles.paper}
            href={served.paper(record.id, 'symptoms.pdf', {
              place: planned.id,
              units: speaker.units,
              ...paperQuery(content),
            })}
            target="_blank"
            rel="noreferrer"
          >
            {label('web.symptoms-pdf')}
          </a>
        </p>
      )}
    </>
  );
}
