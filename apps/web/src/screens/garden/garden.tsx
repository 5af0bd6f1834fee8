import { useMemo, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { ButtonLink } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Icon } from '../../kit/icon.tsx';
import { PhKey } from '../../ph-line/ph-key.tsx';
import { day as dayText, label } from '../../words/label.ts';
import { EmptyGarden } from './empty-garden.tsx';
import styles from './garden.module.css';
import { GardenLine } from './garden-line.tsx';
import { GardenNotes } from './garden-notes.tsx';
import { GardenTable } from './garden-table.tsx';
import { byNeed, countByNeed, type Need, needOf, needs } from './need.ts';
import { NextWork } from './next-work.tsx';
import { needIcon, needLabel } from './verdict.ts';

/** The whole garden at a glance. */
export default function Garden() {
  const { planned, record } = useGarden();
  const [only, setOnly] = useState<Need | 'all'>('all');
  const [view, setView] = useState<'picture' | 'table'>('picture');
  const { places, read } = planned;
  const day = read.garden.settings.today;
  const ordered = useMemo(() => byNeed(places, day), [places, day]);
  const counts = useMemo(() => countByNeed(places, day), [places, day]);
  if (places.length === 0) return <EmptyGarden name={record.document.garden} />;
  // A filter whose last place has just been dealt with would leave an empty screen.
  const filter = only !== 'all' && counts[only] === 0 ? 'all' : only;
  const shown = filter === 'all' ? ordered : ordered.filter((place) => needOf(place, day) === filter);
  return (
    <div className={styles.page}>
      <header className={styles.head}>
        <div>
          <h1>{record.document.garden}</h1>
          <p className={styles.soft}>{label('web.garden-as-of', { date: dayText(day) })}</p>
        </div>
        <ButtonLink href="/add-place">
          <Icon name="plus" size={20} />
          {label('web.garden-add')}
        </ButtonLink>
      </header>
      <NextWork places={ordered} day={day} />
      <section aria-labelledby="line" className={styles.section}>
        <div className={styles.lineHead}>
          <h2 id="line">{label('web.garden-line')}</h2>
          <Choice
            legend={label('web.garden-view')}
            options={[
              { value: 'picture', label: label('web.garden-picture') },
              { value: 'table', label: label('web.garden-table') },
            ]}
            value={view}
            onChange={setView}
          />
        </div>
        <Choice
          legend={label('web.garden-filter')}
          wrap
          options={[
            { value: 'all' as const, label: label('web.garden-all'), count: places.length },
            ...needs
              .filter((need) => counts[need] > 0)
              .map((need) => ({
                value: need,
                label: label(needLabel[need]),
                icon: needIcon[need],
                count: counts[need],
              })),
          ]}
          value={filter}
          onChange={setOnly}
        />
        {view === 'table' ? (
          <GardenTable places={shown} day={day} />
        ) : (
          <>
            <GardenLine places={shown} all={places} day={day} />
            <PhKey />
          </>
        )}
      </section>
      <GardenNotes read={read} />
    </div>
  );
}
