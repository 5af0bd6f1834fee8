import { memo, useId } from 'react';
import styles from './slider.module.css';

interface Props {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly value: number;
  /** The value in words, in her units. */
  readonly text: string;
  readonly onChange: (value: number) => void;
}

/** A slider that says its value in the reader's units. Give it a handler that stays, and only the one that moves is drawn. */
export const Slider = memo(function Slider({ label, min, max, step, value, text, onChange }: Props) {
  const id = useId();
  return (
    <div className={styles.slider}>
      <label htmlFor={id}>{label}</label>
      <output htmlFor={id}>{text}</output>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={text}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </div>
  );
});
