import { useDeferredValue, useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { label, listed } from '../../words/label.ts';
import styles from './day.module.css';
import type { Sample } from './day-model.ts';

interface Props {
  readonly samples: readonly Sample[];
  readonly onEdit: (sample: Sample) => void;
  readonly onRemove: (sample: Sample) => void;
}

/** Rows drawn before she asks for all of them. */
const FEW = 30;

/** Who is checked in, the newest first. */
export function SampleList({ samples, onEdit, onRemove }: Props) {
  const [look, setLook] = useState('');
  const [all, setAll] = useState(false);
  const wanted = useDeferredValue(look).trim().toLowerCase();
  const found = samples.filter((sample) => textOf(sample).includes(wanted)).reverse();
  const shown = all ? found : found.slice(0, FEW);
  return (
    <Section id="samples" title="web.day-in-list">
      {samples.length === 0 ? (
        <p className={page.soft}>{label('web.day-in-none')}</p>
      ) : (
        <>
          <div className={styles.find}>
            <TextInput label={label('web.day-in-look')} value={look} onChange={setLook} />
            <p className={page.soft} role="status">
              {label('web.day-in-found', { shown: found.length, count: samples.length })}
            </p>
          </div>
          <Table
            caption={label('web.day-in-list')}
            cards
            columns={[
              'web.day-sample',
              'web.day-in-person',
              'web.day-in-neighbourhood',
              'web.day-grows',
              'web.day-in-size',
              'web.day-ph',
              'web.day-actions',
            ]}
            rows={shown.map((sample) => ({
              key: sample.id,
              cells: [
                <Link
                  key="code"
                  href={`/place/${sample.id}`}
                  aria-label={label('web.day-in-plan', { code: sample.code })}
                >
                  {sample.code}
                </Link>,
                sample.content.sample?.person ?? '',
                sample.content.sample?.neighbourhood ?? '',
                growsOf(sample),
                sample.content.size ?? sample.content.area ?? sample.content.pots?.volume ?? '',
                sample.ph?.toFixed(1) ?? '',
                <span key="do" className={styles.do}>
                  <Button
                    look="quiet"
                    aria-label={label('web.day-in-edit-one', { code: sample.code })}
                    onClick={() => onEdit(sample)}
                  >
                    {label('web.day-in-edit')}
                  </Button>
                  <Button
                    look="quiet"
                    aria-label={label('web.day-in-remove-one', { code: sample.code })}
                    onClick={() => onRemove(sample)}
                  >
                    {label('web.day-in-remove')}
                  </Button>
                </span>,
              ],
            }))}
          />
          {found.length > shown.length ? (
            <div>
              <Button onClick={() => setAll(true)}>{label('web.day-in-more', { count: found.length })}</Button>
            </div>
          ) : null}
        </>
      )}
    </Section>
  );
}

function growsOf({ content }: Sample): string {
  const plants = content.plants ?? [];
  if (plants.length > 0) return listed(plants.map((plant) => (typeof plant === 'string' ? plant : plant.plant)));
  return content.situation === 'lawn' ? label('web.day-in-kind-lawn') : '';
}

const textOf = ({ code, content: { sample } }: Sample): string =>
  `${code} ${sample?.person ?? ''} ${sample?.neighbourhood ?? ''}`.toLowerCase();
