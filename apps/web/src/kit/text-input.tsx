import type { ReactNode } from 'react';
import { Field } from './field.tsx';

interface Props {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly problem?: ReactNode;
  readonly optional?: string | undefined;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onBlur?: (() => void) | undefined;
  readonly type?: 'text' | 'date';
  readonly inputMode?: 'text' | 'decimal' | 'numeric';
  /** Words offered while she types; anything else may be written too. */
  readonly offers?: readonly string[];
  readonly max?: string;
}

/** One line of text, a number or a day, in its field. */
export function TextInput({ label, hint, problem, optional, value, onChange, offers, ...rest }: Props) {
  return (
    <Field label={label} hint={hint} problem={problem} {...(optional === undefined ? {} : { optional })}>
      {(props) => (
        <>
          <input
            {...props}
            {...rest}
            list={offers === undefined ? undefined : `${props.id}-offers`}
            autoComplete="off"
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
          {offers === undefined ? null : (
            <datalist id={`${props.id}-offers`}>
              {offers.map((each) => (
                <option key={each} value={each} />
              ))}
            </datalist>
          )}
        </>
      )}
    </Field>
  );
}

interface SelectProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly problem?: ReactNode;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onBlur?: (() => void) | undefined;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

/** One of many, in its field. */
export function Select({ label, hint, problem, value, onChange, onBlur, options }: SelectProps) {
  return (
    <Field label={label} hint={hint} problem={problem}>
      {(props) => (
        <select {...props} value={value} onBlur={onBlur} onChange={(event) => onChange(event.target.value)}>
          {options.map((each) => (
            <option key={each.value} value={each.value}>
              {each.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
