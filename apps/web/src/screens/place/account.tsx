import type { Account, AccountEntry } from '@sorrel/engine/forecast';
import { useGarden } from '../../app/garden-context.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { day, label, type WebCode } from '../../words/label.ts';
import styles from './account.module.css';

const entryCode: Readonly<Record<AccountEntry, WebCode>> = {
  lime: 'web.account-lime',
  'ash and fast lime': 'web.account-fast',
  compost: 'web.account-compost',
  sulfur: 'web.account-sulfur',
  sulfates: 'web.account-sulfates',
  'not mixed in': 'web.account-not-mixed',
  'rain and soil': 'web.account-rain',
  fertilizer: 'web.account-fertilizer',
  water: 'web.account-water',
  crops: 'web.account-crops',
  'organic matter': 'web.account-organic',
  leaching: 'web.account-leaching',
  aluminium: 'web.account-aluminium',
  carbonate: 'web.account-carbonate',
  'exchange below': 'web.account-below',
};

/** Less than this is nothing: 1 g of lime on a square metre. */
const NOTHING = 0.001;

/** Everything that pushes the pH, year by year, in one currency: bars for the first year, the whole as a table. */
export function AccountOf({ account, perVolume }: { readonly account: Account; readonly perVolume: boolean }) {
  const { speaker } = useGarden();
  // A last piece of a few days is no year.
  const years = account.years.filter(({ from, to }) => Date.parse(to) - Date.parse(from) > 200 * 86_400_000);
  const [first] = years;
  if (first === undefined) return null;
  const dimension = perVolume ? 'massPerVolume' : 'massPerArea';
  const amount = (value: number) => signed(value, (size) => speaker.rough(size, dimension));
  const kinds = (Object.keys(entryCode) as AccountEntry[]).filter((kind) =>
    years.some((year) => Math.abs(year.entries[kind]) >= NOTHING),
  );
  const inFirst = kinds
    .map((kind) => ({ kind, value: first.entries[kind] }))
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value));
  const largest = Math.max(NOTHING, ...inFirst.map(({ value }) => Math.abs(value)));
  return (
    <Section id="account" title="web.sec-account">
      <p>
        {label(
          perVolume ? 'web.account-lead-pot' : speaker.units === 'us' ? 'web.account-lead-us' : 'web.account-lead',
        )}
      </p>
      <div className={styles.bars}>
        <p className={styles.year}>{label('web.account-year', { date: day(first.from) })}</p>
        <ul>
          {inFirst.map(({ kind, value }) => (
            <li key={kind}>
              <span>{label(entryCode[kind])}</span>
              <svg width="100%" height="18" aria-hidden="true" focusable="false">
                <line x1="50%" x2="50%" y1="0" y2="18" className={styles.zero} />
                <rect
                  x={value < 0 ? `${50 - (50 * -value) / largest}%` : '50%'}
                  width={`${(50 * Math.abs(value)) / largest}%`}
                  y="3"
                  height="12"
                  className={value < 0 ? styles.sours : styles.sweetens}
                />
              </svg>
              <span className={styles.amount}>{amount(value)}</span>
            </li>
          ))}
        </ul>
      </div>
      <Disclosure title={label('web.account-all')}>
        {() => (
          <>
            <Table
              caption={label('web.sec-account')}
              head={[
                label('web.account-what'),
                ...years.map(({ from }) => label('web.account-year', { date: day(from) })),
              ]}
              figures
              rows={[
                ...kinds.map((kind) => ({
                  key: kind,
                  cells: [label(entryCode[kind]), ...years.map((year) => amount(year.entries[kind]))],
                })),
                {
                  key: 'sum',
                  cells: [label('web.account-sum'), ...years.map(({ change }) => amount(change))],
                },
                {
                  key: 'ph',
                  cells: [
                    label('web.account-ph'),
                    ...years.map(({ ph }) =>
                      label('web.account-ph-text', { start: speaker.ph(ph.start), end: speaker.ph(ph.end) }),
                    ),
                  ],
                },
              ]}
            />
            {Math.abs(account.unreacted.lime) + Math.abs(account.unreacted.sulfur) < NOTHING ? null : (
              <p>
                {label('web.account-unreacted', {
                  amount: amount(account.unreacted.lime + account.unreacted.sulfur),
                })}
              </p>
            )}
          </>
        )}
      </Disclosure>
    </Section>
  );
}

function signed(value: number, say: (size: number) => string): string {
  if (Math.abs(value) < NOTHING) return '0';
  return `${value < 0 ? '−' : '+'}${say(Math.abs(value))}`;
}
