import { BUFFER_SETS, bufferPhAt, buffersOf, checkMeter } from '@sorrel/engine/evidence';
import { checkShown } from '@sorrel/engine/sampling';
import { parseQuantity } from '@sorrel/engine/units';
import { useState } from 'react';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { label } from '../../words/label.ts';
import { numberOf } from '../test/draft.ts';
import styles from './sampling.module.css';

export interface MeterState {
  readonly set: string;
  /** Warmth of the buffers, as typed. */
  readonly temperature: string;
  readonly temperatureUnit: string;
  /** What the meter showed in each buffer, as typed, by the number on the bottle. */
  readonly shown: Readonly<Record<string, string>>;
  readonly millivolts: Readonly<Record<string, string>>;
}

export const freshMeter: MeterState = {
  set: BUFFER_SETS[0] ?? '',
  temperature: '20',
  temperatureUnit: '°C',
  shown: {},
  millivolts: {},
};

const typed = (text: string | undefined): number | undefined => {
  const value = numberOf(text ?? '');
  return typeof value === 'number' ? value : undefined;
};

/** Degrees Celsius; undefined when it is no temperature. */
function warmthOf({ temperature, temperatureUnit }: MeterState): number | undefined {
  const read = parseQuantity(`${temperature} ${temperatureUnit}`, 'temperature');
  return read.ok ? read.value : undefined;
}

/** Buffers whose reading is known, with their true pH at their warmth. */
export function readingsOf(state: MeterState): readonly { readonly ph: number; readonly shown: number }[] {
  const warmth = warmthOf(state);
  if (warmth === undefined) return [];
  return buffersOf(state.set).flatMap((nominal) => {
    const ph = bufferPhAt(state.set, nominal, warmth);
    const shown = typed(state.shown[nominal]);
    return ph === undefined || shown === undefined ? [] : [{ ph, shown }];
  });
}

/** Step one: what the meter shows in buffers of known pH, at their own warmth. */
export function MeterCheck({
  state,
  onChange,
}: {
  readonly state: MeterState;
  readonly onChange: (state: MeterState) => void;
}) {
  const [withMillivolts, setWithMillivolts] = useState(false);
  const warmth = warmthOf(state);
  const known = warmth !== undefined && bufferPhAt(state.set, buffersOf(state.set)[0] ?? 0, warmth) !== undefined;
  const readings = readingsOf(state);
  const check = readings.length === 0 ? undefined : checkShown(readings);
  const slope = withMillivolts && warmth !== undefined ? slopeOf(state, warmth) : undefined;
  return (
    <>
      <div className={page.grid}>
        <Choice
          legend={label('web.reading-buffers')}
          legendShown
          wrap
          options={BUFFER_SETS.map((value, index) => ({
            value,
            label: label(index === 0 ? 'web.reading-set-us' : 'web.reading-set-nist'),
          }))}
          value={state.set}
          onChange={(set) => onChange({ ...state, set, shown: {}, millivolts: {} })}
        />
        <Quantity
          label={label('web.reading-temperature')}
          units={['°C', '°F']}
          unit={state.temperatureUnit}
          value={state.temperature}
          onChange={(temperature, temperatureUnit) => onChange({ ...state, temperature, temperatureUnit })}
          problem={known ? undefined : label('web.reading-temperature-bad')}
        />
      </div>
      <Tick checked={withMillivolts} onChange={setWithMillivolts}>
        {label('web.reading-with-millivolts')}
      </Tick>
      <div className={styles.buffers}>
        {buffersOf(state.set).map((nominal) => {
          const ph = known && warmth !== undefined ? bufferPhAt(state.set, nominal, warmth) : undefined;
          return (
            <fieldset key={nominal} className={styles.buffer}>
              <legend>
                <strong>{label('web.reading-buffer', { ph: nominal })}</strong>{' '}
                {ph === undefined ? null : label('web.reading-buffer-now', { ph: ph.toFixed(2) })}
              </legend>
              <TextInput
                label={label('web.reading-shown')}
                inputMode="decimal"
                value={state.shown[nominal] ?? ''}
                onChange={(value) => onChange({ ...state, shown: { ...state.shown, [nominal]: value } })}
              />
              {withMillivolts ? (
                <TextInput
                  label={label('web.reading-millivolts')}
                  inputMode="text"
                  value={state.millivolts[nominal] ?? ''}
                  onChange={(value) => onChange({ ...state, millivolts: { ...state.millivolts, [nominal]: value } })}
                />
              ) : null}
            </fieldset>
          );
        })}
      </div>
      {withMillivolts ? <p className={page.small}>{label('web.reading-millivolts-hint')}</p> : null}
      <div role="status">
        {check === undefined ? (
          <p className={page.soft}>{label('web.reading-meter-none')}</p>
        ) : (
          <Callout kind={check.good ? 'note' : 'care'}>
            <p>
              {label(check.good ? 'web.reading-meter-good' : 'web.reading-meter-bad', {
                worst: check.worst.toFixed(2),
              })}
            </p>
            {slope === undefined ? null : (
              <p>
                {label(slope.good ? 'web.reading-slope-good' : 'web.reading-slope-bad', {
                  share: Math.round(slope.share * 100),
                })}{' '}
                <Memory />
              </p>
            )}
          </Callout>
        )}
      </div>
    </>
  );
}

/** Slope from the two buffers lowest in pH whose millivolts were typed. */
function slopeOf(state: MeterState, warmth: number) {
  const points = buffersOf(state.set).flatMap((nominal) => {
    const ph = bufferPhAt(state.set, nominal, warmth);
    const millivolt = typed(state.millivolts[nominal]);
    return ph === undefined || millivolt === undefined ? [] : [{ ph, millivolt }];
  });
  const [low, high] = points;
  return low === undefined || high === undefined ? undefined : checkMeter(low, high, warmth);
}
