import { en } from '@sorrel/almanac/words';
import { changeColumn, type Proposal, propose } from '@sorrel/intake';
import { useState } from 'react';
import { ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Field } from '../../kit/field.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { Select } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import { codeColumn, withCodes } from './code-column.ts';
import { DayScreen } from './day-screen.tsx';
import { LabColumns } from './lab-columns.tsx';
import { LabQuestions } from './lab-questions.tsx';
import { LabResult } from './lab-result.tsx';
import { knownSenders } from './senders.ts';
import type { DaySession } from './use-day.ts';

type Opened =
  | { readonly state: 'none' | 'reading' }
  | { readonly state: 'failed'; readonly reasons: readonly string[] }
  | { readonly state: 'open'; readonly bytes: Uint8Array; readonly proposal: Proposal };

/** A laboratory's file: what its columns mean is shown and asked, then its rows go to the samples of their codes. */
export default function LabFile() {
  return <DayScreen>{(session) => <LabFilePage session={session} />}</DayScreen>;
}

function LabFilePage({ session }: { readonly session: DaySession }) {
  const [opened, setOpened] = useState<Opened>({ state: 'none' });
  const [file, setFile] = useState<{ readonly name: string; readonly bytes: Uint8Array }>();
  const codes = session.day.samples.map(({ code }) => code);
  const read = async (bytes: Uint8Array, name: string, sheet?: string) => {
    setOpened({ state: 'reading' });
    const proposed = await propose(bytes, name, { senders: knownSenders(), ...(sheet === undefined ? {} : { sheet }) });
    setOpened(
      proposed.ok
        ? { state: 'open', bytes, proposal: withCodes(proposed.proposal, codes) }
        : { state: 'failed', reasons: proposed.problems.map(({ message, fix }) => `${message} ${fix}`) },
    );
  };
  if (session.day.samples.length === 0)
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.day-lab-title')}</h1>
        <p>{label('web.day-lab-empty')}</p>
        <div>
          <ButtonLink href="/check-in" look="main">
            {label('web.day-first')}
          </ButtonLink>
        </div>
      </div>
    );
  return (
    <div className={page.page}>
      <header className={page.head}>
        <h1>{label('web.day-lab-title')}</h1>
        <p className={page.lead}>{label('web.day-lab-lead')}</p>
      </header>
      <section className={page.sheet} aria-label={label('web.day-lab-file')}>
        <Field label={label('web.day-lab-file')} hint={label('web.day-lab-file-hint')}>
          {(props) => (
            <input
              {...props}
              type="file"
              accept=".csv,.tsv,.txt,.xlsx,text/csv,text/plain"
              onChange={async (event) => {
                const chosen = event.target.files?.[0];
                if (chosen === undefined) return;
                const bytes = new Uint8Array(await chosen.arrayBuffer());
                setFile({ name: chosen.name, bytes });
                await read(bytes, chosen.name);
              }}
            />
          )}
        </Field>
        {opened.state === 'open' &&
        opened.proposal.form.kind === 'workbook' &&
        opened.proposal.form.sheets.length > 1 ? (
          <Select
            label={label('web.day-lab-sheet')}
            value={opened.proposal.form.sheet}
            onChange={(sheet) => {
              if (file !== undefined) void read(file.bytes, file.name, sheet);
            }}
            options={opened.proposal.form.sheets.map((sheet) => ({ value: sheet, label: sheet }))}
          />
        ) : null}
      </section>
      {opened.state === 'reading' ? <Loading code="web.working" /> : null}
      {opened.state === 'failed' ? (
        <Callout kind="wrong" title={label('web.day-lab-failed')}>
          {opened.reasons.map((reason) => (
            <p key={reason}>{reason}</p>
          ))}
        </Callout>
      ) : null}
      {opened.state === 'open' ? (
        <OpenFile
          session={session}
          bytes={opened.bytes}
          proposal={opened.proposal}
          onChange={(proposal) => setOpened({ ...opened, proposal })}
          onDone={() => setOpened({ state: 'none' })}
        />
      ) : null}
    </div>
  );
}

/** Said of a file that comes alone; here the check-in has asked for it. */
const KNOWN_HERE: ReadonlySet<string> = new Set([en['intake.assume-area'], en['intake.assume-plants']]);

interface OpenProps {
  readonly session: DaySession;
  readonly bytes: Uint8Array;
  readonly proposal: Proposal;
  readonly onChange: (proposal: Proposal) => void;
  readonly onDone: () => void;
}

function OpenFile({ session, bytes, proposal, onChange, onDone }: OpenProps) {
  const { remembered, returned, questions, header, preview } = proposal;
  const assumed = proposal.assumed.filter((text) => !KNOWN_HERE.has(text));
  return (
    <>
      {remembered === undefined ? null : (
        <Callout>
          <p>{label('web.day-lab-remembered', { sender: remembered.sender ?? label('web.day-lab-somebody') })}</p>
          {remembered.gone.length === 0 ? null : (
            <p>{label('web.day-lab-gone', { columns: remembered.gone.join(', ') })}</p>
          )}
        </Callout>
      )}
      {returned === undefined ? null : (
        <Callout>
          <p>{label('web.day-lab-returned')}</p>
        </Callout>
      )}
      {codeColumn(proposal) === undefined ? (
        <Callout kind="care">
          <Select
            label={label('web.day-lab-code')}
            value=""
            onChange={(title) => {
              const changed = changeColumn(proposal, title, { means: 'place' });
              if (changed.ok) onChange(changed.proposal);
            }}
            options={[
              { value: '', label: label('web.day-lab-choose') },
              ...header.titles.map((title) => ({ value: title, label: title })),
            ]}
          />
        </Callout>
      ) : null}
      <LabQuestions questions={questions} proposal={proposal} onChange={onChange} />
      <LabColumns proposal={proposal} onChange={onChange} />
      {assumed.length === 0 ? null : (
        <ul className={page.bullets}>
          {assumed.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      <Disclosure title={label('web.day-lab-preview')}>
        {() => (
          <Table
            caption={label('web.day-lab-preview')}
            head={[label('web.day-lab-line'), ...header.titles.map((title, at) => `${at + 1}. ${title}`)]}
            rows={preview.map(({ line, cells }) => ({ key: String(line), cells: [String(line), ...cells] }))}
          />
        )}
      </Disclosure>
      {questions.length > 0 || codeColumn(proposal) === undefined ? (
        <Section id="rows" title="web.day-lab-rows">
          <p className={page.soft}>{label('web.day-lab-first')}</p>
        </Section>
      ) : (
        <LabResult session={session} bytes={bytes} proposal={proposal} onDone={onDone} />
      )}
    </>
  );
}
