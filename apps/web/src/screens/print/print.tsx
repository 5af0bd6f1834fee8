import { useState } from 'react';
import { Link, useSearch } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { PaperName } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import button from '../../kit/button.module.css';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Select } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { label } from '../../words/label.ts';
import { BedLabels } from './bed-labels.tsx';
import { Handouts } from './handouts.tsx';
import styles from './print.module.css';
import { WorkSheet } from './work-sheet.tsx';

const papers = ['work-sheet', 'handouts', 'labels'] as const;
type Paper = (typeof papers)[number];
const pdf: Readonly<Record<Paper, PaperName>> = {
  'work-sheet': 'work-sheet.pdf',
  handouts: 'handouts.pdf',
  labels: 'labels.pdf',
};

/** Paper: the sheet itself on the screen, the browser's own printing, and the server's typeset PDF. */
export default function Print() {
  const { planned, record, speaker } = useGarden();
  const { served } = useStore();
  const asked = new URLSearchParams(useSearch());
  const [paper, setPaper] = useState<Paper>(() => papers.find((each) => each === asked.get('paper')) ?? 'work-sheet');
  const [only, setOnly] = useState(() => planned.places.find(({ id }) => id === asked.get('place'))?.id ?? '');
  const [large, setLarge] = useState(false);
  const places =
    paper === 'work-sheet' || only === '' ? planned.places : planned.places.filter(({ id }) => id === only);
  if (planned.places.length === 0)
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.paper-title')}</h1>
        <p>{label('web.paper-no-places')}</p>
        <div>
          <ButtonLink href="/add-place" look="main">
            {label('web.garden-add')}
          </ButtonLink>
        </div>
      </div>
    );
  const query = {
    units: speaker.units,
    ...(paper !== 'work-sheet' && only !== '' ? { place: only } : {}),
    ...(paper === 'handouts' && large ? { largePrint: 'yes' } : {}),
  };
  return (
    <div className={page.page}>
      <header className={`${page.head} no-print`}>
        <h1>{label('web.paper-title')}</h1>
        <p className={page.lead}>{label('web.paper-lead')}</p>
      </header>
      <div className={`${page.sheet} ${page.narrow} no-print`}>
        <Choice
          legend={label('web.paper-what')}
          legendShown
          wrap
          options={papers.map((value) => ({ value, label: label(`web.paper-${value}`) }))}
          value={paper}
          onChange={setPaper}
        />
        <p className={page.soft}>{label(`web.paper-${paper}-text`)}</p>
        {paper === 'work-sheet' ? null : (
          <Select
            label={label('web.paper-places')}
            value={only}
            onChange={setOnly}
            options={[
              { value: '', label: label('web.paper-all') },
              ...planned.places.map(({ id, name }) => ({ value: id, label: name })),
            ]}
          />
        )}
        {paper === 'handouts' ? (
          <Tick checked={large} onChange={setLarge}>
            {label('web.paper-large')}
          </Tick>
        ) : null}
        <div className={page.actions}>
          {served === undefined ? null : (
            <a
              className={`${button.button} ${button.main}`}
              href={served.paper(record.id, pdf[paper], query)}
              target="_blank"
              rel="noreferrer"
            >
              {label('web.paper-pdf')}
            </a>
          )}
          <Button look={served === undefined ? 'main' : 'plain'} onClick={() => window.print()}>
            <Icon name="print" size={20} />
            {label('web.paper-print')}
          </Button>
        </div>
        {served === undefined ? null : <p className={page.small}>{label('web.paper-pdf-text')}</p>}
        <p className={page.small}>
          {label('web.placing-from-print-text')} <Link href="/placing">{label('web.placing-from-print')}</Link>
        </p>
      </div>
      <section aria-label={label('web.paper-preview')} className={`${styles.preview} ${large ? styles.large : ''}`}>
        {paper === 'work-sheet' ? <WorkSheet /> : null}
        {paper === 'handouts' ? <Handouts places={places} /> : null}
        {paper === 'labels' ? <BedLabels places={places} /> : null}
      </section>
    </div>
  );
}
