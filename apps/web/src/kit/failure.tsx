import { NoAnswer, NotFound } from '../data/garden-store.ts';
import { label } from '../words/label.ts';
import { Button } from './button.tsx';
import styles from './failure.module.css';

/** What is shown instead of a screen that could not be drawn or fetched. */
export function Failure({ error, retry }: { readonly error: unknown; readonly retry?: () => void }) {
  if (error instanceof NotFound)
    return (
      <Notice title={label('web.not-found-title')} text={label('web.not-found-text')}>
        <a href="/">{label('web.nav-gardens')}</a>
      </Notice>
    );
  const text =
    error instanceof NoAnswer ? label('web.load-failed', { reason: label('web.no-answer') }) : label('web.failed-text');
  return (
    <Notice title={label('web.failed-title')} text={text}>
      <Button onClick={retry ?? (() => location.reload())}>{label('web.retry')}</Button>
      <details className={styles.detail}>
        <summary>{label('web.failed-detail')}</summary>
        <code>{error instanceof Error ? error.message : String(error)}</code>
      </details>
    </Notice>
  );
}

function Notice(props: { readonly title: string; readonly text: string; readonly children: React.ReactNode }) {
  return (
    <div className={styles.notice} role="alert">
      <h1>{props.title}</h1>
      <p>{props.text}</p>
      {props.children}
    </div>
  );
}
