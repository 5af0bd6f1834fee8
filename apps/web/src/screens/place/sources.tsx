import { cite } from '@sorrel/almanac/sources';
import type { Derivation } from '@sorrel/engine/derivation';
import { label } from '../../words/label.ts';
import styles from './working.module.css';

/** Every publication a derivation rests on. Its own piece of the page: the list of all sources is long. */
export default function Sources({ derivation }: { readonly derivation: Derivation }) {
  const keys = new Set(
    derivation.steps.flatMap((step) => [...step.sources, ...step.terms.flatMap((term) => term.source ?? [])]),
  );
  return (
    <>
      <h3>{label('web.working-sources')}</h3>
      <dl className={styles.sources}>
        {[...keys].sort().map((key) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{cite(key)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
