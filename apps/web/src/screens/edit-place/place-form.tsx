import { readGarden, textures } from '@sorrel/engine/document';
import { type ReactNode, useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { today } from '../../engine/garden-plan.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Field } from '../../kit/field.tsx';
import { Tick } from '../../kit/tick.tsx';
import { label } from '../../words/label.ts';
import { type Draft, entryOf, type PlaceEntry } from './draft.ts';
import { faultsOf } from './faults.ts';
import styles from './place-form.module.css';
import { PlantPicker } from './plant-picker.tsx';

interface Props {
  readonly start: Draft;
  /** The place as it was, when it is being changed. */
  readonly before?: PlaceEntry | undefined;
  readonly submit: string;
  readonly onSave: (entry: PlaceEntry) => Promise<void>;
  readonly children?: ReactNode;
}

/** The form of a place. Each entry is checked by the engine's own reader, and its fault said beside it. */
export function PlaceForm({ start, before, submit, onSave, children }: Props) {
  const { record, speaker } = useGarden();
  const [draft, setDraft] = useState(start);
  const [checked, setChecked] = useState(false);
  const [busy, setBusy] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const us = speaker.units === 'us';
  const change = (part: Partial<Draft>) => setDraft((was) => ({ ...was, ...part }));
  const others = record.document.places.map((place) => place.name).filter((name) => name !== before?.name);
  const entry = entryOf(draft, before);
  const faults = checked
    ? faultsOf(entry, others, readGarden({ ...record.document, places: [entry] }, { today: today() }).problems)
    : {};
  const save = async () => {
    const found = faultsOf(
      entry,
      others,
      readGarden({ ...record.document, places: [entry] }, { today: today() }).problems,
    );
    setChecked(true);
    if (Object.keys(found).length > 0) {
      // After the faults have been drawn.
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    setBusy(true);
    await onSave(entry);
    setBusy(false);
  };
  const container = draft.kind === 'container';
  const input = (name: 'name' | 'size' | 'count' | 'volume' | 'depth' | 'organicMatter') => ({
    value: draft[name],
    autoComplete: 'off',
    onChange: (event: { readonly target: { readonly value: string } }) => change({ [name]: event.target.value }),
  });
  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <Field label={label('web.edit-name')} hint={label('web.edit-name-hint')} problem={faults.name}>
        {(field) => <input {...field} {...input('name')} />}
      </Field>
      <Choice
        legend={label('web.edit-kind')}
        legendShown
        wrap
        options={[
          { value: 'bed', label: label('web.edit-kind-bed') },
          { value: 'plot', label: label('web.edit-kind-plot') },
          { value: 'container', label: label('web.edit-kind-container') },
        ]}
        value={draft.kind}
        onChange={(kind) => change({ kind })}
      />
      {container ? (
        <div className={styles.pair}>
          <Field label={label('web.edit-pots')} problem={faults.count}>
            {(field) => <input {...field} {...input('count')} inputMode="numeric" />}
          </Field>
          <Field
            label={label('web.edit-volume')}
            hint={label(us ? 'web.edit-volume-hint-us' : 'web.edit-volume-hint-metric')}
            problem={faults.volume}
          >
            {(field) => <input {...field} {...input('volume')} />}
          </Field>
        </div>
      ) : (
        <>
          <Field
            label={label('web.edit-size')}
            hint={label(us ? 'web.edit-size-hint-us' : 'web.edit-size-hint-metric')}
            problem={faults.size}
          >
            {(field) => <input {...field} {...input('size')} />}
          </Field>
          <Choice
            legend={label('web.edit-situation')}
            legendShown
            wrap
            options={[
              { value: 'open ground', label: label('web.edit-situation-open') },
              { value: 'around plants', label: label('web.edit-situation-around') },
              { value: 'lawn', label: label('web.edit-situation-lawn') },
            ]}
            value={draft.situation}
            onChange={(situation) => change({ situation })}
          />
        </>
      )}
      <PlantPicker potted={container} plants={draft.plants} onChange={(plants) => change({ plants })} />
      {faults.plants === undefined ? null : <Callout kind="wrong">{faults.plants}</Callout>}
      <div className={styles.pair}>
        <Field
          label={label('web.edit-depth')}
          optional={label('web.edit-optional')}
          hint={label(us ? 'web.edit-depth-hint-us' : 'web.edit-depth-hint-metric')}
          problem={faults.depth}
        >
          {(field) => <input {...field} {...input('depth')} />}
        </Field>
        {container ? null : (
          <Field
            label={label('web.edit-texture')}
            optional={label('web.edit-optional')}
            hint={label('web.edit-texture-hint')}
          >
            {(field) => (
              <select {...field} value={draft.texture} onChange={(event) => change({ texture: event.target.value })}>
                <option value="">{label('web.edit-texture-unknown')}</option>
                {textures.map((texture) => (
                  <option key={texture}>{texture}</option>
                ))}
              </select>
            )}
          </Field>
        )}
        <Field
          label={label('web.edit-organic')}
          optional={label('web.edit-optional')}
          hint={label('web.edit-organic-hint')}
          problem={faults.organicMatter}
        >
          {(field) => <input {...field} {...input('organicMatter')} />}
        </Field>
      </div>
      <fieldset className={styles.around}>
        <legend>{label('web.edit-around')}</legend>
        <Tick checked={draft.nearOpenWater} onChange={(nearOpenWater) => change({ nearOpenWater })}>
          {label('web.edit-water-near')}
        </Tick>
        <Tick checked={draft.childrenOrPets} onChange={(childrenOrPets) => change({ childrenOrPets })}>
          {label('web.edit-children')}
        </Tick>
      </fieldset>
      <Field label={label('web.edit-note')} optional={label('web.edit-optional')}>
        {(field) => (
          <textarea {...field} value={draft.note} onChange={(event) => change({ note: event.target.value })} />
        )}
      </Field>
      {Object.keys(faults).length === 0 ? null : (
        <Callout kind="wrong" title={label('web.edit-check')}>
          {faults.other === undefined ? null : <p>{faults.other}</p>}
        </Callout>
      )}
      <div className={styles.buttons}>
        <Button type="submit" look="main" disabled={busy}>
          {submit}
        </Button>
        {children}
      </div>
    </form>
  );
}
