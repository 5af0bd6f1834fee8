import { addSalt, averagePh, saltToWeigh } from '@sorrel/engine/evidence';
import { CUPS_AGREE, SALT_ADDED } from '@sorrel/engine/sampling';
import { type ReactNode, useRef, useState } from 'react';
import { useLocation, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { add, type Content } from '../../data/write.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import page from '../../kit/page.module.css';
import { joinQuantity, Quantity } from '../../kit/quantity.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { label, type WebCode } from '../../words/label.ts';
import { checkTest } from '../test/check-test.ts';
import { numberOf, type TestEntry } from '../test/draft.ts';
import { freshMeter, MeterCheck, readingsOf } from './meter-check.tsx';
import styles from './sampling.module.css';
import { Timer } from './timer.tsx';

const fizzes = ['not', 'silent', 'heard only', 'mild', 'vigorous'] as const;
/** A pH at home: meter against its buffers, slurry, cups, salt, vinegar; kept as a reading. */
export default function HomeReading() {
  const { planned, record, speaker, write } = useGarden();
  const params = useParams<{ place?: string }>();
  const [, go] = useLocation();
  const today = planned.read.garden.settings.today;
  const [place, setPlace] = useState(params.place ?? planned.places[0]?.id ?? '');
  const [date, setDate] = useState(today);
  const [depth, setDepth] = useState({ value: '', unit: speaker.units === 'us' ? 'in' : 'cm' });
  const [cores, setCores] = useState('');
  const [meter, setMeter] = useState(freshMeter);
  const [ratio, setRatio] = useState<'1' | '2'>('1');
  const [cups, setCups] = useState<readonly string[]>(['', '']);
  const [inSalt, setInSalt] = useState(false);
  const [saltCups, setSaltCups] = useState<readonly string[]>(['']);
  const [fizz, setFizz] = useState<(typeof fizzes)[number]>('not');
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);

  const kept = inSalt ? saltCups : cups;
  const read = numbersOf(kept);
  const mean = read.length === 0 ? undefined : averagePh(read);
  const here = planned.places.find((each) => each.id === place);
  const buffers = readingsOf(meter);
  const deep = joinQuantity(depth.value, depth.unit);
  const content: Content<'reading'> = {
    date,
    by: 'slurry-meter',
    ...(deep === undefined ? {} : { depth: deep }),
    // What is no number goes to the check as it was typed.
    ...(cores.trim() === '' ? {} : { cores: numberOf(cores) as number }),
    ph: {
      value: mean === undefined ? 0 : Math.round(mean * 100) / 100,
      in: inSalt ? 'cacl2-0.01M' : ratio === '1' ? 'water-1:1' : 'water-1:2',
    },
    ...(fizz === 'not' ? {} : { fizz: { vinegar: fizz } }),
    ...(read.length < 2 ? {} : { slurries: [...read] }),
    ...(buffers.length === 0
      ? {}
      : { meterCheck: buffers.map(({ ph, shown }) => ({ buffer: Math.round(ph * 1000) / 1000, shown })) }),
  };
  const { slurries: _slurries, meterCheck: _meterCheck, ...asTest } = content;
  const faults = checkTest(asTest as TestEntry, today);
  const faultAt = (path: string): string | undefined => {
    const fault = tried ? faults.find((each) => each.path === path) : undefined;
    return fault === undefined ? undefined : `${fault.message} ${fault.fix}`;
  };
  const cupFault = (text: string): string | undefined => {
    if (text.trim() === '') return undefined;
    const value = numberOf(text);
    return typeof value === 'number' && value >= 0 && value <= 14 ? undefined : label('web.reading-cup-bad');
  };
  const cupsWrong = kept.some((text) => cupFault(text) !== undefined);

  if (planned.places.length === 0)
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.test-no-places')}</h1>
        <p>{label('web.test-no-places-text')}</p>
        <div>
          <ButtonLink href="/add-place" look="main">
            {label('web.garden-add')}
          </ButtonLink>
        </div>
      </div>
    );

  const save = async () => {
    setTried(true);
    if (mean === undefined || cupsWrong || faults.length > 0 || here === undefined) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    const done = label('web.reading-saved', { place: here.name, ph: mean.toFixed(1) });
    if (await write([add(record.id, 'reading', content, place)], done)) go(`/place/${place}`);
  };

  const salty = addSalt(Number(ratio), Number(ratio), SALT_ADDED);
  return (
    <form
      ref={form}
      className={`${page.page} ${page.narrow}`}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <header className={page.head}>
        <h1>{label('web.reading-title')}</h1>
        <p className={page.lead}>{label('web.reading-lead')}</p>
      </header>
      <div className={page.sheet}>
        <div className={page.grid}>
          <Select
            label={label('web.reading-place')}
            value={place}
            onChange={setPlace}
            options={planned.places.map(({ id, name }) => ({ value: id, label: name }))}
          />
          <TextInput
            label={label('web.reading-date')}
            type="date"
            max={today}
            value={date}
            onChange={setDate}
            problem={faultAt('date')}
          />
          <Quantity
            label={label('web.reading-depth')}
            optional={label('web.optional')}
            units={['cm', 'in']}
            {...depth}
            onChange={(value, unit) => setDepth({ value, unit })}
            problem={faultAt('depth')}
          />
          <TextInput
            label={label('web.reading-cores')}
            optional={label('web.optional')}
            inputMode="numeric"
            value={cores}
            onChange={setCores}
            problem={faultAt('cores')}
          />
        </div>
      </div>
      <ol className={styles.steps}>
        <Step number={1}>
          <MeterCheck state={meter} onChange={setMeter} />
        </Step>
        <Step number={2}>
          <Choice
            legend={label('web.reading-ratio')}
            legendShown
            wrap
            options={[
              { value: '1', label: label('web.reading-ratio-1') },
              { value: '2', label: label('web.reading-ratio-2') },
            ]}
            value={ratio}
            onChange={setRatio}
          />
        </Step>
        <Step number={3}>
          <Timer />
        </Step>
        <Step number={4}>
          <Cups cups={cups} onChange={setCups} faultOf={cupFault} missing={tried && !inSalt && mean === undefined} />
        </Step>
        <Step
          number={5}
          text={label('web.reading-5-text', { salt: speaker.amount(saltToWeigh(SALT_ADDED, 1), 'mass') })}
        >
          <p className={page.soft}>{label('web.reading-5-gives', { liquid: salty.liquid, molar: salty.molar })}</p>
          <Tick checked={inSalt} onChange={setInSalt}>
            {label('web.reading-salt-on')}
          </Tick>
          {inSalt ? (
            <>
              <Cups cups={saltCups} onChange={setSaltCups} faultOf={cupFault} missing={tried && mean === undefined} />
              <p className={page.small}>{label('web.reading-salt-kept')}</p>
            </>
          ) : null}
        </Step>
        <Step number={6}>
          <Choice
            legend={label('web.reading-fizz')}
            legendShown
            wrap
            options={fizzes.map((value) => ({ value, label: label(`web.reading-fizz-${value}`) }))}
            value={fizz}
            onChange={setFizz}
          />
        </Step>
      </ol>
      <p className={page.soft}>{label('web.reading-care')}</p>
      <div className={page.actions}>
        <Button type="submit" look="main">
          {label('web.reading-save')}
        </Button>
        {mean === undefined ? null : (
          <span className={styles.mean}>{label('web.reading-mean', { ph: mean.toFixed(2) })}</span>
        )}
      </div>
      <Callout title={label('web.reading-what-it-is-for')}>
        <p>{label('web.reading-errors')}</p>
      </Callout>
    </form>
  );
}

