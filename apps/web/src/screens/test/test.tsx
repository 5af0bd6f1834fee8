import { useState } from 'react';
import { useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { useThings } from '../../data/use-things.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { Choice } from '../../kit/choice.tsx';
import { Failure } from '../../kit/failure.tsx';
import { Loading } from '../../kit/loading.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import type { TestEntry } from './draft.ts';
import { ImportTable } from './import-table.tsx';
import { TestForm } from './test-form.tsx';

type Way = 'typed' | 'table';

/** Adding a soil test as the paper reads, or correcting one. */
export default function TestScreen() {
  const { planned } = useGarden();
  const { place, test } = useParams<{ place?: string; test?: string }>();
  const [way, setWay] = useState<Way>('typed');
  if (test !== undefined && place !== undefined) return <Correct key={test} place={place} test={test} />;
  if (planned.places.length === 0 && way === 'typed')
    return (
      <div className={`${page.page} ${page.narrow}`}>
        <h1>{label('web.test-no-places')}</h1>
        <p>{label('web.test-no-places-text')}</p>
        <div className={page.actions}>
          <ButtonLink href="/add-place" look="main">
            {label('web.garden-add')}
          </ButtonLink>
          <WayChoice way={way} onChange={setWay} />
        </div>
      </div>
    );
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <h1>{label('web.test-title')}</h1>
        <p className={page.lead}>{label('web.test-lead')}</p>
      </header>
      <WayChoice way={way} onChange={setWay} />
      {way === 'typed' ? <TestForm key={place} {...(place === undefined ? {} : { at: place })} /> : <ImportTable />}
    </div>
  );
}

function WayChoice({ way, onChange }: { readonly way: Way; readonly onChange: (way: Way) => void }) {
  return (
    <Choice
      legend={label('web.test-how')}
      options={[
        { value: 'typed', label: label('web.test-typed') },
        { value: 'table', label: label('web.test-table') },
      ]}
      value={way}
      onChange={onChange}
    />
  );
}

function Correct({ place, test }: { readonly place: string; readonly test: string }) {
  const fetched = useThings();
  if (fetched.state === 'loading') return <Loading />;
  if (fetched.state === 'failed') return <Failure error={fetched.error} retry={() => void fetched.reload()} />;
  const thing = fetched.value.things.get(test);
  const known = thing !== undefined && !thing.removed && (thing.kind === 'test' || thing.kind === 'reading');
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <h1>{label('web.test-correct-title')}</h1>
        <p className={page.lead}>{label(known ? 'web.test-correct-lead' : 'web.test-gone')}</p>
      </header>
      {known ? (
        <TestForm
          at={place}
          correcting={{ id: test, kind: thing.kind, content: thing.content as TestEntry, things: fetched.value }}
        />
      ) : (
        <div>
          <ButtonLink href={`/place/${place}`}>{label('web.place')}</ButtonLink>
        </div>
      )}
    </div>
  );
}
