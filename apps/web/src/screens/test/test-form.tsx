import { useMemo, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { Things } from '../../data/use-things.ts';
import { add, type Content, correct, remove } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { counted, label } from '../../words/label.ts';
import { checkTest, type Fault } from './check-test.ts';
import { contentOf, type Draft, draftOf, type TestEntry, unitPath } from './draft.ts';
import { Earlier } from './earlier.tsx';
import { FigureCard } from './figure-card.tsx';
import { allFigures, figureGroups, homeFigures } from './figures.ts';
import { KnownTests } from './known-tests.tsx';
import styles from './test.module.css';

export interface Correcting {
  readonly id: string;
  readonly kind: 'test' | 'reading';
  readonly content: TestEntry;
  readonly things: Things;
}

interface Props {
  /** Id of the place, when it is known already. */
  readonly at?: string;
  readonly correcting?: Correcting;
}

const instruments = ['laboratory', 'colour-kit', 'strip', 'probe'] as const;

export function TestForm({ at, correcting }: Props) {
  const { planned, record, speaker, write } = useGarden();
  const [, go] = useLocation();
  const today = planned.read.garden.settings.today;
  const only = planned.places.length === 1 ? planned.places[0]?.id : undefined;
  const [place, setPlace] = useState(at ?? only ?? '');
  const [draft, setDraft] = useState<Draft>(() =>
    correcting === undefined
      ? {
          values: {
            date: today,
            by: 'laboratory',
            region: record.document.region ?? '',
            [unitPath('depth')]: speaker.units === 'us' ? 'in' : 'cm',
          },
          picked: ['ph'],
        }
      : draftOf(correcting.content),
  );
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);

  const here = planned.places.find((each) => each.id === place);
  const content = useMemo(() => contentOf(draft), [draft]);
  const faults = useMemo(() => checkTest(content, today), [content, today]);
  const empty = allFigures.every((figure) =>
    figure.fields.every((field) => !draft.picked.includes(figure.key) || (draft.values[field.path] ?? '') === ''),
  );
  const faultAt = (path: string): Fault | undefined =>
    tried || left.has(path) ? faults.find((fault) => fault.path === path) : undefined;
  const shown = new Set(['date', 'by', 'laboratory', 'region', 'depth', 'cores', 'note', ...pickedPaths(draft)]);
  const homeless = tried ? faults.filter((fault) => !shown.has(fault.path)) : [];
  const count = faults.length + (place === '' ? 1 : 0) + (empty ? 1 : 0);

  const set = (path: string, value: string, unit?: string) =>
    setDraft(({ values, picked }) => ({
      picked,
      values: { ...values, [path]: value, ...(unit === undefined ? {} : { [unitPath(path)]: unit }) },
    }));
  const leave = (path: string) => setLeft((paths) => new Set(paths).add(path));
  const text = (path: string) => ({
    value: draft.values[path] ?? '',
    onChange: (value: string) => set(path, value),
    onBlur: () => leave(path),
    problem: said(faultAt(path)),
  });
  const by = draft.values.by ?? 'laboratory';
  const home = by !== 'laboratory';
  const offered = figureGroups
    .map((group) => ({
      ...group,
      figures: group.figures.filter(
        (figure) => !home || homeFigures.includes(figure.key) || draft.picked.includes(figure.key),
      ),
    }))
    .filter((group) => group.figures.length > 0);
  const laboratories = [
    ...new Set(record.document.places.flatMap((each) => each.tests ?? []).flatMap((test) => test.laboratory ?? [])),
  ];

  const save = async () => {
    setTried(true);
    if (count > 0 || here === undefined) {
      // The faults are drawn first, then the first of them is found.
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    const done = label(correcting === undefined ? 'web.test-saved' : 'web.test-corrected', { place: here.name });
    const entry =
      correcting === undefined
        ? add(record.id, 'test', content, place)
        : correcting.kind === 'test'
          ? correct(record.id, correcting.id, 'test', content, place)
          : correct(record.id, correcting.id, 'reading', readingOf(content, correcting.content), place);
    if (await write([entry], done)) go(`/place/${place}`);
  };

  return (
    <form
      ref={form}
      className={page.page}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <section className={page.sheet} aria-labelledby="about">
        <h2 id="about">{label('web.test-about')}</h2>
        <div className={page.grid}>
          <Select
            label={label('web.test-place')}
            value={place}
            onChange={setPlace}
            problem={tried && place === '' ? label('web.test-place-missing') : undefined}
            options={[
              ...(place === '' ? [{ value: '', label: label('web.test-choose') }] : []),
              ...planned.places.map(({ id, name }) => ({ value: id, label: name })),
            ]}
          />
          <TextInput label={label('web.test-date')} type="date" max={today} {...text('date')} />
        </div>
        <Choice
          legend={label('web.test-by')}
          legendShown
          wrap
          options={(correcting?.kind === 'reading'
            ? ['slurry-meter' as const, ...instruments.slice(1)]
            : instruments
          ).map((each) => ({ value: each as string, label: label(`web.by-${each}`) }))}
          value={by}
          onChange={(value) => set('by', value)}
        />
        {correcting === undefined ? (
          <p className={page.small}>
            {label('web.test-slurry')}{' '}
            <Link href={place === '' ? '/home-reading' : `/home-reading/${place}`}>
              {label('web.test-slurry-link')}
            </Link>
          </p>
        ) : null}
        <div className={page.grid}>
          {home ? null : (
            <>
              <TextInput
                label={label('web.test-laboratory')}
                hint={label('web.test-laboratory-hint')}
                offers={laboratories}
                {...text('laboratory')}
              />
              <TextInput
                label={label('web.test-region')}
                hint={label('web.test-region-hint')}
                optional={label('web.test-optional')}
                {...text('region')}
              />
            </>
          )}
          <Quantity
            label={label('web.test-depth')}
            hint={
              here?.place === undefined
                ? undefined
                : label('web.test-depth-hint', { depth: speaker.amount(here.place.depth, 'length') })
            }
            units={['cm', 'in']}
            value={draft.values.depth ?? ''}
            unit={draft.values[unitPath('depth')] ?? 'cm'}
            onChange={(value, unit) => set('depth', value, unit)}
            onBlur={() => leave('depth')}
            problem={said(faultAt('depth'))}
          />
          <TextInput
            label={label('web.test-cores')}
            hint={label('web.test-cores-hint')}
            optional={label('web.test-optional')}
            inputMode="numeric"
            {...text('cores')}
          />
        </div>
      </section>

      <section className={page.sheet} aria-labelledby="pick">
        <div className={page.head}>
          <h2 id="pick">{label('web.test-pick')}</h2>
          <p className={page.soft}>{label('web.test-pick-text')}</p>
        </div>
        {offered.map((group) => (
          <fieldset key={group.title} className={styles.group}>
            <legend>{label(group.title)}</legend>
            {group.figures.map((figure) => (
              <Tick
                key={figure.key}
                checked={draft.picked.includes(figure.key)}
                onChange={(on) =>
                  setDraft(({ values, picked }) => ({
                    values,
                    picked: on ? [...picked, figure.key] : picked.filter((key) => key !== figure.key),
                  }))
                }
              >
                {label(figure.title)}
              </Tick>
            ))}
          </fieldset>
        ))}
      </section>

      <section className={styles.numbers} aria-labelledby="numbers">
        <h2 id="numbers">{label('web.test-numbers')}</h2>
        {draft.picked.length === 0 ? <p className={page.soft}>{label('web.test-none-picked')}</p> : null}
        {allFigures
          .filter((figure) => draft.picked.includes(figure.key))
          .map((figure) => (
            <FigureCard
              key={figure.key}
              figure={figure}
              draft={draft}
              faultAt={faultAt}
              onChange={set}
              onLeave={leave}
            />
          ))}
        <TextInput label={label('web.test-note')} optional={label('web.optional')} {...text('note')} />
      </section>

      {tried && count > 0 ? (
        <Callout kind="wrong" title={counted('web.test-wrong', count)}>
          <ul>
            {place === '' ? <li>{label('web.test-place-missing')}</li> : null}
            {empty ? <li>{label('web.test-some-number')}</li> : null}
            {(homeless.length > 0 ? homeless : faults).map((fault) => (
              <li key={`${fault.path} ${fault.message}`}>{said(fault)}</li>
            ))}
          </ul>
        </Callout>
      ) : null}
      <div className={page.actions}>
        <Button type="submit" look="main">
          {label(correcting === undefined ? 'web.test-save' : 'web.test-save-correction')}
        </Button>
        {correcting === undefined || here === undefined ? null : (
          <Button
            look="danger"
            onClick={async () => {
              const gone = label('web.test-removed', { place: here.name });
              if (await write([remove(record.id, correcting.id)], gone)) go(`/place/${place}`);
            }}
          >
            {label('web.test-delete')}
          </Button>
        )}
      </div>
      {correcting === undefined ? null : <Earlier correcting={correcting} />}
      {correcting !== undefined || here === undefined ? null : <KnownTests planned={here} />}
    </form>
  );
}

const said = (fault: Fault | undefined): string | undefined =>
  fault === undefined ? undefined : `${fault.message} ${fault.fix}`;

const pickedPaths = ({ picked }: Draft): readonly string[] =>
  allFigures
    .filter((figure) => picked.includes(figure.key))
    .flatMap((figure) => figure.fields.map((field) => field.path));

/** A corrected home reading keeps the cups and the meter's check it was made with. */
function readingOf(content: TestEntry, before: TestEntry): Content<'reading'> {
  const { slurries, meterCheck } = before as Partial<Content<'reading'>>;
  const { date, by, depth, cores, ph, fizz, conductivity, note } = content;
  const kept = { date, by, depth, cores, ph, fizz, conductivity, note, slurries, meterCheck };
  return Object.fromEntries(Object.entries(kept).filter(([, value]) => value !== undefined)) as Content<'reading'>;
}
