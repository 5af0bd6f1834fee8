import { Link } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import { verdictOf } from './verdict.ts';

/** What the pH line shows, as a table: for screen readers and for everybody who would rather read. */
export function GardenTable({ places, day }: { readonly places: readonly PlannedPlace[]; readonly day: string }) {
  const { speaker } = useGarden();
  return (
    <Table
      cards
      caption={label('web.garden-line')}
      columns={['web.table-place', 'web.table-now', 'web.table-wanted', 'web.table-aim', 'web.table-do']}
      rows={places.map((planned) => {
        const { plan } = planned;
        const verdict = verdictOf(planned, day, speaker);
        const moves = plan !== undefined && plan.applications.length > 0;
        return {
          key: planned.id,
          cells: [
            <Link key="place" href={`/place/${planned.id}`}>
              {planned.name}
            </Link>,
            plan?.present === undefined
              ? label('web.table-unknown')
              : label('web.table-give-or-take', {
                  ph: speaker.ph(plan.present.mean),
                  spread: speaker.ph(Math.max(0.1, plan.present.sd)),
                }),
            plan === undefined
              ? ''
              : plan.target.conflicts.length > 0
                ? label('web.row-no-wanted')
                : label('web.table-wanted-range', {
                    low: speaker.ph(plan.target.low),
                    high: speaker.ph(plan.target.high),
                  }),
            moves ? speaker.ph(plan.target.aim) : label('web.table-no-aim'),
            [verdict.text, verdict.when].filter(Boolean).join(', '),
          ],
        };
      })}
    />
  );
}
