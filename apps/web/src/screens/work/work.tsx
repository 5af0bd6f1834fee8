import { useMemo, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { Choice } from '../../kit/choice.tsx';
import page from '../../kit/page.module.css';
import { day, label } from '../../words/label.ts';
import { Calendar } from './calendar.tsx';
import { Done } from './done.tsx';
import { JobCard } from './job-card.tsx';
import { type Job, jobsOf, spanOf, spans } from './jobs.ts';
import { Shopping } from './shopping.tsx';

type By = 'time' | 'place';

/** What to do, when; what was done; what to buy; the calendar. */
export default function Work() {
  const { planned } = useGarden();
  const [by, setBy] = useState<By>('time');
  const today = planned.read.garden.settings.today;
  const jobs = useMemo(() => jobsOf(planned.places, today), [planned, today]);
  const groups: readonly { readonly key: string; readonly title: string; readonly jobs: readonly Job[] }[] =
    by === 'time'
      ? spans.map((span) => ({
          key: span,
          title: label(`web.work-${span}`),
          jobs: jobs.filter((job) => spanOf(job, today) === span),
        }))
      : planned.places.map(({ id, name }) => ({
          key: id,
          title: name,
          jobs: jobs.filter((job) => job.planned.id === id),
        }));
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <h1>{label('web.work-title')}</h1>
        <p className={page.lead}>{label('web.work-lead', { date: day(today) })}</p>
      </header>
      {jobs.length === 0 ? (
        <div className={page.sheet}>
          <h2>{label('web.work-none')}</h2>
          <p>{label('web.work-none-text')}</p>
        </div>
      ) : (
        <div className="no-print">
          <Choice
            legend={label('web.work-by')}
            options={[
              { value: 'time', label: label('web.work-by-time') },
              { value: 'place', label: label('web.work-by-place') },
            ]}
            value={by}
            onChange={setBy}
          />
        </div>
      )}
      {groups
        .filter((group) => group.jobs.length > 0)
        .map((group) => (
          <section key={group.key} className={page.plain} aria-labelledby={`jobs-${group.key}`}>
            <h2 id={`jobs-${group.key}`}>{group.title}</h2>
            <ul className={page.plain}>
              {group.jobs.map((job) => (
                <JobCard key={job.key} job={job} withPlace={by === 'time'} />
              ))}
            </ul>
          </section>
        ))}
      <Done />
      <Shopping />
      <Calendar />
    </div>
  );
}
