import type { ReactNode } from 'react';
import { label } from '../words/label.ts';
import { Field } from './field.tsx';
import styles from './quantity.module.css';

interface Props {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly problem?: ReactNode;
  readonly optional?: string | undefined;
  /** The number as typed. */
  readonly value: string;
  readonly unit: string;
  /** Units to choose from; one alone is only shown. */
  readonly units: readonly string[];
  readonly onChange: (value: string, unit: string) => void;
  readonly onBlur?: (() => void) | undefined;
}

/** A number with its unit, which is chosen and never guessed. */
export function Quantity({ label: name, hint, problem, optional, value, unit, units, onChange, onBlur }: Props) {
  const known = units.includes(unit) ? units : [unit, ...units];
  return (
    <Field label={name} hint={hint} problem={problem} {...(optional === undefined ? {} : { optional })}>
      {(props) => (
        <span className={styles.quantity}>
          <input
            {...props}
            inputMode="decimal"
            autoComplete="off"
            value={value}
            onBlur={onBlur}
            onChange={(event) => onChange(event.target.value, unit)}
          />
          {known.length === 1 ? (
            <span className={styles.single}>{unit}</span>
          ) : (
            <select
              className={styles.unit}
              aria-label={label('web.test-unit', { what: name })}
              value={unit}
              onBlur={onBlur}
              onChange={(event) => onChange(value, event.target.value)}
            >
              {known.map((each) => (
                <option key={each}>{each}</option>
              ))}
            </select>
          )}
        </span>
      )}
    </Field>
  );
}

/** `4.2 %` as its number and its unit; what has no number in front is all number. */
export function splitQuantity(text: string | undefined, fallback: string): { value: string; unit: string } {
  const parts = /^\s*([+-]?[\d.,]+)\s*(\S.*)$/.exec(text ?? '');
  const value = parts?.[1];
  const unit = parts?.[2]?.trim();
  return value === undefined || unit === undefined ? { value: text ?? '', unit: fallback } : { value, unit };
}

/** The text that is stored: `4.2 %`; undefined when nothing was typed. */
export const joinQuantity = (value: string, unit: string): string | undefined =>
  value.trim() === '' ? undefined : `${value.trim()} ${unit}`;
