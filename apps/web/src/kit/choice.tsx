import { useId } from 'react';
import styles from './choice.module.css';
import { Icon, type IconName } from './icon.tsx';

export interface Option<V extends string> {
  readonly value: V;
  readonly label: string;
  readonly icon?: IconName;
  readonly count?: number;
}

interface Props<V extends string> {
  readonly legend: string;
  /** Shows the legend; else only screen readers hear it. */
  readonly legendShown?: boolean;
  readonly options: readonly Option<V>[];
  readonly value: V;
  readonly onChange: (value: V) => void;
  /** Separate buttons on as many lines as they need, instead of one joined bar. */
  readonly wrap?: boolean;
}

/** One of a few, all in sight. Radio buttons, so that arrow keys and screen readers know what to do. */
export function Choice<V extends string>({ legend, legendShown, options, value, onChange, wrap }: Props<V>) {
  const name = useId();
  return (
    <fieldset className={`${styles.choice} ${wrap ? styles.wrap : styles.joined}`}>
      <legend className={legendShown ? styles.legend : 'hidden-text'}>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.option}>
          <input
            type="radio"
            className="hidden-text"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span className={styles.face}>
            {option.icon === undefined ? null : <Icon name={option.icon} size={20} />}
            {option.label}
            {option.count === undefined ? null : <span className={styles.count}>{option.count}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
