import { typedPh } from '@sorrel/engine/day';
import { memo, useEffect, useRef, useState } from 'react';
import { Choice } from '../../kit/choice.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import styles from './day.module.css';
import type { Sample } from './day-model.ts';
import { PhInput } from './ph-input.tsx';

interface Props {
  readonly samples: readonly Sample[];
  readonly queue: readonly Sample[];
  /** Samples whose reading cannot be trusted. */
  readonly repeat: ReadonlySet<string>;
  readonly focused: boolean;
  readonly onRead: (sample: Sample, ph: number) => void;
}

/** All samples under one another: a figure, Enter, the next. */
export function ReadingGrid({ samples, queue, repeat, focused, onRead }: Props) {
  const [which, setWhich] = useState<'waiting' | 'all'>('waiting');
  // Rows stay where they are while they are filled in.
  const [waiting] = useState(() => new Set(queue.map(({ id }) => id)));
  const shown = which === 'all' ? samples : samples.filter(({ id }) => waiting.has(id));
  const body = useRef<HTMLTableSectionElement>(null);
  const read = useRef(onRead);
  useEffect(() => {
    read.current = onRead;
  }, [onRead]);
  const first = queue[0]?.id;
  const [start] = useState(first);
  useEffect(() => {
    if (focused) body.current?.querySelector<HTMLInputElement>(`[data-sample="${start}"] input`)?.focus();
  }, [focused, start]);
  return (
    <section className={page.sheet} aria-labelledby="grid">
      <h2 id="grid">{label('web.day-grid')}</h2>
      <p className={page.soft}>{label('web.day-grid-how')}</p>
      <Choice
        legend={label('web.day-grid-which')}
        options={[
          { value: 'waiting' as const, label: label('web.day-grid-waiting'), count: waiting.size },
          { value: 'all' as const, label: label('web.day-grid-all'), count: samples.length },
        ]}
        value={which}
        onChange={setWhich}
      />
      <table className={styles.grid}>
        <caption className="hidden-text">{label('web.day-grid')}</caption>
        <thead>
          <tr>
            <th scope="col">{label('web.day-sample')}</th>
            <th scope="col">{label('web.day-ph')}</th>
          </tr>
        </thead>
        <tbody ref={body}>
          {shown.map((sample) => (
            <Row
              key={sample.id}
              sample={sample}
              stored={sample.readings.at(-1)?.content.ph.value}
              again={repeat.has(sample.id)}
              read={read}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface RowProps {
  readonly sample: Sample;
  readonly stored: number | undefined;
  /** What is stored cannot be trusted. */
  readonly again: boolean;
  readonly read: { readonly current: Props['onRead'] };
}

const Row = memo(
  function Row({ sample, stored, again, read }: RowProps) {
    const [text, setText] = useState<string>();
    // Leaving the field follows Enter before the row is drawn again; the figure must not be saved a second time.
    const kept = useRef<string>(undefined);
    const [warned, setWarned] = useState(false);
    const row = useRef<HTMLTableRowElement>(null);
    const value = text ?? stored?.toFixed(2) ?? '';
    /** Whether the row is done with: saved, or left as it was. */
    const save = (sure: boolean): boolean => {
      const typed = typedPh(value);
      if (text === undefined || text === kept.current || typed.kind === 'empty') return true;
      if (typed.kind === 'unusual' && !(warned && sure)) {
        setWarned(true);
        return false;
      }
      if (typed.kind !== 'good' && typed.kind !== 'unusual') return false;
      const ph = Math.round(typed.ph * 100) / 100;
      kept.current = text;
      setText(undefined);
      setWarned(false);
      if (ph !== stored) read.current(sample, ph);
      return true;
    };
    const next = () => {
      const inputs = [...(row.current?.parentElement?.querySelectorAll('input') ?? [])];
      const own = row.current?.querySelector('input');
      inputs[inputs.indexOf(own as HTMLInputElement) + 1]?.focus();
    };
    return (
      <tr ref={row} data-sample={sample.id}>
        <th scope="row">{sample.code}</th>
        <td>
          <PhInput
            bare
            label={label('web.day-read-ph', { code: sample.code })}
            value={value}
            onChange={(typed) => {
              kept.current = undefined;
              setText(typed);
              setWarned(false);
            }}
            warned={warned}
            onEnter={() => {
              if (save(true)) next();
            }}
            onBlur={() => save(false)}
            note={
              text !== undefined || stored === undefined
                ? undefined
                : label(again ? 'web.day-grid-again' : 'web.day-grid-kept')
            }
          />
        </td>
      </tr>
    );
  },
  (before, after) => before.sample === after.sample && before.stored === after.stored && before.again === after.again,
);
