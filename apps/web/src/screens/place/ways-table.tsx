import { type Alternative, isBeyond, isOpen } from '@sorrel/engine/plan';
import { useGarden } from '../../app/garden-context.tsx';
import type { Speaker } from '../../engine/speaker.ts';
import { useWays } from '../../engine/use-ways.ts';
import { Callout } from '../../kit/callout.tsx';
import { Loading } from '../../kit/loading.tsx';
import { Table } from '../../kit/table.tsx';
import { chance, counted, label, listed, type WebCode } from '../../words/label.ts';
import styles from './ways.module.css';
import type { WaysProps } from './ways.tsx';

type Way = Omit<Alternative, 'forecast'>;

const names: Readonly<Record<Way['kind'], WebCode>> = {
  'do nothing': 'web.ways-nothing',
  'the plan': 'web.ways-plan',
  'all at once': 'web.ways-at-once',
  'two steps': 'web.ways-two-steps',
  'faster material': 'web.ways-faster',
  'other plants': 'web.ways-plants',
  container: 'web.ways-container',
};

/** A row a way on a wide screen, a card a way on a narrow one. */
export default function WaysTable({ place, plan, settings }: WaysProps) {
  const { planned, speaker } = useGarden();
  const answer = useWays(place, settings, plan, planned.read.garden.products);
  if (answer === undefined) return <Loading code="web.working" />;
  if ('failed' in answer) return <Callout kind="wrong">{answer.failed}</Callout>;
  const beyond = isBeyond(plan);
  return (
    <>
      <p>{label('web.ways-lead')}</p>
      <Table
        cards
        caption={label('web.sec-ways')}
        columns={['web.ways-way', 'web.ways-cost', 'web.ways-after', 'web.ways-year', 'web.ways-far', 'web.ways-jobs']}
        rows={answer.ways.map((way) => ({
          key: way.kind,
          cells: [<WayName key="way" way={way} />, ...figuresOf(way, beyond, speaker)],
        }))}
      />
    </>
  );
}

/** What is done on this way, or why it is closed. */
function WayName({ way }: { readonly way: Way }) {
  const { speaker } = useGarden();
  const steps = way.applications.map(({ mass, product }) =>
    label('web.step-amount', { amount: speaker.weight(mass), product: product.name }),
  );
  const [first, ...later] = steps;
  const done =
    first === undefined
      ? []
      : [later.reduce((before, next) => label('web.ways-then', { first: before, second: next }), first)];
  const plants = way.plants === undefined ? [] : [label('web.ways-suits', { plants: listed(way.plants) })];
  return (
    <>
      {label(names[way.kind])}
      {[...(isOpen(way) ? [] : [label('web.ways-closed')]), ...done, ...way.notes.map(speaker.say), ...plants].map(
        (text) => (
          <span key={text} className={styles.soft}>
            {text}
          </span>
        ),
      )}
    </>
  );
}

function figuresOf(way: Way, beyond: boolean, speaker: Speaker): readonly string[] {
  if (!isOpen(way)) return ['', '', '', '', ''];
  const unknown = label('web.ways-unknown');
  const elsewhere = way.kind === 'other plants';
  // Only a way that was foreseen has a chance; nothing is foreseen for a pot that is not there yet.
  const foreseen = way.insideAfterYear !== undefined;
  const after =
    way.months === undefined
      ? foreseen
        ? label('web.ways-never')
        : unknown
      : way.months === 0
        ? label('web.ways-now')
        : counted('web.ways-months', way.months);
  const share = (value: number | undefined) => (value === undefined ? unknown : chance(value));
  return [
    way.cost === undefined ? unknown : speaker.money(way.cost),
    after,
    elsewhere ? chance(1) : share(way.insideAfterYear),
    beyond && foreseen ? label('web.ways-already') : share(way.overshoot),
    String(way.jobs),
  ];
}
