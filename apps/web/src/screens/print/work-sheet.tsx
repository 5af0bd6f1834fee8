import { addMonths } from '@sorrel/engine/units';
import { useGarden } from '../../app/garden-context.tsx';
import { day, days, label } from '../../words/label.ts';
import { whatOf } from '../work/job-card.tsx';
import { jobsOf } from '../work/jobs.ts';
import styles from './print.module.css';

/** A sheet of paper lasts a year at most. */
const MONTHS = 12;

/** All work of the garden on one list, with boxes to tick and room to write. */
export function WorkSheet() {
  const { planned, record, speaker } = useGarden();
  const today = planned.read.garden.settings.today;
  const jobs = jobsOf(planned.places, today).filter(
    (job) => job.from <= addMonths(today, MONTHS) && (job.kind !== 'spread' || !job.application.onlyIfRetest),
  );
  const cautions = [
    ...new Set(
      jobs.flatMap((job) =>
        job.kind === 'spread' ? (job.planned.plan?.cautions ?? []).map((message) => speaker.say(message)) : [],
      ),
    ),
  ];
  return (
    <article className={styles.paper}>
      <h2>{label('web.paper-sheet-of', { garden: record.document.garden })}</h2>
      <p className={styles.soft}>{label('web.paper-made', { date: day(today) })}</p>
      {jobs.length === 0 ? <p>{label('web.work-none')}</p> : null}
      <ul className={styles.jobs}>
        {jobs.map((job) => (
          <li key={job.key}>
            <span className={styles.box} aria-hidden="true" />
            <span>
              <strong>{job.planned.name}</strong>
              <span className={styles.line}>{whatOf(job, speaker.weight)}</span>
              <span className={styles.soft}>
                {days(job.from, job.to)}
                {job.kind === 'spread' && job.planned.checking ? ` · ${label('web.dose-checking')}` : null}
              </span>
            </span>
            {job.kind === 'spread' ? (
              <span className={styles.write}>
                <span>{label('web.paper-used')}</span>
                <span>{label('web.work-day')}</span>
              </span>
            ) : null}
          </li>
        ))}
      </ul>
      {cautions.length === 0 ? null : (
        <>
          <h3>{label('web.paper-care')}</h3>
          <ul className={styles.bullets}>
            {cautions.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
      <p className={styles.soft}>{label('web.paper-rules')}</p>
    </article>
  );
}
