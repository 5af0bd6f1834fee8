import { useState } from 'react';
import { useSearch } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { add, type Content } from '../../data/write.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { counted, label } from '../../words/label.ts';
import { CheckCard } from './check-card.tsx';
import styles from './day.module.css';
import { type Day, dueOf, duplicateOf, type Sample, unread } from './day-model.ts';
import { DayScreen } from './day-screen.tsx';
import { Lately } from './lately.tsx';
import { OneReading } from './one-reading.tsx';
import { readingEntries } from './reading-entries.ts';
import { ReadingGrid } from './reading-grid.tsx';
import { type Setup, useSetup } from './setup.ts';
import { signed } from './signed.ts';
import type { DaySession } from './use-day.ts';

/** A helper with a meter: enter, next, done; the plan of checks steps in at the right time. */
export default function Readings() {
  return <DayScreen>{(session) => <ReadingsPage session={session} />}</DayScreen>;
}

function ReadingsPage({ session }: { readonly session: DaySession }) {
  const { day, send } = session;
  const { record } = useGarden();
  const [setup, change] = useSetup(record.id);
  const asked = new URLSearchParams(useSearch()).get('code') ?? undefined;
  /** Something was entered on this visit, so the focus may go where the work is. */
  const [busy, setBusy] = useState(false);
  /** Readings of the meter when a check was put off; it is asked for again after the next. */
  const [putOff, setPutOff] = useState<number>();
  /** A meter remembered from before needs no form in the way. */
  const [folded] = useState(setup.meter.trim() !== '');
  const [unsaved, setUnsaved] = useState<readonly { readonly sample: Sample; readonly ph: number }[]>([]);
  const meter = setup.meter.trim();
  const chosen = { ...setup, meter };
  const waiting = unread(day);
  const queue = [...waiting, ...day.repeat.map(({ sample }) => sample)];
  const repeat = new Set(day.repeat.map(({ sample }) => sample.id));
  const found = day.meters.find(({ name }) => name === meter);
  const readings = found?.readings.length ?? 0;
  const [due] = meter === '' || putOff === readings ? [] : dueOf(day, meter);
  const doneTwice = new Set(
    session.entries.flatMap(({ entry }) =>
      entry.action === 'add' && entry.kind === 'quality' && entry.place !== undefined ? [entry.place] : [],
    ),
  );
  const twice = due === 'duplicate' ? duplicateOf(day, meter, doneTwice) : undefined;

  const read = (sample: Sample, ph: number) => {
    setBusy(true);
    const done = label('web.day-read-saved', { code: sample.code, ph: ph.toFixed(2) });
    void send(readingEntries(record.id, sample, ph, chosen), done).then((taken) => {
      if (!taken) setUnsaved((before) => [...before, { sample, ph }]);
    });
  };
  const check = (content: Content<'quality'>, place: string | undefined) => {
    setBusy(true);
    const off = signed(content.shown - content.expected);
    void send(
      [add(record.id, 'quality', content, place)],
      label('web.day-check-saved', { check: label(`web.day-check-${content.check}`), off }),
    );
  };
  if (day.samples.length === 0)
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.day-read-title')}</h1>
        <p>{label('web.day-read-empty')}</p>
        <div>
          <ButtonLink href="/check-in" look="main">
            {label('web.day-first')}
          </ButtonLink>
        </div>
      </div>
    );
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <div className={page.row}>
          <h1>{label('web.day-read-title')}</h1>
          <ButtonLink href="/meters">{label('web.day-meters-title')}</ButtonLink>
        </div>
        <p className={page.lead} role="status">
          {counted('web.day-read-left', waiting.length, { samples: day.samples.length })}
        </p>
      </header>
      {folded ? (
        <Disclosure
          title={label('web.day-read-with', { meter, liquid: label(`web.day-read-method-${setup.method as Method}`) })}
        >
          {() => <Setting day={day} setup={setup} change={change} />}
        </Disclosure>
      ) : (
        <section className={page.sheet} aria-label={label('web.day-read-setup')}>
          <Setting day={day} setup={setup} change={change} />
        </section>
      )}
      <Choice
        legend={label('web.day-read-view')}
        options={(['one', 'grid'] as const).map((value) => ({ value, label: label(`web.day-read-view-${value}`) }))}
        value={setup.view}
        onChange={(view) => change({ view })}
      />
      {unsaved.length === 0 ? null : (
        <Callout kind="wrong" title={counted('web.day-read-unsaved', unsaved.length)}>
          <p>{unsaved.map(({ sample, ph }) => `${sample.code}: ${ph.toFixed(2)}`).join(', ')}</p>
          <Button
            onClick={() => {
              setUnsaved([]);
              for (const { sample, ph } of unsaved) read(sample, ph);
            }}
          >
            {label('web.retry')}
          </Button>
        </Callout>
      )}
      {meter === '' ? (
        <Callout>
          <p>{label('web.day-read-no-meter')}</p>
        </Callout>
      ) : due !== undefined && (due !== 'duplicate' || twice !== undefined) ? (
        <CheckCard
          key={`${due} ${found?.acts.length ?? 0}`}
          check={due}
          day={day}
          setup={chosen}
          onSetup={change}
          twice={twice}
          focused={busy}
          onDone={check}
          onLater={() => {
            setBusy(true);
            setPutOff(readings);
          }}
        />
      ) : queue.length === 0 && asked === undefined && setup.view === 'one' ? (
        <Callout title={label('web.day-all-read')}>
          <ButtonLink href="/results" look="main">
            {label('web.day-next-results')}
          </ButtonLink>
        </Callout>
      ) : setup.view === 'one' ? (
        <OneReading samples={day.samples} queue={queue} asked={asked} focused={busy} onRead={read} />
      ) : (
        <ReadingGrid samples={day.samples} queue={queue} repeat={repeat} focused={busy} onRead={read} />
      )}
      {putOff === readings && meter !== '' && dueOf(day, meter).length > 0 ? (
        <Callout kind="care">
          <p>{label('web.day-check-put-off')}</p>
        </Callout>
      ) : null}
      <Lately session={session} meter={meter} />
    </div>
  );
}

const methods = ['water-1:1', 'water-1:2', 'cacl2-0.01M'] as const;
type Method = (typeof methods)[number];

interface SettingProps {
  readonly day: Day;
  readonly setup: Setup;
  readonly change: (part: Partial<Setup>) => void;
}

/** Which meter reads, and in which liquid. */
function Setting({ day, setup, change }: SettingProps) {
  return (
    <div className={styles.trio}>
      <TextInput
        label={label('web.day-read-meter')}
        hint={label('web.day-read-meter-hint')}
        offers={day.meters.map(({ name }) => name)}
        value={setup.meter}
        onChange={(name) => change({ meter: name })}
      />
      <Select
        label={label('web.day-read-method')}
        hint={label('web.day-read-method-hint')}
        value={setup.method}
        onChange={(value) => change({ method: value as Method })}
        options={methods.map((value) => ({ value, label: label(`web.day-read-method-${value}`) }))}
      />
    </div>
  );
}
