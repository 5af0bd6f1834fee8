import { useLocation } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { add } from '../../data/write.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { label } from '../../words/label.ts';
import { emptyDraft } from './draft.ts';
import styles from './edit-place.module.css';
import { PlaceForm } from './place-form.tsx';

/** A new place. */
export default function AddPlace() {
  const { record, write } = useGarden();
  const [, go] = useLocation();
  return (
    <div className={styles.page}>
      <header>
        <h1>{label('web.add-place')}</h1>
        <p>{label('web.edit-lead')}</p>
      </header>
      <PlaceForm
        start={emptyDraft}
        submit={label('web.edit-add')}
        onSave={async (entry) => {
          const added = add(record.id, 'place', entry);
          if (await write([added], label('web.edit-added', { place: entry.name }))) go(`/place/${added.id}`);
        }}
      >
        <ButtonLink href="/" look="quiet">
          {label('web.cancel')}
        </ButtonLink>
      </PlaceForm>
    </div>
  );
}
