import { useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import type { DayPaper, DayProgress, ServedDay } from '../../data/garden-store.ts';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { label, type WebCode } from '../../words/label.ts';
import styles from './day.module.css';

const papers: readonly (readonly [name: DayPaper, said: WebCode, ofHandouts: boolean])[] = [
  ['handouts.pdf', 'web.day-out-handouts', true],
  ['handouts.zip', 'web.day-out-archive', true],
  ['merge.csv', 'web.day-out-merge', false],
  ['summary.pdf', 'web.day-out-summary-pdf', false],
  ['anonymous.csv', 'web.day-out-anonymous', false],
];

interface Props {
  readonly served: ServedDay;
  readonly jobs: DayProgress['jobs'];
}

/** Everything that is given out, and one handout by its code. */
export function Papers({ served, jobs }: Props) {
  const { record, speaker } = useGarden();
  const planned = jobs.filter(({ state }) => state === 'done');
  const [large, setLarge] = useState(false);
  const [contact, setContact] = useState('');
  const [one, setOne] = useState('');
  const code = planned.find(({ place }) => place === one)?.code ?? planned[0]?.code ?? '';
  const base = { units: speaker.units, paper: speaker.units === 'us' ? 'us-letter' : 'a4' };
  const ofHandouts = {
    ...base,
    ...(large ? { largePrint: 'yes' } : {}),
    ...(contact.trim() === '' ? {} : { contact: contact.trim() }),
  };
  return (
    <Section id="out" title="web.day-out-papers">
      <div className={page.sheet}>
        <div className={styles.trio}>
          <TextInput
            label={label('web.day-out-contact')}
            optional={label('web.optional')}
            hint={label('web.day-out-contact-hint')}
            value={contact}
            onChange={setContact}
          />
          <div>
            <Tick checked={large} onChange={setLarge}>
              {label('web.day-out-large')}
            </Tick>
          </div>
        </div>
        <ul className={page.plain}>
          {papers.map(([name, said, handouts]) => (
            <li key={name}>
              <a
                className={styles.link}
                href={served.paper(record.id, name, handouts ? ofHandouts : base)}
                target="_blank"
                rel="noreferrer"
              >
                {label(said)}
              </a>
            </li>
          ))}
        </ul>
        <div className={styles.find}>
          <Select
            label={label('web.day-out-one')}
            value={planned.find((job) => job.code === code)?.place ?? ''}
            onChange={setOne}
            options={planned.map((job) => ({ value: job.place, label: job.code }))}
          />
          <a
            className={styles.link}
            href={served.paper(record.id, `handouts/${encodeURIComponent(code)}.pdf`, ofHandouts)}
            target="_blank"
            rel="noreferrer"
          >
            {label('web.day-out-one-open', { code })}
          </a>
        </div>
      </div>
    </Section>
  );
}
