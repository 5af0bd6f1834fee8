import { findPlant } from '@sorrel/almanac/plants';
import { useGarden } from '../../app/garden-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { Select } from '../../kit/text-input.tsx';
import { counted, label } from '../../words/label.ts';
import { PlantPicker } from '../edit-place/plant-picker.tsx';
import {
  apartUnits,
  areaUnits,
  COUNTED,
  type Draft,
  faultsOf,
  type Ground,
  type Light,
  newWish,
  plantName,
  type When,
  type WishDraft,
} from './draft.ts';
import styles from './placing.module.css';

interface Props {
  readonly draft: Draft;
  readonly grounds: readonly Ground[];
  /** Marks what is missing. */
  readonly tried: boolean;
  readonly onChange: (draft: Draft) => void;
}

/** The plants wanted, how much of each, and for how long. */
export function Wishes({ draft, grounds, tried, onChange }: Props) {
  const { speaker } = useGarden();
  const { wishes, seasons } = draft;
  const put = (wish: WishDraft, next: WishDraft) =>
    onChange({ ...draft, wishes: wishes.map((each) => (each === wish ? next : each)) });
  return (
    <div className={page.page}>
      <Choice
        legend={label('web.placing-seasons')}
        legendShown
        options={([1, 2, 3] as const).map((count) => ({
          value: String(count),
          label: counted('web.placing-seasons', count),
        }))}
        value={String(seasons)}
        onChange={(value) => onChange({ ...draft, seasons: Number(value) as Draft['seasons'] })}
      />
      <div className={page.narrow}>
        <PlantPicker
          plants={wishes.map(({ plant }) => plant)}
          listed={false}
          title={label('web.placing-search')}
          onChange={(plants) => {
            const added = plants.filter((plant) => !wishes.some((wish) => wish.plant === plant));
            onChange({ ...draft, wishes: [...wishes, ...added.map((plant) => newWish(plant, speaker.units))] });
          }}
        />
      </div>
      {wishes.length === 0 ? (
        <p>{label('web.placing-no-wishes')}</p>
      ) : (
        <ul className={styles.cards}>
          {wishes.map((wish) => (
            <li key={plantName(wish.plant)} className={styles.card}>
              <WishCard
                wish={wish}
                seasons={seasons}
                grounds={grounds}
                tried={tried}
                onChange={(next) => put(wish, next)}
                onRemove={() => onChange({ ...draft, wishes: wishes.filter((each) => each !== wish) })}
              />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface CardProps {
  readonly wish: WishDraft;
  readonly seasons: number;
  readonly grounds: readonly Ground[];
  readonly tried: boolean;
  readonly onChange: (wish: WishDraft) => void;
  readonly onRemove: () => void;
}

function WishCard({ wish, seasons, grounds, tried, onChange, onRemove }: CardProps) {
  const { speaker } = useGarden();
  const plant = plantName(wish.plant);
  const faults = tried ? faultsOf(wish) : new Set();
  const missing = label('web.placing-amount-missing');
  return (
    <>
      <div className={page.row}>
        <h3 className={styles.name}>
          {plant} <small className={page.small}>{rangeOf(wish.plant)}</small>
        </h3>
        <Button look="quiet" aria-label={label('web.placing-remove', { plant })} onClick={onRemove}>
          <span aria-hidden="true">×</span>
        </Button>
      </div>
      <Quantity
        label={label('web.placing-how-much', { plant })}
        value={wish.amount}
        unit={wish.unit}
        units={areaUnits[speaker.units]}
        onChange={(amount, unit) => onChange({ ...wish, amount, unit })}
        problem={faults.has('amount') ? missing : undefined}
      />
      {wish.unit === COUNTED ? (
        <Quantity
          label={label('web.placing-apart', { plant })}
          hint={label('web.placing-apart-hint')}
          value={wish.apart}
          unit={wish.apartUnit}
          units={apartUnits[speaker.units]}
          onChange={(apart, apartUnit) => onChange({ ...wish, apart, apartUnit })}
          problem={faults.has('apart') ? missing : undefined}
        />
      ) : null}
      <Select
        label={label('web.placing-where', { plant })}
        value={grounds.some(({ id }) => id === wish.where) ? wish.where : ''}
        onChange={(where) => onChange({ ...wish, where })}
        options={[
          { value: '', label: label('web.placing-anywhere') },
          ...grounds.map(({ id, name }) => ({ value: id, label: label('web.placing-fixed-in', { place: name }) })),
        ]}
      />
      <Disclosure title={label('web.placing-more')}>
        {() => (
          <div className={page.page}>
            <Select
              label={label('web.placing-light-of', { plant })}
              value={wish.light}
              onChange={(light) => onChange({ ...wish, light: light as Light })}
              options={[
                { value: '', label: label('web.placing-light-any') },
                { value: 'sun', label: label('web.placing-light-sun') },
                { value: 'part shade', label: label('web.placing-light-part-shade') },
                { value: 'shade', label: label('web.placing-light-shade') },
              ]}
            />
            {seasons === 1 ? null : (
              <Select
                label={label('web.placing-when', { plant })}
                value={Number(wish.when) > seasons ? 'all' : wish.when}
                onChange={(when) => onChange({ ...wish, when: when as When })}
                options={[
                  { value: 'all', label: label('web.placing-when-all') },
                  ...Array.from({ length: seasons }, (_, at) => ({
                    value: String(at + 1),
                    label: label('web.placing-when-season', { season: at + 1 }),
                  })),
                ]}
              />
            )}
            <Select
              label={label('web.placing-pots-of', { plant })}
              value={wish.pots}
              onChange={(pots) => onChange({ ...wish, pots: pots as WishDraft['pots'] })}
              options={[
                { value: '', label: label('web.placing-pots-either') },
                { value: 'only', label: label('web.placing-pots-only') },
                { value: 'never', label: label('web.placing-pots-never') },
              ]}
            />
          </div>
        )}
      </Disclosure>
    </>
  );
}

function rangeOf(plant: WishDraft['plant']): string {
  const found = typeof plant === 'string' ? findPlant(plant) : plant;
  return found === undefined
    ? ''
    : label('web.placing-range', { low: found.low.toFixed(1), high: found.high.toFixed(1) });
}
