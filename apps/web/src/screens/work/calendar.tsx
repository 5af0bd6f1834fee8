import { useCallback } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useAsync } from '../../app/use-async.ts';
import { download, fileName } from '../../data/download.ts';
import { useStore } from '../../data/store-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Field } from '../../kit/field.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { useToast } from '../../kit/toast.tsx';
import { label } from '../../words/label.ts';

/** The plan's days as a file, and as an address to follow where a server keeps the garden. */
export function Calendar() {
  const { record } = useGarden();
  const { served } = useStore();
  const save = useCalendarFile();
  return (
    <Section id="calendar" title="web.calendar-title">
      <p className={page.soft}>{label('web.calendar-text')}</p>
      <div>
        <Button onClick={() => void save()}>
          <Icon name="down" size={20} />
          {label('web.calendar-file')}
        </Button>
      </div>
      {served === undefined ? null : <Feed load={served.calendarFeed} garden={record.id} />}
    </Section>
  );
}

function useCalendarFile() {
  const { planned, record, speaker } = useGarden();
  return async () => {
    // The writer of calendars is fetched when the first one is wanted.
    const { calendar } = await import('@sorrel/print/calendar');
    const { garden } = planned.read;
    const known = planned.places.flatMap(({ id, place, plan }) =>
      place === undefined || plan === undefined ? [] : [{ place: { ...place, id }, plan }],
    );
    const text = calendar(
      { ...garden, places: known.map(({ place }) => place) },
      { recommendations: known.map(({ plan }) => plan), shopping: planned.shopping },
      {
        system: speaker.units,
        printed: garden.settings.today,
        stamp: new Date().toISOString(),
        gardenId: record.id,
        url: (place) => `${location.origin}/g/${record.id}/place/${place.id}`,
      },
    );
    download(fileName(record.document.garden, 'ics'), 'text/calendar', text);
  };
}

function Feed({ load, garden }: { readonly load: (garden: string) => Promise<string>; readonly garden: string }) {
  const toast = useToast();
  const fetched = useAsync(useCallback(() => load(garden), [load, garden]));
  // A server that offers no feed has a file all the same.
  if (fetched.state !== 'ready') return null;
  const copy = async () => {
    await navigator.clipboard.writeText(fetched.value);
    toast({ text: label('web.calendar-copied') });
  };
  return (
    <>
      <Field label={label('web.calendar-feed')} hint={label('web.calendar-feed-text')}>
        {(props) => <input {...props} readOnly value={fetched.value} onFocus={(event) => event.target.select()} />}
      </Field>
      {'clipboard' in navigator ? (
        <div>
          <Button onClick={() => void copy()}>{label('web.calendar-copy')}</Button>
        </div>
      ) : null}
    </>
  );
}
