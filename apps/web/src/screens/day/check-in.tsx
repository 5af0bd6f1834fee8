import { useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { add, correct, remove } from '../../data/write.ts';
import { ButtonLink } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import { CheckInForm } from './check-in-form.tsx';
import type { Sample } from './day-model.ts';
import { DayScreen } from './day-screen.tsx';
import { nextCode } from './next-code.ts';
import { draftOf, freshSample, type SampleContent } from './sample-draft.ts';
import { SampleList } from './sample-list.tsx';
import type { DaySession } from './use-day.ts';

/** The check-in: a form for each bag, and the list of those that are in. */
export default function CheckIn() {
  return <DayScreen>{(session) => <CheckInPage session={session} />}</DayScreen>;
}

function CheckInPage({ session: { day, send } }: { readonly session: DaySession }) {
  const { record } = useGarden();
  const [edited, setEdited] = useState<Sample>();
  /** Counts the bags, so that each gets a fresh form. */
  const [bag, setBag] = useState(0);
  const codes = day.samples.map(({ code }) => code);
  const next = nextCode(codes);
  const save = (content: SampleContent) => {
    const code = content.name;
    const done = edited === undefined ? 'web.day-in-saved' : 'web.day-in-changed';
    const entry =
      edited === undefined ? add(record.id, 'place', content) : correct(record.id, edited.id, 'place', content);
    // The next bag need not wait for this one to arrive.
    void send([entry], label(done, { code }));
    setEdited(undefined);
    setBag(bag + 1);
  };
  return (
    <div className={page.page}>
      <header className={page.head}>
        <div className={page.row}>
          <h1>{label('web.day-in-title')}</h1>
          {codes.length === 0 ? null : <ButtonLink href="/labels">{label('web.day-in-labels')}</ButtonLink>}
        </div>
        <p className={page.lead}>{label('web.day-in-lead')}</p>
      </header>
      <section className={page.sheet} aria-labelledby="form">
        <h2 id="form">
          {edited === undefined ? label('web.day-in-new') : label('web.day-in-editing', { code: edited.code })}
        </h2>
        <CheckInForm
          key={`${bag} ${edited?.id}`}
          start={edited === undefined ? freshSample(next) : draftOf(edited.content)}
          before={edited?.content}
          next={next}
          taken={codes.filter((code) => code !== edited?.code)}
          neighbourhoods={day.neighbourhoods}
          // The first form of the visit waits until it is asked for.
          focused={bag > 0 || edited !== undefined}
          onSave={save}
          onCancel={edited === undefined ? undefined : () => setEdited(undefined)}
        />
      </section>
      <SampleList
        samples={day.samples}
        onEdit={setEdited}
        onRemove={(sample) => {
          if (edited?.id === sample.id) setEdited(undefined);
          void send([remove(record.id, sample.id)], label('web.day-in-removed', { code: sample.code }));
        }}
      />
    </div>
  );
}
