import { QUESTIONS, type Question, symptomCandidates } from '@sorrel/engine/nutrients';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Icon } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import { Causes, Likeliest } from './causes.tsx';
import { answerSaid, answersOf, questionSaid, type Step, testSaid, turnOf } from './conversation.ts';
import { evidenceOf } from './evidence.ts';
import { Keep } from './keep.tsx';
import { KnownHere } from './known-here.tsx';
import styles from './symptoms.module.css';
import { Weeds } from './weeds.tsx';

interface Props {
  readonly planned: PlannedPlace;
  readonly plant: string;
}

/** One question at a time, the causes beside it, and what would tell them apart. */
export function Talk({ planned, plant }: Props) {
  const { speaker } = useGarden();
  const [steps, setSteps] = useState<readonly Step[]>([]);
  const [stopped, setStopped] = useState(false);
  const [weeds, setWeeds] = useState<readonly string[]>([]);
  const evidence = useMemo(() => evidenceOf(planned, plant), [planned, plant]);
  const answers = useMemo(() => answersOf(steps), [steps]);
  const candidates = useMemo(() => symptomCandidates(answers, evidence), [answers, evidence]);
  const turn = useMemo(() => turnOf(steps, evidence), [steps, evidence]);
  const heading = useRef<HTMLHeadingElement>(null);
  const ask = stopped ? undefined : turn.ask;
  /** What could still be looked at, now that the questions have ended. */
  const look = turn.ask ?? turn.again;

  // A new question takes the focus, so that a keyboard or a screen reader goes on from there; the first is left to be read.
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every new question is one to go to
  useEffect(() => {
    if (first.current) first.current = false;
    else heading.current?.focus();
  }, [ask, steps.length]);

  const say = (question: Question, answer: string | undefined) => setSteps((was) => [...was, { question, answer }]);
  const back = () => {
    if (stopped) setStopped(false);
    else setSteps((was) => was.slice(0, -1));
  };
  const change = (question: Question) => {
    setStopped(false);
    setSteps((was) =>
      was.slice(
        0,
        was.findIndex((step) => step.question === question),
      ),
    );
  };
  return (
    <>
      <div className={styles.talk}>
        <section aria-labelledby="ask" className={styles.ask}>
          <Likeliest candidates={candidates} />
          {ask === undefined ? (
            <>
              <h2 id="ask" ref={heading} tabIndex={-1}>
                {label('web.symptoms-done')}
              </h2>
              <p className={styles.next}>
                {turn.test !== undefined
                  ? speaker.say(testSaid(turn.test))
                  : look === undefined
                    ? speaker.say({ code: 'nutrients.symptom-enough' })
                    : speaker.say({
                        code: 'nutrients.symptom-look',
                        parameters: { question: speaker.say(questionSaid(look)) },
                      })}
              </p>
              <div className={page.actions}>
                {turn.test === undefined ? null : (
                  <ButtonLink href={turn.test.kind === 'ph' ? `/home-reading/${planned.id}` : `/test/${planned.id}`}>
                    {label(turn.test.kind === 'ph' ? 'web.reading-title' : 'web.nav-test')}
                  </ButtonLink>
                )}
                {look === undefined ? null : (
                  <Button
                    onClick={() => {
                      setStopped(false);
                      setSteps((was) => was.filter(({ question }) => question !== look));
                    }}
                  >
                    {label('web.symptoms-look-again', { question: speaker.say(questionSaid(look)) })}
                  </Button>
                )}
              </div>
            </>
          ) : (
            <>
              <h2 id="ask" ref={heading} tabIndex={-1}>
                <span className={styles.number}>{label('web.symptoms-question', { number: steps.length + 1 })}</span>
                {speaker.say(questionSaid(ask))}
              </h2>
              <ul className={styles.answers}>
                {QUESTIONS[ask].map((answer) => (
                  <li key={answer}>
                    <button type="button" className={styles.answer} onClick={() => say(ask, answer)}>
                      <span>{speaker.say(answerSaid(ask, answer))}</span>
                    </button>
                  </li>
                ))}
                <li>
                  <button
                    type="button"
                    className={`${styles.answer} ${styles.skip}`}
                    onClick={() => say(ask, undefined)}
                  >
                    {label('web.symptoms-skip')}
                  </button>
                </li>
              </ul>
            </>
          )}
          <div className={page.actions}>
            <Button disabled={steps.length === 0 && !stopped} onClick={back}>
              <Icon name="back" size={20} />
              {label('web.symptoms-back')}
            </Button>
            {ask === undefined || steps.length === 0 ? null : (
              <Button onClick={() => setStopped(true)}>{label('web.symptoms-stop')}</Button>
            )}
            {steps.length === 0 ? null : (
              <Button
                look="quiet"
                onClick={() => {
                  setSteps([]);
                  setStopped(false);
                }}
              >
                {label('web.symptoms-again')}
              </Button>
            )}
          </div>
        </section>
        <section aria-labelledby="causes" className={styles.beside}>
          <h2 id="causes">{label('web.symptoms-causes')}</h2>
          <Causes candidates={candidates} />
          {ask === undefined || turn.test === undefined ? null : (
            <p className={styles.next}>{speaker.say(testSaid(turn.test))}</p>
          )}
          <KnownHere evidence={evidence} />
          <ul className={page.bullets}>
            {(['nutrients.symptom-order', 'nutrients.symptom-confirm', 'nutrients.symptom-basis'] as const).map(
              (code) => (
                <li key={code}>{speaker.say({ code })}</li>
              ),
            )}
          </ul>
        </section>
      </div>
      {steps.length === 0 ? null : (
        <section aria-labelledby="said" className={`${page.page} ${styles.part}`}>
          <h2 id="said">{label('web.symptoms-said')}</h2>
          <ol className={styles.said}>
            {steps.map(({ question, answer }) => (
              <li key={question}>
                <span>
                  {speaker.say(questionSaid(question))}{' '}
                  <strong>
                    {answer === undefined ? label('web.symptoms-skipped') : speaker.say(answerSaid(question, answer))}
                  </strong>
                </span>
                <Button
                  look="quiet"
                  aria-label={label('web.symptoms-change', { question: speaker.say(questionSaid(question)) })}
                  onClick={() => change(question)}
                >
                  {label('web.symptoms-change-short')}
                </Button>
              </li>
            ))}
          </ol>
        </section>
      )}
      <Weeds chosen={weeds} onChange={setWeeds} />
      <Keep planned={planned} plant={plant} answers={answers} weeds={weeds} />
    </>
  );
}
