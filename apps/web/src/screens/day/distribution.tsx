import type { DaySummary } from '../../data/garden-store.ts';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import styles from './distribution.module.css';

/** How the soils are spread over the classes of pH, all together and by neighbourhood. */
export function Distribution({ summary }: { readonly summary: DaySummary }) {
  const { all, neighbourhoods, classes } = summary;
  const most = Math.max(1, ...all.classes);
  // Classes that nobody's soil is in, at either end, would only take room.
  const used = classes
    .map((each, index) => ({ ...each, index, count: all.classes[index] ?? 0 }))
    .filter(({ count }) => count > 0);
  return (
    <>
      <h3>{label('web.day-out-distribution')}</h3>
      <ul className={styles.bars}>
        {used.map(({ name, low, high, count }) => (
          <li key={name}>
            <span className={styles.class}>
              {name} <span className={styles.range}>{rangeOf(low, high)}</span>
            </span>
            <svg className={styles.bar} viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
              <rect width={(count / most) * 100} height="10" />
            </svg>
            <span className={styles.count}>{count}</span>
          </li>
        ))}
      </ul>
      <h3>{label('web.day-out-by-place')}</h3>
      <Table
        caption={label('web.day-out-by-place')}
        figures
        head={[
          label('web.day-out-where'),
          label('web.day-out-samples'),
          label('web.day-out-median'),
          ...used.map(({ low, high }) => rangeOf(low, high)),
        ]}
        rows={[...neighbourhoods, all].map((group, row) => ({
          key: String(row),
          cells: [
            row === neighbourhoods.length
              ? label('web.day-out-everywhere')
              : (group.name ?? label('web.day-out-nowhere')),
            String(group.samples),
            group.medianPh?.toFixed(1) ?? '',
            ...used.map(({ index }) => String(group.classes[index] ?? 0)),
          ],
        }))}
      />
    </>
  );
}

/** Classes are printed to tenths: what is under the highest tenth of the lowest class. */
function rangeOf(low: number | null, high: number | null): string {
  if (low === null) return label('web.day-out-under', { high: ((high ?? 0) + 0.1).toFixed(1) });
  if (high === null) return label('web.day-out-over', { low: (low - 0.1).toFixed(1) });
  return label('web.day-out-between', { low: low.toFixed(1), high: high.toFixed(1) });
}
