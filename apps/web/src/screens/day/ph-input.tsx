import { typedPh } from '@sorrel/engine/day';
import { type KeyboardEvent, type Ref, useId } from 'react';
import { label } from '../../words/label.ts';
import styles from './day.module.css';

interface Props {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** An unusual figure has been shown once and is kept when it is entered again. */
  readonly warned: boolean;
  /** Enter was pressed where nothing is wrong with what was typed, or in an empty field. */
  readonly onEnter: () => void;
  readonly onBlur?: () => void;
  /** Something said of a sound figure, such as how far it is off. */
  readonly note?: string | undefined;
  /** What is wrong beyond the figure itself. */
  readonly problem?: string | undefined;
  /** The label is heard, not seen: in a grid, where the heading says it. */
  readonly bare?: boolean;
  readonly ref?: Ref<HTMLInputElement>;
}

/** A pH read off a meter. What is wrong is said beside the field, while the sample still stands there. */
export function PhInput(props: Props) {
  const { value, warned, note, bare, hint } = props;
  const id = useId();
  const problem = problemOf(value, warned) ?? props.problem;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    props.onEnter();
  };
  return (
    <div className={bare ? styles.bare : styles.big}>
      <label htmlFor={id} className={bare ? 'hidden-text' : styles.bigLabel}>
        {props.label}
      </label>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      )}
      <input
        ref={props.ref}
        id={id}
        className={styles.phInput}
        inputMode="decimal"
        enterKeyHint="next"
        autoComplete="off"
        value={value}
        aria-invalid={problem === undefined ? undefined : true}
        aria-describedby={`${id}-say${hint === undefined ? '' : ` ${id}-hint`}`}
        onChange={(event) => props.onChange(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={props.onBlur}
      />
      <div id={`${id}-say`} role="status" className={styles.say}>
        {problem === undefined ? note === undefined ? null : <p>{note}</p> : <p className={styles.wrong}>{problem}</p>}
      </div>
    </div>
  );
}

/** What is wrong with a typed figure. Half-typed ones are left in peace: `6` may become `6.4`. */
function problemOf(value: string, warned: boolean): string | undefined {
  const typed = typedPh(value);
  switch (typed.kind) {
    case 'no-number':
      return label('web.day-ph-no-number');
    case 'outside':
      return label('web.day-ph-outside');
    case 'no-point':
      return label('web.day-ph-no-point', { meant: typed.meant });
    case 'unusual':
      return warned ? label('web.day-ph-unusual', { ph: typed.ph }) : undefined;
    default:
      return undefined;
  }
}
