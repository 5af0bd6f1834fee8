import { rangesOf } from '@sorrel/almanac/plant-ranges';
import { Cited } from '../../kit/cited.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { label, type WebCode } from '../../words/label.ts';
import type { AnyPlant } from '../edit-place/plant-search.ts';

/** Each publication by itself, pots and ground apart, its citation one tap below. */
export function Published({ plant }: { readonly plant: AnyPlant }) {
  return (
    <Section id="published" title="web.plant-published">
      <Disclosure title={label('web.plant-published-lead')}>
        {() => (
          <Table
            cards
            caption={label('web.plant-published')}
            columns={[
              'web.plant-col-source',
              'web.plant-col-where',
              'web.plant-col-best',
              'web.plant-col-stands',
              'web.plant-col-note',
            ]}
            rows={rangesOf(plant.key).map((row, index) => ({
              key: `${row.sources.join()}-${row.medium}-${index}`,
              cells: [
                <Cited key="source" keys sources={row.sources} basis={row.basis} />,
                label(`web.plant-medium-${row.medium.replaceAll(' ', '-')}` as WebCode),
                ends(row.low, row.high),
                ends(row.toleratesLow, row.toleratesHigh),
                row.note ?? '–',
              ],
            }))}
          />
        )}
      </Disclosure>
    </Section>
  );
}

const ends = (low: number | undefined, high: number | undefined): string =>
  low === undefined && high === undefined
    ? '–'
    : `${low === undefined ? '' : low.toFixed(1)} – ${high === undefined ? '' : high.toFixed(1)}`;
