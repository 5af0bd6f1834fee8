import { useState } from 'react';
import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { days, label } from '../../words/label.ts';
import type { Job } from './jobs.ts';
import { TickOff } from './tick-off.tsx';
import styles from './work.module.css';

const icons = { spread: 'work', retest: 'test', find: 'look', mend: 'care' } as const;

/** One piece of work, with how it is done one tap below and a way to tick it off. */
export function JobCard({ job, withPlace }: { readonly job: Job; readonly withPlace: boolean }) {
  const { speaker } = useGarden();
  const [ticking, setTicking] = useState(false);
  const { planned } = job;
  const later = job.kind === 'spread' && job.application.onlyIfRetest;
  return (
    <li className={`${page.sheet} ${later ? styles.later : ''}`}>
      <div className={styles.job}>
        <Icon name={icons[job.kind]} />
        <div className={styles.words}>
          {withPlace ? (
            <p className={page.small}>
              <Link href={`/place/${planned.id}`}>{planned.name}</Link>
            </p>
          ) : null}
          <p className={styles.what}>{whatOf(job, speaker.weight)}</p>
          <p className={page.soft}>{days(job.from, job.to)}</p>
          {job.kind === 'spread' && !later && planned.checking ? (
            <p className={page.small}>{label('web.dose-checking')}</p>
          ) : null}
          {later ? <p className={page.small}>{label('web.work-only-if')}</p> : null}
          {job.kind === 'retest' ? <p className={page.small}>{speaker.say(job.why)}</p> : null}
          {job.kind === 'find' ? (
            <ul className={page.bullets}>
              {job.ask.map((message) => (
                <li key={message.code}>{speaker.say(message)}</li>
              ))}
            </ul>
          ) : null}
        </div>
        <div className={`${styles.tick} no-print`}>
          {job.kind === 'spread' && !later && !ticking ? (
            <Button onClick={() => setTicking(true)}>
              <Icon name="fine" size={20} />
              {label('web.work-done')}
            </Button>
          ) : null}
          {job.kind === 'retest' || job.kind === 'find' ? (
            <ButtonLink href={`/test/${planned.id}`}>{label('web.work-add-test')}</ButtonLink>
          ) : null}
          {job.kind === 'mend' ? <ButtonLink href={`/place/${planned.id}`}>{label('web.work-open')}</ButtonLink> : null}
        </div>
      </div>
      {job.kind === 'spread' && ticking && !later ? (
        <TickOff
          key={job.application.mass}
          planned={planned}
          application={job.application}
          onClose={() => setTicking(false)}
        />
      ) : null}
      {job.kind === 'spread' && !later ? (
        <Disclosure title={label('web.work-how')}>
          {() => (
            <ul className={page.bullets}>
              {[...job.application.how, ...(planned.plan?.cautions ?? [])].map((message, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: sentences keep their order
                <li key={index}>{speaker.say(message)}</li>
              ))}
            </ul>
          )}
        </Disclosure>
      ) : null}
    </li>
  );
}

export function whatOf(job: Job, weight: (mass: number) => string): string {
  switch (job.kind) {
    case 'spread':
      return label('web.work-spread', { amount: weight(job.application.mass), product: job.application.product.name });
    case 'retest':
      return label('web.work-retest');
    case 'find':
      return label('web.work-find');
    case 'mend':
      return label('web.work-mend');
  }
}
