import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';
import { useMemo, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useStore } from '../../data/store-context.tsx';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Select } from '../../kit/text-input.tsx';
import { day as dayText, label } from '../../words/label.ts';
import styles from './day.module.css';
import type { Sample } from './day-model.ts';
import { DayScreen } from './day-screen.tsx';

/** Modules of white around a code (ISO/IEC 18004). */
const QUIET = 4;

/** A label for each bag, from a chosen code on, so that what is printed already is not printed again. */
export default function Labels() {
  return <DayScreen>{({ day }) => <LabelsPage samples={day.samples} />}</DayScreen>;
}

function LabelsPage({ samples }: { readonly samples: readonly Sample[] }) {
  const { record, speaker } = useGarden();
  const { served } = useStore();
  const [from, setFrom] = useState('');
  const first = Math.max(
    0,
    samples.findIndex(({ id }) => id === from),
  );
  if (samples.length === 0)
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.day-labels-title')}</h1>
        <p>{label('web.day-labels-none')}</p>
        <div>
          <ButtonLink href="/check-in" look="main">
            {label('web.day-first')}
          </ButtonLink>
        </div>
      </div>
    );
  return (
    <div className={page.page}>
      <header className={`${page.head} no-print`}>
        <h1>{label('web.day-labels-title')}</h1>
        <p className={page.lead}>{label('web.day-labels-lead')}</p>
      </header>
      <div className={`${page.sheet} no-print`}>
        <Select
          label={label('web.day-labels-from')}
          value={samples[first]?.id ?? ''}
          onChange={setFrom}
          options={samples.map(({ id, code }) => ({ value: id, label: code }))}
        />
        <div className={page.actions}>
          <Button look="main" onClick={() => window.print()}>
            <Icon name="print" size={20} />
            {label('web.day-labels-print')}
          </Button>
          {served === undefined ? null : (
            <a
              className={styles.link}
              href={served.paper(record.id, 'labels.pdf', { units: speaker.units })}
              target="_blank"
              rel="noreferrer"
            >
              {label('web.day-labels-pdf')}
            </a>
          )}
        </div>
      </div>
      <ul className={styles.labels}>
        {samples.slice(first).map((sample) => (
          <BagLabel key={sample.id} sample={sample} garden={record.id} />
        ))}
      </ul>
    </div>
  );
}

function BagLabel({ sample, garden }: { readonly sample: Sample; readonly garden: string }) {
  const { record } = useGarden();
  const { garden: name, soilDay } = record.document;
  return (
    <li className={styles.bag}>
      <Code
        text={`${location.origin}/g/${garden}/place/${sample.id}`}
        title={label('web.day-labels-qr', { code: sample.code })}
      />
      <span className={styles.bagWords}>
        <strong className={styles.bagCode}>{sample.code}</strong>
        <span>{sample.content.sample?.person}</span>
        <span className={page.small}>{name}</span>
        {soilDay === undefined ? null : <span className={page.small}>{dayText(soilDay.date)}</span>}
      </span>
    </li>
  );
}

/** Level Q, so that a quarter of a muddy label may be lost. */
function Code({ text, title }: { readonly text: string; readonly title: string }) {
  const { path, side } = useMemo(() => {
    const code = generate(text, { minCorrectionLevel: correction.Q });
    return { path: toSvgPath(code), side: code.size + 2 * QUIET };
  }, [text]);
  return (
    <svg className={styles.code} viewBox={`${-QUIET} ${-QUIET} ${side} ${side}`} role="img" aria-label={title}>
      <path d={path} />
    </svg>
  );
}
