import { materialOf } from '@sorrel/almanac/materials';
import type { Message } from '@sorrel/engine/derivation';
import type { Application, Place, Recommendation } from '@sorrel/engine/plan';
import { scoops, volumeOf } from '@sorrel/engine/units';
import type { ReactNode } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { Callout } from '../../kit/callout.tsx';
import { days, label } from '../../words/label.ts';
import styles from './plan-steps.module.css';

interface Props {
  readonly place: Place;
  readonly plan: Recommendation;
  /** The first step is not yet held to the forecast. */
  readonly checking: boolean;
}

/** What to do, step by step, with the cautions inside the first step, where the bag is opened. */
export function PlanSteps({ place, plan, checking }: Props) {
  const { speaker } = useGarden();
  const { applications, retest, cautions, ask, instead } = plan;
  const heard = new Set<string>();
  const fresh = (messages: readonly Message[]) =>
    messages.map(speaker.say).filter((text) => !heard.has(text) && heard.add(text));
  const care = [...new Set(cautions.map(speaker.say))];
  return (
    <div className={styles.plan}>
      {applications.length === 0 ? <Care care={care} /> : null}
      {applications.length === 0 ? <p>{label('web.plan-none')}</p> : null}
      {applications.length === 0 && retest === undefined ? null : (
        <ol className={styles.steps}>
          {applications.map((application, index) => (
            <Step
              key={application.number + application.product.name}
              {...{ application, place }}
              checking={checking && application.number === 1}
              how={fresh(application.how)}
            >
              {index === 0 ? <Care care={care} /> : null}
            </Step>
          ))}
          {retest === undefined ? null : (
            <li className={styles.step}>
              <h3>{label('web.step-retest')}</h3>
              <p className={styles.when}>{days(retest.earliest, retest.latest)}</p>
              <p>{speaker.say(retest.why)}</p>
            </li>
          )}
        </ol>
      )}
      {ask.length === 0 ? null : (
        <Callout title={label('web.plan-ask')}>
          <ul>
            {[...new Set(ask.map(speaker.say))].map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </Callout>
      )}
      {instead.length === 0 ? null : (
        <Callout title={label('web.plan-instead')}>
          <p>{instead.join(', ')}</p>
        </Callout>
      )}
    </div>
  );
}

function Care({ care }: { readonly care: readonly string[] }) {
  if (care.length === 0) return null;
  return (
    <Callout kind="care" title={label('web.plan-care')}>
      <ul>
        {care.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </Callout>
  );
}

function Step({
  application,
  place,
  checking,
  how,
  children,
}: {
  readonly application: Application;
  readonly place: Place;
  readonly checking: boolean;
  readonly how: readonly string[];
  readonly children: ReactNode;
}) {
  const { speaker } = useGarden();
  const { product, mass, perArea, perVolume, earliest, latest, onlyIfRetest, number } = application;
  const rate =
    place.kind === 'container'
      ? speaker.amount(perVolume ?? 0, 'massPerVolume')
      : speaker.amount(perArea ?? 0, 'massPerArea');
  const known = materialOf(product.material);
  const assumed = product.currencyBasis === 'assumed';
  // The almanac's own density is as good as its row; one from the person's own scale is not from memory.
  const usualDensity = product.density !== undefined && known?.densityTypical === product.density / 1000;
  const fromMemory = known?.basis === 'memory' && (assumed || usualDensity);
  return (
    <li className={`${styles.step} ${onlyIfRetest ? styles.later : ''}`}>
      <h3>
        <span className={styles.number}>{label('web.step', { number })}</span>
        {label('web.step-amount', { amount: speaker.weight(mass), product: product.name })}
      </h3>
      {onlyIfRetest ? <p className={styles.condition}>{label('web.step-later')}</p> : null}
      <p className={styles.when}>{days(earliest, latest)}</p>
      <p className={styles.soft}>
        {[
          rate,
          ...(product.density === undefined
            ? []
            : [label('web.step-scoops', { scoops: scoops(volumeOf(mass, product.density), speaker.units) })]),
          ...(assumed ? [label('web.plan-assumed')] : []),
          ...(fromMemory ? [label('web.from-memory')] : []),
          ...(checking ? [label('web.dose-checking')] : []),
        ].join(' · ')}
      </p>
      {how.length === 0 ? null : (
        <ul>
          {how.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      {children}
    </li>
  );
}
