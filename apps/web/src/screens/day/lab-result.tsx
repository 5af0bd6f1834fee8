import { mendHeader, mendLine, type Proposal } from '@sorrel/intake';
import { useCallback, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { useAsync } from '../../app/use-async.ts';
import { download, fileName } from '../../data/download.ts';
import { today } from '../../engine/garden-plan.ts';
import { Button } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { TextInput } from '../../kit/text-input.tsx';
import { Tick } from '../../kit/tick.tsx';
import { counted, day as dayText, label } from '../../words/label.ts';
import { type LabRow, labEntries, labRows, titlesOf } from './lab-rows.ts';
import { remember } from './senders.ts';
import type { DaySession } from './use-day.ts';

interface Props {
  readonly session: DaySession;
  readonly bytes: Uint8Array;
  readonly proposal: Proposal;
  readonly onDone: () => void;
}

/** More rows than this are counted, not drawn. */
const MOST_DRAWN = 100;
/** As many entries as the server takes at one time. */
const MOST_AT_ONCE = 1000;
type Mend = Extract<LabRow, { readonly fate: 'mend' }>;

/** Each row beside the sample of its code, what must be mended, and the button that takes the rest in. */
export function LabResult({ session, bytes, proposal, onDone }: Props) {
  const { record } = useGarden();
  const { day, send } = session;
  const { region } = record.document;
  const [sender, setSender] = useState(proposal.mapping.sender ?? '');
  const [unknownToo, setUnknownToo] = useState(false);
  const [busy, setBusy] = useState(false);
  const load = useCallback(
    () => labRows(bytes, proposal, day.samples, { today: today(), ...(region === undefined ? {} : { region }) }),
    [bytes, proposal, day.samples, region],
  );
  const read = useAsync(load);
  if (read.state === 'loading') return <Loading code="web.working" />;
  if (read.state === 'failed') return <Callout kind="wrong">{String(read.error)}</Callout>;
  const rows = read.value;
  const of = <F extends LabRow['fate']>(fate: F) =>
    rows.filter((row): row is Extract<LabRow, { readonly fate: F }> => row.fate === fate);
  const [adds, there, unknown, mend] = [of('adds'), of('there'), of('unknown'), of('mend')];
  const entries = labEntries(record.id, rows, unknownToo);
  const taken = adds.length + (unknownToo ? unknown.length : 0);

  const save = async () => {
    setBusy(true);
    const name = sender.trim();
    if (name !== '') remember({ ...proposal.mapping, sender: name });
    let whole = true;
    for (let at = 0; at < entries.length && whole; at += MOST_AT_ONCE)
      whole = await send(entries.slice(at, at + MOST_AT_ONCE), counted('web.day-lab-saved', taken));
    setBusy(false);
    if (whole && mend.length === 0) onDone();
  };
  return (
    <Section id="rows" title="web.day-lab-rows">
      <p role="status">{label('web.day-lab-account', { rows: rows.length, adds: adds.length, mend: mend.length })}</p>
      {mend.length === 0 ? null : <ToMend rows={mend} proposal={proposal} garden={record.document.garden} />}
      {unknown.length === 0 ? null : (
        <Callout kind="care" title={counted('web.day-lab-unknown', unknown.length)}>
          <p>
            {unknown
              .slice(0, MOST_DRAWN)
              .map(({ code, line }) => label('web.day-lab-at', { code, line }))
              .join(', ')}
          </p>
          <Tick checked={unknownToo} onChange={setUnknownToo}>
            {label('web.day-lab-unknown-too')}
          </Tick>
        </Callout>
      )}
      {there.length === 0 ? null : <p>{counted('web.day-lab-there', there.length)}</p>}
      {adds.length === 0 ? null : (
        <Disclosure title={counted('web.day-lab-adds', adds.length)}>
          {() => (
            <Table
              caption={counted('web.day-lab-adds', adds.length)}
              cards
              columns={['web.day-sample', 'web.day-ph', 'web.test-date', 'web.day-lab-line']}
              rows={adds.slice(0, MOST_DRAWN).map(({ line, sample, test }) => ({
                key: String(line),
                cells: [sample.code, test.ph?.value.toFixed(2) ?? '', dayText(test.date), String(line)],
              }))}
            />
          )}
        </Disclosure>
      )}
      <div className={page.sheet}>
        <TextInput
          label={label('web.day-lab-sender')}
          optional={label('web.optional')}
          hint={label('web.day-lab-sender-hint')}
          value={sender}
          onChange={setSender}
        />
        <div className={page.actions}>
          <Button look="main" disabled={busy || entries.length === 0} onClick={() => void save()}>
            {entries.length === 0 ? label('web.day-lab-nothing') : counted('web.day-lab-save', taken)}
          </Button>
        </div>
      </div>
    </Section>
  );
}

interface MendProps {
  readonly rows: readonly Mend[];
  readonly proposal: Proposal;
  readonly garden: string;
}

function ToMend({ rows, proposal, garden }: MendProps) {
  const list = () =>
    mendHeader(titlesOf(proposal)) +
    rows.map(({ line, cells, problems }) => mendLine({ line, cells, problems })).join('');
  return (
    <Callout kind="wrong" title={counted('web.day-lab-mend', rows.length)}>
      <p>{label('web.day-lab-mend-text')}</p>
      <ul>
        {rows.slice(0, MOST_DRAWN).map(({ line, code, problems }) => (
          <li key={line}>
            <strong>{label('web.day-lab-mend-at', { line, code: code === '' ? '–' : code })}</strong>{' '}
            {problems.map(({ message, fix }) => `${message} ${fix}`).join(' ')}
          </li>
        ))}
      </ul>
      <div>
        <Button onClick={() => download(fileName(`${garden} to mend`, 'csv'), 'text/csv', list())}>
          {label('web.day-lab-mend-list')}
        </Button>
      </div>
    </Callout>
  );
}
