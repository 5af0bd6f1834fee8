import { lazy, Suspense, useState } from 'react';
import { label } from '../words/label.ts';
import styles from './cited.module.css';
import { Memory } from './memory.tsx';

const Citation = lazy(() => import('./citation.tsx'));

interface Props {
  readonly sources: readonly string[];
  /** How the figure is known; what rests on memory is marked. */
  readonly basis?: string;
  /** Shows the keys themselves instead of “where this comes from”. */
  readonly keys?: boolean;
}

/** The publications behind a figure, in full one tap below. */
export function Cited({ sources, basis, keys = false }: Props) {
  const [seen, setSeen] = useState(false);
  return (
    <details
      className={styles.cited}
      onToggle={(event) => {
        if (event.currentTarget.open) setSeen(true);
      }}
    >
      <summary>
        {keys ? sources.join(', ') : label('web.sources')} {basis === 'memory' ? <Memory /> : null}
      </summary>
      {seen ? (
        <dl className={styles.list}>
          {sources.map((key) => (
            <div key={key}>
              <dt>{key}</dt>
              <dd>
                <Suspense fallback={null}>
                  <Citation of={key} />
                </Suspense>
              </dd>
            </div>
          ))}
        </dl>
      ) : null}
    </details>
  );
}
