import { useGarden } from '../../app/garden-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';
import type { SampleToTake } from './round.ts';
import styles from './sampling.module.css';

/** A label for the bag of each sample. Printing this screen prints the labels on a page of their own. */
export function BagLabels({ samples }: { readonly samples: readonly SampleToTake[] }) {
  const { record, speaker } = useGarden();
  return (
    <div className={styles.labelPage}>
      <Section id="labels" title="web.sampling-labels">
        <div className="no-print">
          <p className={styles.soft}>{label('web.sampling-labels-text')}</p>
        </div>
        <div className="no-print">
          <Button onClick={() => window.print()}>
            <Icon name="print" size={20} />
            {label('web.sampling-labels-print')}
          </Button>
        </div>
        <ul className={styles.labels}>
          {samples.map(({ number, places, depth, cores }) => (
            <li key={number} className={styles.label}>
              <p className={styles.labelName}>{label('web.sampling-sample', { number })}</p>
              <p className={styles.labelPlaces}>{places.map(({ name }) => name).join(', ')}</p>
              <dl>
                <div>
                  <dt>{label('web.sampling-label-garden')}</dt>
                  <dd>{record.document.garden}</dd>
                </div>
                <div>
                  <dt>{label('web.sampling-label-depth')}</dt>
                  <dd>{speaker.rough(depth, 'length')}</dd>
                </div>
                <div>
                  <dt>{label('web.sampling-label-cores')}</dt>
                  <dd>{cores.cores}</dd>
                </div>
                <div>
                  <dt>{label('web.sampling-label-date')}</dt>
                  <dd className={styles.blank} />
                </div>
                <div>
                  <dt>{label('web.sampling-label-by')}</dt>
                  <dd className={styles.blank} />
                </div>
              </dl>
            </li>
          ))}
        </ul>
      </Section>
    </div>
  );
}
