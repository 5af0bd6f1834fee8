import { changeColumn, meaningRow, meanings, NOT_USED, type Proposal } from '@sorrel/intake';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import styles from './lab.module.css';

interface Props {
  readonly proposal: Proposal;
  readonly onChange: (proposal: Proposal) => void;
}

/** What each column is taken for, to be confirmed or put right. */
export function LabColumns({ proposal, onChange }: Props) {
  return (
    <Section id="columns" title="web.day-lab-columns">
      <p className={page.soft}>{label('web.day-lab-columns-text')}</p>
      <Table
        caption={label('web.day-lab-columns')}
        cards
        columns={[
          'web.day-lab-column',
          'web.day-lab-means',
          'web.day-lab-unit',
          'web.day-lab-examples',
          'web.day-lab-why',
        ]}
        rows={proposal.columns.map((column, at) => ({
          key: `${at} ${column.title}`,
          cells: [
            column.title,
            <select
              key="means"
              className={styles.select}
              aria-label={label('web.day-lab-means-of', { column: column.title })}
              value={column.means}
              onChange={(event) => {
                const changed = changeColumn(proposal, column.title, { means: event.target.value });
                if (changed.ok) onChange(changed.proposal);
              }}
            >
              <option value={NOT_USED}>{label('web.day-lab-not-used')}</option>
              {meanings.map((meaning) => (
                <option key={meaning} value={meaning}>
                  {meaningRow(meaning)?.title ?? meaning}
                </option>
              ))}
            </select>,
            [column.unit, column.method].filter((each) => each !== undefined).join(', '),
            column.examples.slice(0, 3).join(', '),
            column.used ? column.reason : `${label('web.day-lab-kept-out')} ${column.reason}`,
          ],
        }))}
      />
    </Section>
  );
}
