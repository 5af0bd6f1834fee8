import { typedPh } from '@sorrel/engine/day';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Button } from '../../kit/button.tsx';
import page from '../../kit/page.module.css';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import styles from './day.module.css';
import type { Sample } from './day-model.ts';
import { PhInput } from './ph-input.tsx';

interface Props {
  readonly samples: readonly Sample[];
  /** Samples to read, in order. */
  readonly queue: readonly Sample[];
  /** Code asked for by the address. */
  readonly asked: string | undefined;
  readonly focused: boolean;
  readonly onRead: (sample: Sample, ph: number) => void;
}

/** One sample at a time: the next code stands there, the figure is typed, Enter brings the next. */
export function OneReading({ samples, queue, asked, focused, onRead }: Props) {
  const [typedCode, setTypedCode] = useState(asked);
  const [text, setText] = useState('');
  const [warned, setWarned] = useState(false);
  const [tried, setTried] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (focused) field.current?.focus();
  }, [focused]);
  const code = typedCode ?? queue[0]?.code ?? '';
  const sample = samples.find((each) => each.code.toLowerCase() === code.trim().toLowerCase());
  const before = sample?.readings.at(-1)?.content.ph.value;
  const save = () => {
    setTried(true);
    const typed = typedPh(text);
    if (sample === undefined) return;
    if (typed.kind === 'unusual' && !warned) return setWarned(true);
    if (typed.kind !== 'good' && typed.kind !== 'unusual') return;
    onRead(sample, Math.round(typed.ph * 100) / 100);
    setTypedCode(undefined);
    setText('');
    setWarned(false);
    setTried(false);
    field.current?.focus();
  };
  const onCodeKey = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    field.current?.focus();
  };
  return (
    <section className={page.sheet} aria-labelledby="reading">
      <h2 id="reading">{label('web.day-read-next')}</h2>
      <div className={styles.pair}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter in the code goes on to the pH */}
        <div onKeyDown={onCodeKey}>
          <TextInput
            label={label('web.day-in-code')}
            value={code}
            onChange={setTypedCode}
            problem={
              code.trim() !== '' && sample === undefined && (tried || typedCode !== undefined)
                ? label('web.day-read-unknown')
                : undefined
            }
          />
        </div>
        <PhInput
          ref={field}
          label={label('web.day-read-ph', { code: sample?.code ?? code })}
          value={text}
          onChange={(value) => {
            setText(value);
            setWarned(false);
            setTried(false);
          }}
          warned={warned}
          onEnter={save}
          note={before === undefined ? undefined : label('web.day-read-replaces', { ph: before.toFixed(2) })}
          problem={tried && typedPh(text).kind === 'empty' ? label('web.day-ph-no-number') : undefined}
        />
      </div>
      <div className={styles.buttons}>
        <Button look="main" onClick={save}>
          {label('web.day-read-save')}
        </Button>
        {queue.length > 1 && typedCode === undefined ? (
          <Button look="quiet" onClick={() => setTypedCode(queue[1]?.code)}>
            {label('web.day-read-skip', { code: queue[1]?.code ?? '' })}
          </Button>
        ) : null}
      </div>
    </section>
  );
}
