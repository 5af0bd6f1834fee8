import { useState } from 'react';
import { useLocation, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { NotFound } from '../../data/garden-store.ts';
import { correct, remove } from '../../data/write.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Callout } from '../../kit/callout.tsx';
import { Failure } from '../../kit/failure.tsx';
import { label } from '../../words/label.ts';
import { draftOf } from './draft.ts';
import styles from './edit-place.module.css';
import { PlaceForm } from './place-form.tsx';

/** Changing a place, or taking it away. */
export default function EditPlace() {
  const { place: id } = useParams<{ place: string }>();
  const { planned } = useGarden();
  const found = planned.places.find((place) => place.id === id);
  return found === undefined ? <Failure error={new NotFound(id)} /> : <Form planned={found} />;
}

function Form({ planned: { id, name, entry: whole } }: { readonly planned: PlannedPlace }) {
  const { record, write } = useGarden();
  const [, go] = useLocation();
  const [asked, setAsked] = useState(false);
  const { tests: _tests, applications: _applications, ...entry } = whole;
  return (
    <div className={styles.page}>
      <header>
        <h1>{label('web.edit-place', { place: name })}</h1>
      </header>
      <PlaceForm
        start={draftOf(entry)}
        before={entry}
        submit={label('web.edit-save')}
        onSave={async (next) => {
          const done = label('web.edit-saved', { place: next.name });
          if (await write([correct(record.id, id, 'place', next)], done)) go(`/place/${id}`);
        }}
      >
        <ButtonLink href={`/place/${id}`} look="quiet">
          {label('web.cancel')}
        </ButtonLink>
      </PlaceForm>
      {asked ? (
        <Callout kind="care" title={label('web.edit-remove')}>
          <p>{label('web.edit-remove-sure', { place: name })}</p>
          <div className={styles.buttons}>
            <Button
              look="danger"
              onClick={async () => {
                if (await write([remove(record.id, id)], label('web.edit-removed', { place: name }))) go('/');
              }}
            >
              {label('web.edit-remove-yes')}
            </Button>
            <Button onClick={() => setAsked(false)}>{label('web.cancel')}</Button>
          </div>
        </Callout>
      ) : (
        <Button look="danger" className={styles.remove} onClick={() => setAsked(true)}>
          {label('web.edit-remove')}
        </Button>
      )}
    </div>
  );
}
