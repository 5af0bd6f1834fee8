import { readWishes } from '@sorrel/engine/document';
import { stays } from '@sorrel/engine/placing';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useGarden } from '../../app/garden-context.tsx';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';
import { type Draft, documentOf, emptyPlace, faultsOf, type Ground, keepDraft, keptDraft, plantName } from './draft.ts';
import styles from './placing.module.css';
import { Result } from './result.tsx';
import { ThereNow } from './there-now.tsx';
import { usePlacing } from './use-placing.ts';
import { Wishes } from './wishes.tsx';

/** Wishes, what is settled, and the arrangement that moves the least soil. */
export default function Placing() {
  const { planned } = useGarden();
  if (planned.places.every(({ place }) => place === undefined))
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.placing-title')}</h1>
        <p>{label('web.placing-no-places')}</p>
        <div>
          <ButtonLink href="/add-place" look="main">
            {label('web.garden-add')}
          </ButtonLink>
        </div>
      </div>
    );
  return <Screen />;
}

function Screen() {
  const { planned, record } = useGarden();
  const [draft, setDraft] = useState<Draft>(() => keptDraft(record.id));
  const [tried, setTried] = useState(false);
  const [asked, setAsked] = useState<Draft>();
  const { state, start, cancel } = usePlacing();
  const form = useRef<HTMLFormElement>(null);
  const answer = useRef<HTMLDivElement>(null);
  const { garden } = planned.read;
  const grounds = useMemo(
    () =>
      planned.places.flatMap(({ id, name, place, entry }): Ground[] =>
        place === undefined
          ? []
          : [
              {
                id,
                name,
                area: place.area,
                plants: entry.plants ?? [],
                stays: (plant) => stays({ key: plantName(plant), name: plantName(plant) }),
              },
            ],
      ),
    [planned.places],
  );
  const wished = useMemo(() => readWishes(documentOf(draft, grounds), garden.places), [draft, grounds, garden.places]);
  const change = (next: Draft) => {
    setDraft(next);
    keepDraft(record.id, next);
  };
  const wrong = draft.wishes.length === 0 || draft.wishes.some((wish) => faultsOf(wish).size > 0);
  const ask = () => {
    setTried(true);
    if (wrong) {
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid], [role=combobox]')?.focus());
      return;
    }
    setAsked(draft);
    const { places, products, settings } = garden;
    const { wishes, rules, seasons } = wished;
    start({ places, products, settings, wishes, rules, seasons });
  };
  useEffect(() => {
    if (state.state === 'ready') answer.current?.focus();
  }, [state.state]);

  return (
    <div className={page.page}>
      <header className={page.head}>
        <h1>{label('web.placing-title')}</h1>
        <p className={page.lead}>{label('web.placing-lead')}</p>
      </header>
      <form
        ref={form}
        className={`${page.page} no-print`}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (state.state !== 'working') ask();
        }}
      >
        <Section id="wishes" title="web.placing-wishes">
          <Wishes draft={draft} grounds={grounds} tried={tried} onChange={change} />
        </Section>
        <Section id="there-now" title="web.placing-places">
          <p className={page.soft}>{label('web.placing-places-lead')}</p>
          <ThereNow
            draft={draft}
            grounds={grounds}
            onChange={(id, place) =>
              change({ ...draft, places: { ...draft.places, [id]: { ...emptyPlace, ...draft.places[id], ...place } } })
            }
          />
        </Section>
        {wished.problems.length === 0 ? null : (
          <Callout kind="wrong" title={label('web.placing-problems')}>
            <ul>
              {wished.problems.map((problem) => (
                <li key={`${problem.field}-${problem.code}`}>
                  {problem.message} {problem.fix}
                </li>
              ))}
            </ul>
          </Callout>
        )}
        <div className={page.actions}>
          <Button type="submit" look="main" disabled={state.state === 'working'}>
            {label(state.state === 'ready' ? 'web.placing-again' : 'web.placing-arrange')}
          </Button>
          {state.state === 'working' ? <Button onClick={cancel}>{label('web.cancel')}</Button> : null}
          <span className={page.small}>{label('web.placing-kept')}</span>
        </div>
        {tried && wrong ? <p role="alert">{label('web.placing-check')}</p> : null}
        <div role="status" className={page.page}>
          {state.state === 'working' ? (
            <>
              <progress aria-hidden="true" />
              <p>
                {state.step === 0
                  ? label('web.placing-starting')
                  : label('web.placing-working', { step: state.step, seconds: state.seconds })}
              </p>
            </>
          ) : null}
          {state.state === 'cancelled' ? <p>{label('web.placing-cancelled')}</p> : null}
          {state.state === 'ready' ? <p className="hidden-text">{label('web.placing-ready')}</p> : null}
        </div>
        {state.state === 'failed' ? (
          <Callout kind="wrong">
            <p>{label('web.placing-failed', { reason: state.reason })}</p>
          </Callout>
        ) : null}
        {state.state === 'ready' && asked !== draft ? (
          <Callout>
            <p>{label('web.placing-changed')}</p>
          </Callout>
        ) : null}
      </form>
      {state.state === 'ready' && asked !== undefined ? (
        <div ref={answer} tabIndex={-1} className={`${page.page} ${styles.answer}`}>
          <Result arrangement={state.arrangement} seasons={state.input.seasons} draft={asked} />
        </div>
      ) : null}
    </div>
  );
}
