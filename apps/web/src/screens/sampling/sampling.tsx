import { sampleSpoilers } from '@sorrel/almanac/sample-spoilers';
import type { MessageCode } from '@sorrel/almanac/words';
import { MOST_CORES, publishedSampling } from '@sorrel/engine/sampling';
import { useMemo, useState } from 'react';
import { Link, useSearch } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { ButtonLink } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Memory } from '../../kit/memory.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { Table } from '../../kit/table.tsx';
import { day, days, label } from '../../words/label.ts';
import { BagLabels } from './bag-labels.tsx';
import { type SampleToTake, samplesToTake } from './round.ts';
import styles from './sampling.module.css';

const widths = ['0.1', '0.15', '0.2', '0.3'] as const;

/** Which places can share a sample, how many cores, how deep, when; what spoils it; labels. */
export default function Sampling() {
  const { planned } = useGarden();
  const [width, setWidth] = useState<(typeof widths)[number]>('0.2');
  const today = planned.read.garden.settings.today;
  const wanted = new URLSearchParams(useSearch()).get('place');
  const alone = planned.places.find(({ id }) => id === wanted);
  const samples = useMemo(
    () => samplesToTake(alone === undefined ? planned.places : [alone], Number(width), today),
    [planned, alone, width, today],
  );
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={`${page.head} no-print`}>
        <h1>{label('web.sampling-title')}</h1>
        <p className={page.lead}>{label('web.sampling-lead')}</p>
        {alone === undefined ? null : (
          <p>
            {label('web.sampling-alone', { place: alone.name })}{' '}
            <Link href="/sampling">{label('web.sampling-round')}</Link>
          </p>
        )}
        <div className={styles.home}>
          <ButtonLink href="/home-reading">{label('web.sampling-home')}</ButtonLink>
        </div>
      </header>
      {samples.length === 0 ? (
        <div className={page.sheet}>
          <h2>{label('web.sampling-none')}</h2>
          <p>{label('web.sampling-none-text')}</p>
          <div>
            <ButtonLink href="/add-place" look="main">
              {label('web.garden-add')}
            </ButtonLink>
          </div>
        </div>
      ) : (
        <>
          <div className={`${page.sheet} no-print`}>
            <Choice
              legend={label('web.sampling-error')}
              legendShown
              wrap
              options={widths.map((value) => ({ value, label: label('web.sampling-within', { width: value }) }))}
              value={width}
              onChange={setWidth}
            />
            <p className={page.small}>{label('web.sampling-error-text')}</p>
          </div>
          <div className={styles.printed}>
            <Section id="samples" title="web.sampling-groups">
              <ol className={page.plain}>
                {samples.map((sample) => (
                  <li key={sample.number} className={page.sheet}>
                    <Sample sample={sample} />
                  </li>
                ))}
              </ol>
            </Section>
          </div>
          <Section id="take" title="web.sampling-take">
            <ol className={page.bullets}>
              {([1, 2, 3, 4, 5] as const).map((step) => (
                <li key={step}>{label(`web.sampling-take-${step}`)}</li>
              ))}
            </ol>
          </Section>
          <Section id="spoils" title="web.sampling-spoils">
            <Spoilers />
          </Section>
          <BagLabels samples={samples} />
        </>
      )}
    </div>
  );
}

function Sample({ sample }: { readonly sample: SampleToTake }) {
  const { speaker } = useGarden();
  const { number, places, why, cores, depth, when, spread } = sample;
  const first = places[0]?.place;
  return (
    <>
      <div className={styles.sampleHead}>
        <h3>
          <span className={styles.number}>{label('web.sampling-sample', { number })}</span>{' '}
          {places.map(({ id, name }, index) => (
            <span key={id}>
              {index > 0 ? ', ' : null}
              <Link href={`/place/${id}`}>{name}</Link>
            </span>
          ))}
        </h3>
        <p className={page.soft}>{speaker.say(why)}</p>
      </div>
      <dl className={styles.facts}>
        <div>
          <dt>{label('web.sampling-label-cores')}</dt>
          <dd>
            {cores.cores}
            {places.length > 1 ? (
              <span className={styles.more}>{label('web.sampling-spread-over', { count: places.length })}</span>
            ) : null}
          </dd>
        </div>
        <div>
          <dt>{label('web.sampling-label-depth')}</dt>
          <dd>{speaker.rough(depth, 'length')}</dd>
        </div>
        <div>
          <dt>{label('web.sampling-when')}</dt>
          <dd>
            {when.to === undefined
              ? when.why.length === 1
                ? label('web.sampling-now')
                : label('web.sampling-from', { date: day(when.from) })
              : days(when.from, when.to)}
          </dd>
        </div>
      </dl>
      <Disclosure title={label('web.sampling-why')}>
        {() => (
          <>
            <p>
              {cores.outOfReach ? `${label('web.sampling-out-of-reach', { cores: MOST_CORES })} ` : null}
              {label('web.sampling-sure', {
                sample: cores.sampleError.toFixed(2),
                whole: cores.wholeError.toFixed(2),
              })}
            </p>
            <p>
              {label('web.sampling-spread', { sd: spread.sd.toFixed(2) })}{' '}
              {speaker.say(
                spread.pairs > 0
                  ? { code: 'sampling.spread-seen', parameters: { count: spread.pairs } }
                  : { code: 'sampling.spread-usual' },
              )}{' '}
              <Memory />
            </p>
            {(first?.tests.length ?? 0) > 0 ? <p>{label('web.sampling-deep-as-last')}</p> : null}
            <ul className={page.bullets}>
              {when.why.map((message) => (
                <li key={message.code}>{speaker.say(message)}</li>
              ))}
            </ul>
            {first === undefined ? null : <Published sample={first} />}
          </>
        )}
      </Disclosure>
    </>
  );
}

function Published({ sample }: { readonly sample: Parameters<typeof publishedSampling>[0] }) {
  const { speaker } = useGarden();
  return (
    <Table
      caption={label('web.sampling-published')}
      columns={[
        'web.sampling-published-source',
        'web.sampling-published-cores',
        'web.sampling-published-depth',
        'web.sampling-published-note',
      ]}
      rows={publishedSampling(sample).map((row, index) => ({
        key: String(index),
        cells: [
          <span key="source">
            {row.sources.join(', ')} {row.basis === 'memory' ? <Memory /> : null}
          </span>,
          row.cores_high === undefined || row.cores_high === row.cores_low
            ? String(row.cores_low)
            : `${row.cores_low}–${row.cores_high}`,
          row.to_depth === undefined ? '' : speaker.rough(row.to_depth, 'length'),
          row.note ?? '',
        ],
      }))}
    />
  );
}

function Spoilers() {
  const { speaker } = useGarden();
  return (
    <ul className={page.bullets}>
      {sampleSpoilers.map((row) => (
        <li key={row.key}>
          {speaker.say({ code: `sampling.spoil-${row.key}` as MessageCode })}{' '}
          {row.basis === 'memory' ? <Memory /> : null}
        </li>
      ))}
    </ul>
  );
}
