import { useEffect, useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { label } from '../../words/label.ts';
import styles from './sampling.module.css';

const MINUTES = 15;

/** Fifteen minutes of patience. Counts by the clock, so that a sleeping phone still wakes up right. */
export function Timer() {
  const [end, setEnd] = useState<number>();
  const [now, setNow] = useState(0);
  const left = end === undefined ? undefined : Math.max(0, Math.ceil((end - now) / 1000));
  useEffect(() => {
    if (end === undefined) return;
    const ticker = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(ticker);
  }, [end]);
  if (left === undefined)
    return (
      <div>
        <Button
          onClick={() => {
            setNow(Date.now());
            setEnd(Date.now() + MINUTES * 60_000);
          }}
        >
          {label('web.reading-timer')}
        </Button>
      </div>
    );
  const time = `${Math.floor(left / 60)}:${String(left % 60).padStart(2, '0')}`;
  return (
    <div>
      {left > 0 ? <p className={styles.timer}>{label('web.reading-timer-left', { time })}</p> : null}
      <p role="status">{left > 0 ? null : label('web.reading-timer-done')}</p>
      <Button look="quiet" onClick={() => setEnd(undefined)}>
        {label('web.reading-timer-stop')}
      </Button>
    </div>
  );
}
