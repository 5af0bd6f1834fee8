import { type ReactNode, useId } from 'react';
import styles from './field.module.css';

export interface InputProps {
  readonly id: string;
  readonly className: string | undefined;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

interface Props {
  readonly label: string;
  /** What to write, said before anything is wrong. */
  readonly hint?: ReactNode;
  /** What is wrong and what to write instead. */
  readonly problem?: ReactNode;
  readonly optional?: string;
  /** The input itself: `{(props) => <input {...props} />}`. */
  readonly children: (props: InputProps) => ReactNode;
}

/** A labelled entry with its hint and what is wrong with it, tied together for screen readers. */
export function Field({ label, hint, problem, optional, children }: Props) {
  const id = useId();
  const parts = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean).join(' ');
  return (
    <div className={styles.field}>
      <label htmlFor={id}>
        {label} {optional === undefined ? null : <span className={styles.optional}>{optional}</span>}
      </label>
      {hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      {children({
        id,
        className: styles.input,
        'aria-describedby': parts === '' ? undefined : parts,
        'aria-invalid': problem ? true : undefined,
      })}
      {problem ? (
        <p id={`${id}-problem`} className={styles.problem} role="alert">
          {problem}
        </p>
      ) : null}
    </div>
  );
}
