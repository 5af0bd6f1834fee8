import { type MaterialRow, materialOf, materials } from '@sorrel/almanac/materials';
import type { MessageCode } from '@sorrel/almanac/words';
import { questionsAbout } from '@sorrel/engine/materials';
import { useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { add, correct } from '../../data/write.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Field } from '../../kit/field.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import { massUnits } from '../work/used.ts';
import {
  checkMaterial,
  draftOf,
  entryOf,
  type LabelField,
  labelFields,
  type MaterialEntry,
  unitsOf,
} from './material-draft.ts';
import styles from './settings.module.css';

interface Props {
  /** Id in the record of the one to change; a new one is added without it. */
  readonly id?: string;
  readonly entry?: MaterialEntry;
  readonly onClose: () => void;
}

const roles = ['liming', 'acidifying', 'organic', 'fertilizer', 'neutral'] as const;
const hints = {
  cce: 'web.mat-cce-hint',
  efficiency: 'web.mat-efficiency-hint',
  purity: 'web.mat-purity-hint',
  density: 'web.mat-density-hint',
} as const;

/** One material with what its own label says. */
export function MaterialForm({ id, entry, onClose }: Props) {
  const { planned, record, speaker, write } = useGarden();
  const today = planned.read.garden.settings.today;
  const masses = massUnits[speaker.units];
  const [draft, setDraft] = useState(() => draftOf(entry, masses));
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const row = materialOf(draft.material);
  const fields = row === undefined ? [] : labelFields(row);
  const content = entryOf(draft, fields, entry?.note);
  const { faults, product } = checkMaterial(content, today);
  const priceAlone = draft.price.trim() !== '' && draft.bag.value.trim() === '';
  const faultAt = (field: string) => (tried ? faults.get(field) : undefined);
  const asks = product === undefined ? [] : questionsAbout(product);
  const figure = (field: LabelField) => {
    const units = unitsOf(field, masses);
    const typed = draft.figures[field] ?? { value: '', unit: units[0] ?? '' };
    return (
      <Quantity
        key={field}
        label={label(field === 'onHand' ? 'web.mat-on-hand' : `web.mat-${field}`)}
        hint={field in hints ? label(hints[field as keyof typeof hints]) : undefined}
        units={units}
        {...typed}
        onChange={(value, unit) =>
          setDraft((before) => ({ ...before, figures: { ...before.figures, [field]: { value, unit } } }))
        }
        problem={faultAt(field)}
      />
    );
  };
  const save = async () => {
    setTried(true);
    if (row === undefined || row.refused !== undefined || faults.size > 0 || priceAlone) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    const name = content.name ?? row.name;
    const saved = id === undefined ? add(record.id, 'material', content) : correct(record.id, id, 'material', content);
    if (await write([saved], label('web.mat-saved', { name }))) onClose();
  };
  return (
    <form
      ref={form}
      className={page.sheet}
      noValidate
      aria-label={label(id === undefined ? 'web.mat-add' : 'web.mat-edit')}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className={page.grid}>
        <Field
          label={label('web.mat-what')}
          problem={tried && row === undefined ? label('web.mat-missing') : faultAt('material')}
        >
          {(props) => (
            <select
              {...props}
              value={draft.material}
              onChange={(event) => setDraft({ ...draft, material: event.target.value })}
            >
              <option value="">{label('web.mat-choose')}</option>
              {roles.map((role) => (
                <optgroup key={role} label={label(`web.mat-group-${role}`)}>
                  {materials
                    .filter((each) => each.role === role)
                    .map((each) => (
                      <option key={each.key} value={each.key}>
                        {each.name}
                      </option>
                    ))}
                </optgroup>
              ))}
            </select>
          )}
        </Field>
        <TextInput
          label={label('web.mat-name')}
          optional={label('web.optional')}
          value={draft.name}
          onChange={(name) => setDraft({ ...draft, name })}
          problem={faultAt('name')}
        />
      </div>
      {row?.refused === undefined ? null : <Refused row={row} code={row.refused} />}
      {row === undefined || row.refused !== undefined ? null : (
        <>
          <h3>{label('web.mat-label')}</h3>
          <p className={page.soft}>{label('web.mat-label-text')}</p>
          <div className={page.grid}>{fields.map(figure)}</div>
          {fields.includes('efficiency') ? (
            <>
              <h3>{label('web.mat-sieves')}</h3>
              <p className={page.soft}>{label('web.mat-sieves-text')}</p>
              {draft.sieves.map((sieve, index) => {
                const set = (change: Partial<typeof sieve>) =>
                  setDraft({
                    ...draft,
                    sieves: draft.sieves.map((each, at) => (at === index ? { ...each, ...change } : each)),
                  });
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: sieves are only ever added at the end
                  <div key={index} className={styles.sieve}>
                    <TextInput
                      label={label('web.mat-screen')}
                      value={sieve.screen}
                      onChange={(screen) => set({ screen })}
                      offers={['8 mesh', '10 mesh', '20 mesh', '40 mesh', '50 mesh', '60 mesh', '100 mesh']}
                      problem={index === 0 ? faultAt('passing') : undefined}
                    />
                    <Quantity
                      label={label('web.mat-passes')}
                      units={['%']}
                      unit="%"
                      value={sieve.passes}
                      onChange={(passes) => set({ passes })}
                    />
                  </div>
                );
              })}
              <div>
                <Button onClick={() => setDraft({ ...draft, sieves: [...draft.sieves, { screen: '', passes: '' }] })}>
                  {label('web.mat-sieve-more')}
                </Button>
              </div>
            </>
          ) : null}
          <h3>{label('web.mat-bag')}</h3>
          <div className={page.grid}>
            <Quantity
              label={label('web.mat-bag-size')}
              units={masses}
              {...draft.bag}
              onChange={(value, unit) => setDraft({ ...draft, bag: { value, unit } })}
              problem={tried && priceAlone ? label('web.mat-price-no-bag') : faultAt('bag')}
            />
            <TextInput
              label={label('web.mat-price')}
              inputMode="decimal"
              value={draft.price}
              onChange={(price) => setDraft({ ...draft, price })}
              problem={tried && faults.has('bag.price') ? label('web.mat-price-bad') : undefined}
            />
            {figure('onHand')}
          </div>
          {asks.length === 0 ? null : (
            <Callout title={label('web.mat-surer')}>
              <ul>
                {asks.map((message) => (
                  <li key={message.code}>{speaker.say(message)}</li>
                ))}
              </ul>
            </Callout>
          )}
        </>
      )}
      <div className={page.actions}>
        {row?.refused === undefined ? (
          <Button type="submit" look="main">
            {label('web.mat-save')}
          </Button>
        ) : null}
        <Button look="quiet" onClick={onClose}>
          {label('web.cancel')}
        </Button>
      </div>
    </form>
  );
}

function Refused({ row, code }: { readonly row: MaterialRow; readonly code: string }) {
  const { speaker } = useGarden();
  return (
    <Callout kind="care" title={label('web.mat-refused')}>
      <p>{speaker.say({ code: code as MessageCode, parameters: { product: row.name } })}</p>
    </Callout>
  );
}
