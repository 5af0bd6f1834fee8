import { readGarden, usualDepth } from '@sorrel/engine/document';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Choice } from '../../kit/choice.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import { faultsOf } from '../edit-place/faults.ts';
import { PlantPicker } from '../edit-place/plant-picker.tsx';
import styles from './day.module.css';
import { contentOf, isCode, type SampleContent, type SampleDraft } from './sample-draft.ts';

interface Props {
  readonly start: SampleDraft;
  readonly before: SampleContent | undefined;
  /** Next free code. */
  readonly next: string;
  readonly taken: readonly string[];
  readonly neighbourhoods: readonly string[];
  readonly focused: boolean;
  readonly onSave: (content: SampleContent) => void;
  readonly onCancel: (() => void) | undefined;
}

/** One bag. Enter goes from field to field and saves in the last one. */
export function CheckInForm({ start, before, next, taken, neighbourhoods, focused, onSave, onCancel }: Props) {
  const { record, speaker } = useGarden();
  const [draft, setDraft] = useState(start);
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const change = (part: Partial<SampleDraft>) => setDraft((was) => ({ ...was, ...part }));
  const us = speaker.units === 'us';
  const pots = draft.kind === 'pots';
  const content = contentOf(draft, before);
  const faults = tried ? faultsIn(draft, content, taken, next, record.document) : {};

  useEffect(() => {
    // The code is there already, so the name comes first.
    if (focused) form.current?.querySelectorAll('input')[1]?.focus();
  }, [focused]);

  const save = () => {
    setTried(true);
    if (Object.keys(faultsIn(draft, content, taken, next, record.document)).length === 0) onSave(content);
    else requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const { target } = event;
    if (event.key !== 'Enter' || event.nativeEvent.isComposing || !(target instanceof HTMLInputElement)) return;
    const picking = target.getAttribute('role') === 'combobox' && target.value.trim() !== '';
    // The list of plants takes Enter for itself while something is typed.
    if (event.defaultPrevented || picking) return event.preventDefault();
    // Unlabelled ones are no fields of the form: the list of plants keeps one for itself.
    const fields = [...(form.current?.querySelectorAll('input') ?? [])].filter(
      (field) => (field.labels?.length ?? 0) > 0 && (field.type !== 'radio' || field.checked),
    );
    const following = fields[fields.indexOf(target) + 1];
    event.preventDefault();
    if (following === undefined) save();
    else following.focus();
  };
  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div className={styles.trio}>
        <TextInput
          label={label('web.day-in-code')}
          value={draft.code}
          onChange={(code) => change({ code })}
          problem={faults.code}
        />
        <TextInput
          label={label('web.day-in-person')}
          optional={label('web.optional')}
          value={draft.person}
          onChange={(person) => change({ person })}
          problem={faults.person}
        />
        <TextInput
          label={label('web.day-in-neighbourhood')}
          optional={label('web.optional')}
          offers={neighbourhoods}
          value={draft.neighbourhood}
          onChange={(neighbourhood) => change({ neighbourhood })}
        />
      </div>
      <Choice
        legend={label('web.day-in-kind')}
        legendShown
        wrap
        options={(['bed', 'lawn', 'pots'] as const).map((value) => ({
          value,
          label: label(`web.day-in-kind-${value}`),
        }))}
        value={draft.kind}
        onChange={(kind) => change({ kind })}
      />
      <PlantPicker plants={draft.plants} onChange={(plants) => change({ plants: [...plants] })} />
      {faults.plants === undefined ? null : <Callout kind="wrong">{faults.plants}</Callout>}
      <div className={styles.trio}>
        {pots ? (
          <>
            <TextInput
              label={label('web.edit-pots')}
              inputMode="numeric"
              value={draft.count}
              onChange={(count) => change({ count })}
              problem={faults.count}
            />
            <TextInput
              label={label('web.edit-volume')}
              hint={label(us ? 'web.edit-volume-hint-us' : 'web.edit-volume-hint-metric')}
              value={draft.volume}
              onChange={(volume) => change({ volume })}
              problem={faults.volume}
            />
          </>
        ) : (
          <TextInput
            label={label(draft.kind === 'lawn' ? 'web.day-in-size-lawn' : 'web.day-in-size')}
            optional={label('web.optional')}
            hint={label(us ? 'web.day-in-size-hint-us' : 'web.day-in-size-hint-metric')}
            value={draft.size}
            onChange={(size) => change({ size })}
            problem={faults.size}
          />
        )}
        <TextInput
          label={label('web.day-in-depth')}
          optional={label('web.optional')}
          hint={label('web.day-in-depth-hint', {
            depth: speaker.rough(usualDepth(pots, draft.kind === 'lawn' ? 'lawn' : 'open ground'), 'length'),
          })}
          value={draft.depth}
          onChange={(depth) => change({ depth })}
          problem={faults.depth}
        />
      </div>
      {faults.other === undefined ? null : <Callout kind="wrong">{faults.other}</Callout>}
      <div className={styles.buttons}>
        <Button type="submit" look="main">
          {label(onCancel === undefined ? 'web.day-in-save' : 'web.day-in-change')}
        </Button>
        {onCancel === undefined ? null : (
          <Button look="quiet" onClick={onCancel}>
            {label('web.cancel')}
          </Button>
        )}
      </div>
    </form>
  );
}

function faultsIn(
  draft: SampleDraft,
  content: SampleContent,
  taken: readonly string[],
  next: string,
  document: object,
): Readonly<Record<string, string | undefined>> {
  const code = draft.code.trim();
  if (!isCode(code)) return { code: label('web.day-in-code-bad') };
  if (taken.some((each) => each.toLowerCase() === code.toLowerCase()))
    return { code: label('web.day-in-code-taken', { code, next }) };
  const today = new Date().toISOString().slice(0, 10);
  return faultsOf(content, [], readGarden({ ...document, places: [content] }, { today }).problems);
}
