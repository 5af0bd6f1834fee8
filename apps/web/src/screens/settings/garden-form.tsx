import { climates } from '@sorrel/almanac/climates';
import { finenessSystemNames } from '@sorrel/almanac/fineness-systems';
import { useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { correct } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { chance, label } from '../../words/label.ts';
import { numberOf } from '../test/draft.ts';
import { checkHead, type Head, type MonthField, type Months, monthsOf, monthUnit, storedMonths } from './head.ts';
import { MonthGrid } from './month-grid.tsx';

const risks = ['0.02', '0.05', '0.1'] as const;
const USUAL_RISK = '0.05';
const ownFigures: readonly MonthField[] = ['soilTemperature', 'airTemperature', 'rain'];
const ownLabel = {
  soilTemperature: 'web.set-own-soil',
  airTemperature: 'web.set-own-air',
  rain: 'web.set-own-rain',
} as const;

/** The head of the garden: everything but its places and materials. */
export function GardenForm() {
  const { planned, record, speaker, write } = useGarden();
  const { places: _places, materials: _materials, ...before } = record.document;
  const today = planned.read.garden.settings.today;
  const [name, setName] = useState(before.garden);
  const [units, setUnits] = useState(before.units ?? speaker.units);
  const [money, setMoney] = useState(before.money ?? '');
  const [organic, setOrganic] = useState(before.certifiedOrganic === true || before.certifiedOrganic === 'yes');
  const [region, setRegion] = useState(before.region ?? '');
  const [climate, setClimate] = useState(before.climate ?? '');
  const [hemisphere, setHemisphere] = useState<'' | 'north' | 'south'>(before.hemisphere ?? '');
  const [latitude, setLatitude] = useState(before.latitude === undefined ? '' : String(before.latitude));
  const [risk, setRisk] = useState(String(before.overshootChance ?? USUAL_RISK));
  const [fineness, setFineness] = useState(before.finenessSystem ?? '');
  const [months, setMonths] = useState<Partial<Record<MonthField, Months>>>(() =>
    Object.fromEntries(
      ownFigures.flatMap((field) => {
        const own = monthsOf(before, field, speaker.units);
        return own === undefined ? [] : [[field, own]];
      }),
    ),
  );
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);

  const head = withoutEmpty({
    ...before,
    garden: name.trim(),
    units,
    money: money.trim(),
    certifiedOrganic: organic || undefined,
    region: region.trim(),
    climate,
    hemisphere,
    latitude: latitude.trim() === '' ? undefined : numberOf(latitude),
    overshootChance: risk === USUAL_RISK && before.overshootChance === undefined ? undefined : Number(risk),
    finenessSystem: fineness,
    ...Object.fromEntries(
      ownFigures.map((field) => {
        const own = months[field];
        return [field, own === undefined ? undefined : storedMonths(own, field, speaker.units)];
      }),
    ),
  });
  const faults = checkHead(head, today);
  const faultAt = (field: string) => (tried ? faults.get(field) : undefined);

  const save = async () => {
    setTried(true);
    if (faults.size > 0) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    await write([correct(record.id, record.id, 'garden', head)], label('web.set-saved'));
  };

  return (
    <form
      ref={form}
      className={page.page}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <section className={page.sheet} aria-labelledby="general">
        <h2 id="general">{label('web.set-general')}</h2>
        <div className={page.grid}>
          <TextInput label={label('web.set-name')} value={name} onChange={setName} problem={faultAt('garden')} />
          <TextInput
            label={label('web.set-money')}
            value={money}
            onChange={setMoney}
            offers={['$', '£', '€']}
            problem={faultAt('money')}
          />
        </div>
        <Choice
          legend={label('web.set-units')}
          legendShown
          wrap
          options={[
            { value: 'metric', label: label('web.units-metric') },
            { value: 'us', label: label('web.units-us') },
          ]}
          value={units}
          onChange={setUnits}
        />
        <p className={page.small}>{label('web.set-units-text')}</p>
        <Tick checked={organic} onChange={setOrganic}>
          {label('web.set-organic')}
        </Tick>
        <p className={page.small}>{label('web.set-organic-text')}</p>
      </section>

      <section className={page.sheet} aria-labelledby="where">
        <h2 id="where">{label('web.set-place')}</h2>
        <TextInput
          label={label('web.set-region')}
          hint={label('web.set-region-hint')}
          value={region}
          onChange={setRegion}
          problem={faultAt('region')}
        />
        <Select
          label={label('web.set-climate')}
          hint={
            <>
              {label('web.set-climate-text')} <Memory />
            </>
          }
          value={climate}
          onChange={setClimate}
          problem={faultAt('climate')}
          options={[
            { value: '', label: label('web.set-climate-none') },
            ...climates.map((each) => ({ value: each.name, label: each.name })),
          ]}
        />
        <Choice
          legend={label('web.set-hemisphere')}
          legendShown
          wrap
          options={[
            { value: '', label: label('web.set-hemisphere-climate') },
            { value: 'north', label: label('web.set-north') },
            { value: 'south', label: label('web.set-south') },
          ]}
          value={hemisphere}
          onChange={setHemisphere}
        />
        <TextInput
          label={label('web.set-latitude')}
          optional={label('web.optional')}
          hint={label('web.set-latitude-hint')}
          value={latitude}
          onChange={setLatitude}
          problem={faultAt('latitude')}
        />
        {ownFigures.map((field) => {
          const own = months[field];
          return (
            <div key={field} className={page.head}>
              <Tick
                checked={own !== undefined}
                onChange={(on) =>
                  setMonths(({ [field]: _, ...rest }) =>
                    on ? { ...rest, [field]: typical(climate, field, speaker.units) } : rest,
                  )
                }
              >
                {label(ownLabel[field])}
              </Tick>
              {own === undefined ? null : (
                <MonthGrid
                  legend={label(`${ownLabel[field]}-text`)}
                  unit={monthUnit(field, speaker.units)}
                  months={own}
                  onChange={(next) => setMonths((all) => ({ ...all, [field]: next }))}
                  problem={
                    tried && own.some((text) => text.trim() === '') ? label('web.set-month-missing') : faultAt(field)
                  }
                />
              )}
            </div>
          );
        })}
      </section>

      <section className={page.sheet} aria-labelledby="risk">
        <h2 id="risk">{label('web.set-risk')}</h2>
        <Choice
          legend={label('web.set-risk-text')}
          legendShown
          wrap
          options={[
            ...risks.map((value) => ({
              value: value as string,
              label: label(
                value === '0.02' ? 'web.set-risk-2' : value === '0.05' ? 'web.set-risk-5' : 'web.set-risk-10',
              ),
            })),
            ...((risks as readonly string[]).includes(risk)
              ? []
              : [{ value: risk, label: label('web.set-risk-other', { chance: chance(Number(risk)) }) }]),
          ]}
          value={risk}
          onChange={setRisk}
        />
        <Select
          label={label('web.set-fineness')}
          hint={label('web.set-fineness-text')}
          value={fineness}
          onChange={setFineness}
          problem={faultAt('finenessSystem')}
          options={[
            { value: '', label: label('web.set-fineness-usual') },
            ...finenessSystemNames
              .filter((each) => each.state === 'complete')
              .map(({ system, title }) => ({ value: system, label: title })),
          ]}
        />
      </section>
      <div className={page.actions}>
        <Button type="submit" look="main">
          {label('web.set-save')}
        </Button>
        {tried && faults.size > 0 ? <p role="alert">{label('web.set-mend')}</p> : null}
      </div>
    </form>
  );
}

/** Months to begin with: those of the climate chosen, else empty ones. */
function typical(climate: string, field: MonthField, units: 'metric' | 'us'): Months {
  const found = climates.find((each) => each.name === climate);
  const head = (
    field === 'rain'
      ? { rain: found?.rain.map((metres) => `${Math.round(metres * 1000)} mm`) }
      : { [field]: field === 'airTemperature' ? found?.air : found?.soil }
  ) as Head;
  return monthsOf(head, field, units) ?? Array.from({ length: 12 }, () => '');
}

const withoutEmpty = (head: Readonly<Record<string, unknown>>): Head =>
  Object.fromEntries(Object.entries(head).filter(([, value]) => value !== undefined && value !== '')) as Head;
