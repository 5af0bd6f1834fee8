import type { Message } from '@sorrel/engine/derivation';
import type { Arrangement, Figures, Growing, PlacedPlace } from '@sorrel/engine/placing';
import { useGarden } from '../../app/garden-context.tsx';
import { Callout } from '../../kit/callout.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { label } from '../../words/label.ts';
import type { Draft } from './draft.ts';
import { OnPaper } from './on-paper.tsx';
import styles from './placing.module.css';
import { TakeOver } from './take-over.tsx';

interface Props {
  readonly arrangement: Arrangement;
  readonly seasons: number;
  /** What was asked for. */
  readonly draft: Draft;
}

/** Which plant goes where in each season, why, what is kept apart, what finds no place, and what it saves. */
export function Result({ arrangement, seasons, draft }: Props) {
  const { speaker } = useGarden();
  const { places, unmet, clashes, apart, messages, proven, gap } = arrangement;
  return (
    <>
      <Section id="where" title="web.placing-result">
        <Sentences messages={messages} />
        {proven ? null : <p>{label('web.placing-unproven', { amount: speaker.rough(gap, 'mass') })}</p>}
        <Table
          cards
          caption={label('web.placing-table')}
          head={[
            label('web.placing-col-place'),
            ...(seasons === 1
              ? [label('web.placing-col-grows')]
              : Array.from({ length: seasons }, (_, at) => label('web.placing-col-season', { season: at + 1 }))),
            label('web.placing-col-why'),
          ]}
          rows={places.map((place) => ({
            key: place.place,
            cells: [place.name, ...place.seasons.map((season) => growingList(season)), <Why key="why" place={place} />],
          }))}
        />
        {clashes.map(({ place, messages: said }) => (
          <Callout key={place} kind="care" title={label('web.placing-clash')}>
            <Sentences messages={said} />
          </Callout>
        ))}
        {unmet.length === 0 ? null : (
          <Callout kind="care" title={label('web.placing-unmet')}>
            {unmet.map(({ plant, area, seasons: short, reasons }) => (
              <div key={plant}>
                <p>
                  <strong>
                    {label('web.placing-unmet-one', {
                      plant,
                      area: speaker.rough(area, 'area'),
                      seasons: short.join(', '),
                    })}
                  </strong>
                </p>
                <Sentences messages={reasons} />
              </div>
            ))}
          </Callout>
        )}
      </Section>
      <Section id="apart" title="web.placing-apart-title">
        {apart.length === 0 ? <p>{label('web.placing-apart-none')}</p> : <Sentences messages={apart} />}
      </Section>
      <Section id="saves" title="web.placing-saves">
        <Saves arrangement={arrangement} />
      </Section>
      <TakeOver arrangement={arrangement} seasons={seasons} draft={draft} />
      <OnPaper arrangement={arrangement} />
    </>
  );

  function growingList(growing: readonly Growing[]) {
    if (growing.length === 0) return label('web.placing-rests');
    return (
      <ul className={styles.growing}>
        {growing.map(({ plant, key, area, stays, fixed }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a plant may stand twice, once as it was and once new
          <li key={`${key}-${index}`}>
            {label('web.placing-growing', { plant, area: speaker.rough(area, 'area') })}{' '}
            {stays || fixed ? (
              <span className={styles.mark}>{label(stays ? 'web.placing-mark-stays' : 'web.placing-mark-fixed')}</span>
            ) : null}
          </li>
        ))}
      </ul>
    );
  }
}

function Sentences({ messages }: { readonly messages: readonly Message[] }) {
  const { speaker } = useGarden();
  const said = [...new Set(messages.map((message) => speaker.say(message)))];
  if (said.length === 0) return null;
  return said.length === 1 ? (
    <p>{said[0]}</p>
  ) : (
    <ul className={page.bullets}>
      {said.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function Why({ place: { reasons, move } }: { readonly place: PlacedPlace }) {
  const { speaker } = useGarden();
  return (
    <div className={styles.why}>
      {reasons.length === 0 ? <p>{label('web.placing-why-clash')}</p> : <Sentences messages={reasons} />}
      {move?.product === undefined ? null : (
        <p className={page.small}>
          {label('web.placing-spread', {
            mass: speaker.rough(move.material, 'mass'),
            product: move.product.name,
            months: move.months,
          })}
        </p>
      )}
    </div>
  );
}

/** Less than a scale shows, kg. */
const NOTHING = 1e-3;

function Saves({ arrangement: { figures, greedy, runnerUp } }: { readonly arrangement: Arrangement }) {
  const { speaker } = useGarden();
  const more = greedy.currency - figures.currency;
  const left = greedy.unmet - figures.unmet;
  const row = (key: string, name: string, { currency, material, money, months, places, unmet }: Figures) => ({
    key,
    cells: [
      name,
      speaker.rough(currency, 'mass'),
      speaker.rough(material, 'mass'),
      money === undefined ? label('web.placing-money-unknown') : speaker.money(money),
      String(months),
      String(places),
      speaker.rough(unmet, 'area'),
    ],
  });
  return (
    <>
      {runnerUp === undefined ? null : <Sentences messages={runnerUp.messages} />}
      <p>
        {left > NOTHING
          ? label('web.placing-saves-greedy-unmet', { area: speaker.rough(left, 'area') })
          : more > NOTHING
            ? label('web.placing-saves-greedy', { amount: speaker.rough(more, 'mass') })
            : label('web.placing-saves-nothing')}
      </p>
      <Table
        cards
        figures
        caption={label('web.placing-figures')}
        columns={[
          'web.placing-fig-way',
          'web.placing-fig-moved',
          'web.placing-fig-material',
          'web.placing-fig-money',
          'web.placing-fig-months',
          'web.placing-fig-places',
          'web.placing-fig-unmet',
        ]}
        rows={[
          row('this', label('web.placing-way-this'), figures),
          ...(runnerUp === undefined ? [] : [row('next', label('web.placing-way-next'), runnerUp.figures)]),
          row('greedy', label('web.placing-way-greedy'), greedy),
        ]}
      />
      <p className={page.small}>{label('web.placing-figures-note')}</p>
    </>
  );
}
