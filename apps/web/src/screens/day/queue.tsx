import { Link } from 'wouter';
import { NoAnswer } from '../../data/garden-store.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { counted, label } from '../../words/label.ts';
import styles from './day.module.css';
import { type Day, unread } from './day-model.ts';
import type { Progress } from './use-progress.ts';

/** More failures than this are counted, not listed. */
const MOST_DRAWN = 20;

/** How far the plans are, with what can be done about it. */
export function Queue({ day, progress: { now, error, ask } }: { readonly day: Day; readonly progress: Progress }) {
  const waiting = unread(day).length;
  if (now === undefined)
    return error === undefined ? (
      <Loading />
    ) : (
      <Callout kind="wrong">
        <p>{error instanceof NoAnswer ? label('web.no-answer') : String(error)}</p>
        <Button onClick={() => void ask('look')}>{label('web.retry')}</Button>
      </Callout>
    );
  const handed = now.waiting + now.running + now.done + now.failed;
  const failed = now.jobs.filter(({ state }) => state === 'failed');
  return (
    <Section id="through" title="web.day-out-through">
      <div className={page.sheet}>
        {error === undefined ? null : <p>{label('web.no-answer')}</p>}
        {day.repeat.length === 0 ? null : (
          <p>
            <Link href="/meters">{counted('web.day-out-repeat', day.repeat.length)}</Link>
          </p>
        )}
        {waiting === 0 ? null : <p>{counted('web.day-out-unread', waiting)}</p>}
        {now.state === 'none' ? (
          <p>{label('web.day-out-none')}</p>
        ) : (
          <div className={styles.progress}>
            <label htmlFor="progress">
              <strong>{label('web.day-out-progress', { done: now.done, all: handed })}</strong>
            </label>
            <progress id="progress" max={Math.max(1, handed)} value={now.done + now.failed} />
            <p role="status">
              {label(
                now.state === 'running'
                  ? 'web.day-out-running'
                  : now.state === 'paused'
                    ? 'web.day-out-paused'
                    : 'web.day-out-done',
              )}
            </p>
          </div>
        )}
        {now.state === 'none' || now.changed === 0 ? null : <p>{counted('web.day-out-changed', now.changed)}</p>}
        <div className={page.actions}>
          {now.state === 'none' || now.changed > 0 ? (
            <Button look="main" onClick={() => void ask('plan')}>
              {counted('web.day-out-plan', now.state === 'none' ? now.samples : now.changed)}
            </Button>
          ) : null}
          {now.state === 'running' ? (
            <Button onClick={() => void ask('pause')}>{label('web.day-out-pause')}</Button>
          ) : null}
          {now.state === 'paused' ? (
            <Button look="main" onClick={() => void ask('resume')}>
              {label('web.day-out-resume')}
            </Button>
          ) : null}
        </div>
        {failed.length === 0 ? null : (
          <Callout kind="wrong" title={counted('web.day-out-failed', failed.length)}>
            <ul>
              {failed.slice(0, MOST_DRAWN).map(({ place, code, error: why }) => (
                <li key={place}>
                  <strong>{code}</strong> {why}
                </li>
              ))}
            </ul>
            <Button onClick={() => void ask('retry')}>{label('web.day-out-retry')}</Button>
          </Callout>
        )}
      </div>
    </Section>
  );
}
