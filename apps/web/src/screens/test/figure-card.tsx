import { labFields } from '@sorrel/almanac/lab-fields';
import { type BufferMethod, bufferRange } from '@sorrel/engine/evidence';
import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { Quantity } from '../../kit/quantity.tsx';
import { Select, TextInput } from '../../kit/text-input.tsx';
import { hasLabel, label, listed, type WebCode } from '../../words/label.ts';
import type { Fault } from './check-test.ts';
import { type Draft, unitPath } from './draft.ts';
import type { Figure, FigureField } from './figures.ts';
import styles from './test.module.css';

interface Props {
  readonly figure: Figure;
  readonly draft: Draft;
  readonly faultAt: (path: string) => Fault | undefined;
  readonly onChange: (path: string, value: string, unit?: string) => void;
  readonly onLeave: (path: string) => void;
}

/** One number of the paper: its fields, and what it means one tap below. */
export function FigureCard({ figure, draft, faultAt, onChange, onLeave }: Props) {
  const also = labFields.find((row) => row.field === figure.field)?.synonyms;
  const explained = figure.fields.filter((field) => field.choices?.some((each) => whatOf(each) !== undefined));
  // A number that stands alone needs no heading beside its own name.
  const alone = figure.fields.length === 1;
  const field = (each: FigureField) => {
    const fault = faultAt(each.path);
    const common = {
      label: label(alone ? figure.title : each.label),
      value: draft.values[each.path] ?? '',
      problem: fault === undefined ? undefined : `${fault.message} ${fault.fix}`,
      onBlur: () => onLeave(each.path),
    };
    if (each.type === 'quantity')
      return (
        <Quantity
          key={each.path}
          {...common}
          units={each.units ?? []}
          unit={draft.values[unitPath(each.path)] ?? each.units?.[0] ?? ''}
          onChange={(value, unit) => onChange(each.path, value, unit)}
        />
      );
    if (each.type === 'choice')
      return (
        <Select
          key={each.path}
          {...common}
          onChange={(value) => onChange(each.path, value)}
          options={[
            { value: '', label: label(each.mayBeUnsaid ? 'web.test-unsaid' : 'web.test-choose') },
            ...(each.choices ?? []).map((value) => ({ value, label: choiceLabel(value) })),
          ]}
        />
      );
    return (
      <TextInput
        key={each.path}
        {...common}
        inputMode={each.type === 'number' ? 'decimal' : 'text'}
        onChange={(value) => onChange(each.path, value)}
      />
    );
  };
  return (
    <section className={page.sheet} aria-label={label(figure.title)}>
      {alone ? null : <h3>{label(figure.title)}</h3>}
      <div className={page.grid}>{figure.fields.map(field)}</div>
      <Disclosure title={label(explained.length > 0 ? 'web.test-which' : 'web.test-what')}>
        {() => (
          <div className={styles.what}>
            <p>{label(figure.what)}</p>
            {also === undefined || also.length === 0 ? null : (
              <p className={page.soft}>{label('web.test-called', { names: listed(also) })}</p>
            )}
            {explained.map((each) => (
              <dl key={each.path} className={styles.choices}>
                {(each.choices ?? []).map((value) => {
                  const what = whatOf(value);
                  return what === undefined ? null : (
                    <div key={value}>
                      <dt>{choiceLabel(value)}</dt>
                      <dd>
                        {label(what)}
                        {each.path === 'buffer.kind'
                          ? ` ${label('web.test-starts', { ph: bufferRange(value as BufferMethod).start })}`
                          : null}
                      </dd>
                    </div>
                  );
                })}
              </dl>
            ))}
          </div>
        )}
      </Disclosure>
    </section>
  );
}

/** Words of the paper have a label each, and some an explanation. */
const choiceLabel = (value: string): string => label(`web.o-${value}` as WebCode);
function whatOf(value: string): WebCode | undefined {
  const code = `web.w-${value}`;
  return hasLabel(code) ? code : undefined;
}
