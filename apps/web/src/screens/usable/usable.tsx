import type { Message } from '@sorrel/engine/derivation';
import { isOfLines, nutrientName, type PlaceNutrients } from '@sorrel/engine/nutrients';
import { useMemo } from 'react';
import { Link, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { NotFound } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import button from '../../kit/button.module.css';
import { ButtonLink } from '../../kit/button.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import { placeUsable } from './place-usable.ts';
import { UsableLines } from './usable-lines.tsx';
import { Verdicts } from './verdicts.tsx';

/** What the plants of one place can use: the picture, what the test says, and what moving the pH would do. */
export default function UsableScreen() {
  const { place: id } = useParams<{ place: string }>();
  const { planned } = useGarden();
  const found = planned.places.find((place) => place.id === id);
  return found === undefined ? <Failure error={new NotFound(id)} /> : <UsablePage key={found.id} planned={found} />;
}

function UsablePage({ planned }: { readonly planned: PlannedPlace }) {
  const { record, speaker } = useGarden();
  const { served } = useStore();
  const found = useMemo(() => placeUsable(planned), [planned]);
  return (
    <article className={page.page}>
      <header className={page.head}>
        <p className="no-print">
          <Link href={`/place/${planned.id}`}>{planned.name}</Link>
        </p>
        <h1>{label('web.usable-title', { place: planned.name })}</h1>
        <p className={page.lead}>{label('web.usable-lead')}</p>
      </header>
      {found === undefined ? (
        <div className={page.sheet}>
          <p>{label('web.usable-no-ph')}</p>
          <p>{label('web.usable-no-ph-do')}</p>
          <div className={page.actions}>
            <ButtonLink href={`/test/${planned.id}`} look="main">
              {label('web.nav-test')}
            </ButtonLink>
          </div>
        </div>
      ) : (
        <Found planned={planned} found={found} />
      )}
      {served === undefined || found === undefined ? null : (
        <div className="no-print">
          <a
            className={`${button.button} ${button.plain}`}
            href={served.paper(record.id, 'usable.pdf', { place: planned.id, units: speaker.units })}
            target="_blank"
            rel="noreferrer"
          >
            {label('web.usable-pdf')}
          </a>
        </div>
      )}
    </article>
  );
}

function Found({ planned, found }: { readonly planned: PlannedPlace; readonly found: PlaceNutrients }) {
  const { speaker } = useGarden();
  const { today, planned: then } = found;
  const heed = found.messages.filter((message) => !isOfLines(message));
  // One entry a nutrient, so that what to do stands with what it is about.
  const change = found.lines.flatMap(({ change }) => (change.length === 0 ? [] : [change.map(speaker.say).join(' ')]));
  return (
    <>
      <p>
        {label('web.usable-today', { ph: speaker.ph(today) })}{' '}
        {then === undefined ? label('web.usable-unchanged') : label('web.usable-planned', { ph: speaker.ph(then) })}
      </p>
      <Section id="test" title="web.usable-test">
        <Verdicts planned={planned} found={found} />
      </Section>
      {heed.length === 0 ? null : (
        <Section id="heed" title="web.usable-heed">
          <Bullets messages={heed} />
        </Section>
      )}
      {change.length === 0 ? null : (
        <Section id="change" title="web.usable-change">
          <ul className={page.bullets}>
            {change.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </Section>
      )}
      <Section id="picture" title="web.usable-picture">
        <UsableLines found={found} medium={planned.place?.medium ?? 'mineral'} />
        <Disclosure title={label('web.usable-table')}>{() => <Lines found={found} />}</Disclosure>
      </Section>
      <Section id="trust" title="web.usable-doubt">
        <Bullets messages={[...found.messages.filter(isOfLines), { code: 'nutrients.chart-origin' }]} />
      </Section>
    </>
  );
}

function Bullets({ messages }: { readonly messages: readonly Message[] }) {
  const { speaker } = useGarden();
  return (
    <ul className={page.bullets}>
      {[...new Set(messages.map(speaker.say))].map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

/** What the picture shows at the two pH, in words. */
function Lines({ found }: { readonly found: PlaceNutrients }) {
  const { speaker } = useGarden();
  const planned = found.planned !== undefined;
  return (
    <Table
      cards
      caption={label('web.usable-table')}
      columns={[
        'web.usable-col-nutrient',
        'web.usable-col-today',
        ...(planned ? (['web.usable-col-planned'] as const) : []),
        'web.usable-col-why',
      ]}
      rows={[
        ...found.lines.map((line) => ({
          key: line.nutrient,
          cells: [
            nutrientName(line.nutrient),
            <Word
              key="today"
              word={speaker.say({ code: `nutrients.word-${line.today.word}` })}
              basis={line.today.basis}
            />,
            ...(planned
              ? [line.planned === undefined ? '–' : speaker.say({ code: `nutrients.word-${line.planned.word}` })]
              : []),
            speaker.say(line.why),
          ],
        })),
      ]}
    />
  );
}

function Word({ word, basis }: { readonly word: string; readonly basis: string }) {
  return (
    <>
      {word} {basis === 'memory' ? <Memory /> : null}
    </>
  );
}
