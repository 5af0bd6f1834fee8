import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { label } from '../../words/label.ts';
import styles from './print.module.css';

/** Modules of white around a code (ISO/IEC 18004). */
const QUIET = 4;

/** A label for each bed, whose code leads to its screen. */
export function BedLabels({ places }: { readonly places: readonly PlannedPlace[] }) {
  const { record } = useGarden();
  return (
    <ul className={styles.labels}>
      {places.map(({ id, name }) => (
        <li key={id} className={styles.label}>
          <Code text={`${location.origin}/g/${record.id}/place/${id}`} title={label('web.paper-qr', { place: name })} />
          <span className={styles.labelWords}>
            <strong>{name}</strong>
            <span className={styles.soft}>{record.document.garden}</span>
            <span className={styles.soft}>{id.slice(-6)}</span>
            <span className={styles.soft}>{label('web.paper-scan')}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Level Q, so that a quarter of a muddy label may be lost. */
function Code({ text, title }: { readonly text: string; readonly title: string }) {
  const code = generate(text, { minCorrectionLevel: correction.Q });
  const side = code.size + 2 * QUIET;
  return (
    <svg className={styles.code} viewBox={`${-QUIET} ${-QUIET} ${side} ${side}`} role="img" aria-label={title}>
      <path d={toSvgPath(code)} />
    </svg>
  );
}
