import { useMemo } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { PhAxis } from '../../ph-line/ph-axis.tsx';
import { PhRow } from '../../ph-line/ph-row.tsx';
import { phScale } from '../../ph-line/ph-scale.ts';
import { day, days, label } from '../../words/label.ts';
import { marksOf } from '../garden/verdict.ts';
import styles from './print.module.css';

/** A page for each place, for whoever gardens there. */
export function Handouts({ places }: { readonly places: readonly PlannedPlace[] }) {
  return places.map((planned) => <Handout key={planned.id} planned={planned} />);
}

function Handout({ planned }: { readonly planned: PlannedPlace }) {
  const { planned: all, record, speaker } = useGarden();
  const { plan, name } = planned;
  const scale = useMemo(() => (plan === undefined ? undefined : phScale([marksOf(plan)])), [plan]);
  const today = all.read.garden.settings.today;
  return (
    <article className={styles.paper}>
      <h2>{name}</h2>
      <p className={styles.soft}>
        {record.document.garden}. {label('web.paper-made', { date: day(today) })}.
      </p>
      {plan === undefined || scale === undefined ? (
        <p>{label('web.verdict-mend')}</p>
      ) : (
        <>
          <div className={styles.line} aria-hidden="true">
            <PhAxis scale={scale} />
            <PhRow marks={marksOf(plan)} scale={scale} />
          </div>
          <p>
            {plan.present === undefined
              ? label('web.paper-unknown')
              : label('web.paper-now', { ph: speaker.ph(plan.present.mean) })}
            . {label('web.paper-wanted', { low: speaker.ph(plan.target.low), high: speaker.ph(plan.target.high) })}.
          </p>
          <ul className={styles.bullets}>
            {plan.reasons.map((message, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: sentences keep their order
              <li key={index}>{speaker.say(message)}</li>
            ))}
          </ul>
          {plan.applications.map((application) => (
            <section key={application.number} className={styles.step}>
              <h3>
                {application.onlyIfRetest
                  ? label('web.paper-step-later', { number: application.number })
                  : label('web.paper-step', {
                      number: application.number,
                      amount: speaker.weight(application.mass),
                      product: application.product.name,
                    })}
              </h3>
              <p>{days(application.earliest, application.latest)}</p>
              {application.onlyIfRetest ? null : (
                <ol className={styles.bullets}>
                  {application.how.map((message, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: sentences keep their order
                    <li key={index}>{speaker.say(message)}</li>
                  ))}
                </ol>
              )}
            </section>
          ))}
          {plan.retest === undefined ? null : (
            <p>
              <strong>{label('web.paper-retest', { when: days(plan.retest.earliest, plan.retest.latest) })}</strong>{' '}
              {speaker.say(plan.retest.why)}
            </p>
          )}
          {plan.cautions.length === 0 ? null : (
            <>
              <h3>{label('web.paper-care')}</h3>
              <ul className={styles.bullets}>
                {plan.cautions.map((message) => (
                  <li key={message.code}>{speaker.say(message)}</li>
                ))}
              </ul>
            </>
          )}
        </>
      )}
      <p className={styles.soft}>{label('web.paper-rules')}</p>
    </article>
  );
}