function Step({
  number,
  text,
  children,
}: {
  readonly number: 1 | 2 | 3 | 4 | 5 | 6;
  readonly text?: string;
  readonly children: ReactNode;
}) {
  return (
    <li className={page.sheet}>
      <div className={page.head}>
        <span className={styles.stepNumber}>{label('web.reading-step', { number })}</span>
        <h2>{label(`web.reading-${number}`)}</h2>
        <p>{text ?? label(`web.reading-${number}-text` as WebCode)}</p>
      </div>
      {children}
    </li>
  );
}

interface CupsProps {
  readonly cups: readonly string[];
  readonly onChange: (cups: readonly string[]) => void;
  readonly faultOf: (text: string) => string | undefined;
  readonly missing: boolean;
}

function Cups({ cups, onChange, faultOf, missing }: CupsProps) {
  const read = numbersOf(cups);
  const apart = Math.max(...read) - Math.min(...read);
  return (
    <>
      <div className={page.grid}>
        {cups.map((text, index) => (
          <TextInput
            // biome-ignore lint/suspicious/noArrayIndexKey: cups are only ever added at the end
            key={index}
            label={label('web.reading-cup', { number: index + 1 })}
            inputMode="decimal"
            value={text}
            onChange={(value) => onChange(cups.map((each, at) => (at === index ? value : each)))}
            problem={faultOf(text) ?? (missing && index === 0 ? label('web.reading-none') : undefined)}
          />
        ))}
      </div>
      <div className={page.actions}>
        <Button onClick={() => onChange([...cups, ''])}>{label('web.reading-cup-more')}</Button>
        {read.length === 0 ? null : (
          <span className={styles.mean}>{label('web.reading-mean', { ph: averagePh(read).toFixed(2) })}</span>
        )}
      </div>
      {read.length > 1 && apart > CUPS_AGREE ? (
        <Callout kind="care">
          <p>{label('web.reading-apart', { apart: apart.toFixed(2) })}</p>
        </Callout>
      ) : null}
    </>
  );
}

const numbersOf = (cups: readonly string[]): readonly number[] =>
  cups.flatMap((text) => {
    const value = numberOf(text);
    return typeof value === 'number' && value >= 0 && value <= 14 ? [value] : [];
  });
