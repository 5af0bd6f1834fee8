import { type QualityCheck, qualityLimit } from '@sorrel/almanac/quality-limits';
import { judgeCheck, typedPh } from '@sorrel/engine/day';
import { bufferPhAt, buffersOf } from '@sorrel/engine/evidence';
import { parseQuantity } from '@sorrel/engine/units';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import type { Content } from '../../data/write.ts';
import { today } from '../../engine/garden-plan.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { counted, label } from '../../words/label.ts';
import styles from './day.module.css';
import type { Day, Sample } from './day-model.ts';
import { PhInput } from './ph-input.tsx';
import type { Setup } from './setup.ts';
import { signed } from './signed.ts';

interface Props {
  readonly check: QualityCheck;
  readonly day: Day;
  readonly setup: Setup;
  readonly onSetup: (part: Partial<Setup>) => void;
  /** The sample to read a second time. */
  readonly twice: Sample | undefined;
  readonly focused: boolean;
  readonly onDone: (content: Content<'quality'>, place: string | undefined) => void;
  readonly onLater: () => void;
}

/** The check that stands before the next reading. */
export function CheckCard({ check, day, setup, onSetup, twice, focused, onDone, onLater }: Props) {
  const [text, setText] = useState('');
  const [tried, setTried] = useState(false);
  const shown = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (focused) shown.current?.focus();
  }, [focused]);
  const expected = expectedOf(check, setup, twice, setup.meter);
  const typed = typedPh(text);
  const ph = typed.kind === 'good' || typed.kind === 'unusual' ? typed.ph : undefined;
  const judged = expected === undefined || ph === undefined ? undefined : judgeCheck(check, expected, ph);
  const last = day.meters.find(({ name }) => name === setup.meter)?.checks.findLast((each) => each.check === check);
  const failed = check !== 'duplicate' && last?.sound === false ? last : undefined;
  const save = () => {
    setTried(true);
    if (expected === undefined || ph === undefined) return;
    onDone(
      { date: today(), check, meter: setup.meter, expected: Math.round(expected * 1000) / 1000, shown: ph },
      check === 'duplicate' ? twice?.id : undefined,
    );
  };
  const { every, limit, basis } = qualityLimit(check);
  return (
    <section className={`${page.sheet} ${styles.check}`} aria-labelledby="check">
      <p className={styles.eyebrow}>{label('web.day-check-now')}</p>
      <h2 id="check">{label(`web.day-check-${check}-title`, { code: twice?.code ?? '' })}</h2>
      {failed === undefined ? (
        <p>{label(`web.day-check-${check}-text`)}</p>
      ) : (
        <Callout
          kind="wrong"
          title={label(failed.passed ? 'web.day-check-drifted' : 'web.day-check-failed', {
            off: signed(failed.off),
            limit: failed.limit,
          })}
        >
          <p>{label(`web.day-check-again-${check === 'buffer' ? 'buffer' : 'reference'}`)}</p>
          {day.repeat.length === 0 ? null : (
            <p>
              <Link href="/meters">{counted('web.day-next-repeat', day.repeat.length)}</Link>
            </p>
          )}
        </Callout>
      )}
      {check === 'buffer' ? <WhichBuffer setup={setup} onSetup={onSetup} expected={expected} /> : null}
      {check === 'reference' ? (
        <div className={styles.short}>
          <TextInput
            label={label('web.day-check-known')}
            hint={label('web.day-check-known-hint')}
            inputMode="decimal"
            value={setup.reference}
            onChange={(reference) => onSetup({ reference })}
            problem={tried && expected === undefined ? label('web.day-ph-no-number') : undefined}
          />
        </div>
      ) : null}
      <PhInput
        ref={shown}
        label={label('web.day-check-shows')}
        value={text}
        onChange={setText}
        warned={false}
        onEnter={save}
        // A second reading is blind: what the first one was is not told until it is entered.
        note={
          judged === undefined || check === 'duplicate'
            ? undefined
            : label(judged.passed ? 'web.day-check-good' : 'web.day-check-off', {
                off: signed(judged.off),
                limit: judged.limit,
              })
        }
        problem={tried && ph === undefined ? label('web.day-ph-no-number') : undefined}
      />
      <div className={styles.buttons}>
        <Button look="main" onClick={save}>
          {label('web.day-check-save')}
        </Button>
        <Button look="quiet" onClick={onLater}>
          {label('web.day-check-later')}
        </Button>
      </div>
      <p className={page.small}>
        {label('web.day-check-why', { every, limit })} {basis === 'memory' ? <Memory /> : null}
      </p>
    </section>
  );
}

/** Degrees Celsius; undefined when it is no temperature. */
function warmthOf({ temperature, temperatureUnit }: Setup): number | undefined {
  const read = parseQuantity(`${temperature} ${temperatureUnit}`, 'temperature');
  return read.ok ? read.value : undefined;
}

function expectedOf(check: QualityCheck, setup: Setup, twice: Sample | undefined, meter: string): number | undefined {
  if (check === 'buffer') {
    const warmth = warmthOf(setup);
    return warmth === undefined ? undefined : bufferPhAt(setup.bufferSet, setup.buffer, warmth);
  }
  if (check === 'duplicate')
    return twice?.readings.findLast(({ content }) => content.meter === meter)?.content.ph.value;
  const known = typedPh(setup.reference);
  return known.kind === 'good' || known.kind === 'unusual' ? known.ph : undefined;
}

interface BufferProps {
  readonly setup: Setup;
  readonly onSetup: (part: Partial<Setup>) => void;
  readonly expected: number | undefined;
}

function WhichBuffer({ setup, onSetup, expected }: BufferProps) {
  return (
    <div className={styles.trio}>
      <Choice
        legend={label('web.day-check-which')}
        legendShown
        wrap
        options={buffersOf(setup.bufferSet).map((nominal) => ({ value: String(nominal), label: String(nominal) }))}
        value={String(setup.buffer)}
        onChange={(buffer) => onSetup({ buffer: Number(buffer) })}
      />
      <Quantity
        label={label('web.reading-temperature')}
        units={['°C', '°F']}
        unit={setup.temperatureUnit}
        value={setup.temperature}
        onChange={(temperature, temperatureUnit) => onSetup({ temperature, temperatureUnit })}
        problem={expected === undefined ? label('web.reading-temperature-bad') : undefined}
      />
      <p className={styles.expected}>
        {expected === undefined ? null : label('web.day-check-should', { ph: expected.toFixed(2) })}
      </p>
    </div>
  );
}
