import { Combobox } from '@base-ui/react/combobox';
import { useId, useMemo, useState } from 'react';
import { Button } from '../../kit/button.tsx';
import { Field } from '../../kit/field.tsx';
import { label } from '../../words/label.ts';
import type { Draft } from './draft.ts';
import styles from './plant-picker.module.css';
import { type AnyPlant, isHalfKnown, searchPlants } from './plant-search.ts';

type Plants = Draft['plants'];
const nameOf = (plant: Plants[number]): string => (typeof plant === 'string' ? plant : plant.plant);
const range = (low: number, high: number): string =>
  label('web.edit-plants-range', { low: low.toFixed(1), high: high.toFixed(1) });

/** The range it is planned by there. */
const rangeOf = (plant: AnyPlant, potted: boolean): string =>
  isHalfKnown(plant) || (potted && plant.containerLow !== undefined)
    ? range(plant.containerLow ?? 0, plant.containerHigh ?? 0)
    : range(plant.low, plant.high);

/** Plants of a place: searched in the almanac while typing, or added with the gardener's own pH range. */
export function PlantPicker({
  plants,
  potted = false,
  onChange,
  title = label('web.edit-plants'),
  listed = true,
}: {
  readonly plants: Plants;
  /** Offers plants that have a range for pots alone, too. */
  readonly potted?: boolean;
  readonly onChange: (plants: Plants) => void;
  readonly title?: string;
  /** Shows what is chosen; false where the screen does so itself. */
  readonly listed?: boolean;
}) {
  const [typed, setTyped] = useState('');
  const [own, setOwn] = useState<string>();
  const id = useId();
  const found = useMemo(() => searchPlants(typed, 12, potted ? 'pots' : 'ground'), [typed, potted]);
  const add = (plant: Plants[number]) => {
    if (!plants.some((each) => nameOf(each).toLowerCase() === nameOf(plant).toLowerCase()))
      onChange([...plants, plant]);
    setTyped('');
    setOwn(undefined);
  };
  return (
    <div className={styles.picker}>
      <label htmlFor={id} className={styles.label}>
        {title}
      </label>
      <p id={`${id}-hint`} className={styles.hint}>
        {label('web.edit-plants-hint')}
      </p>
      {plants.length === 0 || !listed ? null : (
        <ul className={styles.chosen}>
          {plants.map((plant) => (
            <li key={nameOf(plant)}>
              <span>
                {nameOf(plant)}
                {typeof plant === 'string' ? null : <small> {range(plant.low, plant.high)}</small>}
              </span>
              <Button
                look="quiet"
                aria-label={label('web.edit-plants-remove', { plant: nameOf(plant) })}
                onClick={() => onChange(plants.filter((each) => each !== plant))}
              >
                <span aria-hidden="true">×</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Combobox.Root<AnyPlant>
        inline
        open={typed.trim() !== ''}
        autoHighlight
        items={found}
        filter={null}
        value={null}
        inputValue={typed}
        itemToStringLabel={(plant) => plant.name}
        onInputValueChange={(value, details) => {
          if (details.reason !== 'item-press') setTyped(value);
        }}
        onValueChange={(plant) => {
          if (plant !== null) add(plant.name);
        }}
      >
        <Combobox.Input
          id={id}
          aria-describedby={`${id}-hint`}
          aria-expanded={found.length > 0}
          className={styles.input}
          autoComplete="off"
        />
        <div className={styles.popup} hidden={typed.trim() === ''}>
          {found.length > 0 ? null : <p className={styles.empty}>{label('web.edit-plants-none')}</p>}
          <Combobox.List aria-label={label('web.edit-plants-list')}>
            {(plant: AnyPlant) => (
              <Combobox.Item key={plant.key} value={plant} className={styles.item}>
                <span>
                  {plant.name} <small>{plant.botanical}</small>
                </span>
                <span className={styles.range}>{rangeOf(plant, potted)}</span>
              </Combobox.Item>
            )}
          </Combobox.List>
        </div>
      </Combobox.Root>
      {typed.trim() === '' || own !== undefined ? null : (
        <Button look="quiet" onClick={() => setOwn(typed.trim())}>
          {label('web.edit-plants-own', { name: typed.trim() })}
        </Button>
      )}
      {own === undefined ? null : <OwnRange name={own} onAdd={add} onCancel={() => setOwn(undefined)} />}
    </div>
  );
}

interface OwnProps {
  readonly name: string;
  readonly onAdd: (plant: Exclude<Plants[number], string>) => void;
  readonly onCancel: () => void;
}

function OwnRange({ name, onAdd, onCancel }: OwnProps) {
  const [low, setLow] = useState('6.0');
  const [high, setHigh] = useState('7.0');
  const [wrong, setWrong] = useState(false);
  const number = (text: string) => Number(text.replace(',', '.'));
  const add = () => {
    const plant = { plant: name, low: number(low), high: number(high) };
    const good = plant.low >= 3 && plant.high <= 10 && plant.low < plant.high;
    if (good) onAdd(plant);
    else setWrong(true);
  };
  return (
    <fieldset className={styles.own}>
      <legend>{name}</legend>
      <Field label={label('web.edit-plants-own-low')} problem={wrong ? label('web.edit-plants-own-wrong') : undefined}>
        {(field) => (
          <input {...field} inputMode="decimal" value={low} onChange={(event) => setLow(event.target.value)} />
        )}
      </Field>
      <Field label={label('web.edit-plants-own-high')}>
        {(field) => (
          <input {...field} inputMode="decimal" value={high} onChange={(event) => setHigh(event.target.value)} />
        )}
      </Field>
      <div className={styles.buttons}>
        <Button onClick={add}>{label('web.edit-plants-own-add')}</Button>
        <Button look="quiet" onClick={onCancel}>
          {label('web.cancel')}
        </Button>
      </div>
    </fieldset>
  );
}
