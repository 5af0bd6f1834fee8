import { useId } from 'react';
import field from '../../kit/field.module.css';
import { monthName } from '../../words/label.ts';
import styles from './settings.module.css';

interface Props {
  readonly legend: string;
  readonly unit: string;
  readonly months: readonly string[];
  readonly onChange: (months: readonly string[]) => void;
  readonly problem: string | undefined;
}

/** Twelve figures, one a month. */
export function MonthGrid({ legend, unit, months, onChange, problem }: Props) {
  const id = useId();
  return (
    <fieldset className={styles.months}>
      <legend>
        {legend} ({unit})
      </legend>
      <div className={styles.grid}>
        {months.map((text, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: months keep their order
          <label key={index}>
            {monthName(index)}
            <input
              className={field.input}
              inputMode="text"
              autoComplete="off"
              value={text}
              aria-invalid={problem !== undefined || undefined}
              aria-describedby={problem === undefined ? undefined : id}
              onChange={(event) => onChange(months.map((each, at) => (at === index ? event.target.value : each)))}
            />
          </label>
        ))}
      </div>
      {problem === undefined ? null : (
        <p id={id} className={field.problem} role="alert">
          {problem}
        </p>
      )}
    </fieldset>
  );
}
