import { useStore } from '../../data/store-context.tsx';
import { ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import { DayScreen } from './day-screen.tsx';
import { Papers } from './papers.tsx';
import { Queue } from './queue.tsx';
import { Summary } from './summary.tsx';
import type { DaySession } from './use-day.ts';
import { useProgress } from './use-progress.ts';

/** The plans of all samples, the papers for their people, and the day as a whole. */
export default function Results() {
  return <DayScreen>{(session) => <ResultsPage session={session} />}</DayScreen>;
}

function ResultsPage({ session }: { readonly session: DaySession }) {
  const { served } = useStore();
  return (
    <div className={page.page}>
      <header className={page.head}>
        <h1>{label('web.day-out-title')}</h1>
        <p className={page.lead}>{label('web.day-out-lead')}</p>
      </header>
      {served === undefined ? (
        <Callout kind="care">
          <p>{label('web.day-out-server')}</p>
        </Callout>
      ) : session.day.samples.length === 0 ? (
        <div className={page.sheet}>
          <p>{label('web.day-read-empty')}</p>
          <div>
            <ButtonLink href="/check-in" look="main">
              {label('web.day-first')}
            </ButtonLink>
          </div>
        </div>
      ) : (
        <Served session={session} served={served.day} />
      )}
    </div>
  );
}

type ServedDay = NonNullable<ReturnType<typeof useStore>['served']>['day'];

function Served({ session, served }: { readonly session: DaySession; readonly served: ServedDay }) {
  const progress = useProgress(served);
  const done = progress.now?.done ?? 0;
  return (
    <>
      <Queue day={session.day} progress={progress} />
      {done === 0 ? null : (
        <>
          <Papers served={served} jobs={progress.now?.jobs ?? []} />
          <Summary served={served} done={done} state={progress.now?.state ?? 'none'} />
        </>
      )}
    </>
  );
}
