import type { Answers } from '@sorrel/engine/nutrients';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { useStore } from '../../data/store-context.tsx';
import { add, type Content } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import button from '../../kit/button.module.css';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Field } from '../../kit/field.tsx';
import page from '../../kit/page.module.css';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import { answerSaid, stepsOf } from './conversation.ts';
import { paperQuery } from './paper-query.ts';
import { Photos } from './photos.tsx';

interface Props {
  readonly planned: PlannedPlace;
  readonly plant: string;
  readonly answers: Answers;
  readonly weeds: readonly string[];
}

/** Longest text of a symptom in the record. */
const LONGEST = 200;

/** Keeps what was seen with the place: answers, weeds, photos and a note. */
export function Keep({ planned, plant, answers, weeds }: Props) {
  const { record, write, speaker, planned: all } = useGarden();
  const { served } = useStore();
  const [, go] = useLocation();
  const { today } = all.read.garden.settings;
  const [date, setDate] = useState(today);
  const [note, setNote] = useState('');
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [tried, setTried] = useState(false);
  const [busy, setBusy] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const steps = stepsOf(answers);
  const empty = steps.length === 0 && weeds.length === 0 && photos.length === 0 && note.trim() === '';
  const wrongDate = !/^\d{4}-\d\d-\d\d$/.test(date) || date > today;
  const save = async () => {
    setTried(true);
    if (wrongDate) requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
    if (empty || wrongDate) return;
    const symptom = steps
      .map(({ question, answer }) => speaker.say(answerSaid(question, answer ?? '')))
      .join('; ')
      .slice(0, LONGEST);
    const content: Content<'observation'> = {
      date,
      ...(plant === '' ? {} : { plant: plant.slice(0, LONGEST) }),
      ...(symptom === '' ? {} : { symptom }),
      ...(steps.length === 0 ? {} : { answers }),
      ...(weeds.length === 0 ? {} : { weeds: [...weeds] }),
      ...(photos.length === 0 ? {} : { photos: [...photos] }),
      ...(note.trim() === '' ? {} : { note: note.trim() }),
    };
    setBusy(true);
    const done = await write(
      [add(record.id, 'observation', content, planned.id)],
      label('web.symptoms-saved', { place: planned.name }),
    );
    setBusy(false);
    if (done) go(`/place/${planned.id}`);
  };
  return (
    <form
      ref={form}
      noValidate
      aria-labelledby="keep"
      className={`${page.sheet} ${page.narrow} no-print`}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <h2 id="keep">{label('web.symptoms-keep')}</h2>
      <p className={page.soft}>{label('web.symptoms-keep-lead')}</p>
      <Photos photos={photos} onChange={setPhotos} plant={plant} date={date} />
      <TextInput
        label={label('web.symptoms-date')}
        type="date"
        max={today}
        value={date}
        onChange={setDate}
        problem={tried && wrongDate ? label('web.symptoms-date-wrong') : undefined}
      />
      <Field label={label('web.symptoms-note')} optional={label('web.edit-optional')}>
        {(props) => <textarea {...props} value={note} onChange={(event) => setNote(event.target.value)} />}
      </Field>
      {tried && empty ? <Callout kind="wrong">{label('web.symptoms-nothing')}</Callout> : null}
      <div className={page.actions}>
        <Button type="submit" look="main" disabled={busy}>
          {label('web.symptoms-save')}
        </Button>
        {served === undefined || steps.length === 0 ? null : (
          <a
            className={`${button.button} ${button.plain}`}
            href={served.paper(record.id, 'symptoms.pdf', {
              place: planned.id,
              units: speaker.units,
              ...paperQuery({ date, plant, answers, weeds, note }),
            })}
            target="_blank"
            rel="noreferrer"
          >
            {label('web.symptoms-pdf')}
          </a>
        )}
      </div>
    </form>
  );
}
