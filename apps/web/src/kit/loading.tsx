import { useEffect, useState } from 'react';
import { label, type WebCode } from '../words/label.ts';
import styles from './loading.module.css';

/** Says what is going on, but only when it lasts longer than a blink. */
export function Loading({ code = 'web.loading' }: { readonly code?: WebCode }) {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), 400);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div className={styles.loading} role="status">
      {slow ? (
        <>
          <progress aria-hidden="true" />
          <p>{label(code)}</p>
        </>
      ) : null}
    </div>
  );
}
