import { useState } from 'react';
import { Link, useParams } from 'wouter';
import { useGarden } from '../../app/garden-context.tsx';
import { NotFound } from '../../data/garden-store.ts';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Button, ButtonLink } from '../../kit/button.tsx';
import { Failure } from '../../kit/failure.tsx';
import page from '../../kit/page.module.css';
import { TextInput } from '../../kit/text-input.tsx';
import { label } from '../../words/label.ts';
import styles from './symptoms.module.css';
import { Talk } from './talk.tsx';

/** A short conversation about a sick plant, for a phone in a bed. */
export default function Symptoms() {
  const { place: id } = useParams<{ place?: string }>();
  const { planned } = useGarden();
  if (id === undefined) return <ChoosePlace />;
  const found = planned.places.find((place) => place.id === id);
  return found === undefined ? <Failure error={new NotFound(id)} /> : <AtPlace key={found.id} planned={found} />;
}

function ChoosePlace() {
  const { planned } = useGarden();
  return (
    <div className={`${page.page} ${page.narrow}`}>
      <header className={page.head}>
        <h1>{label('web.symptoms')}</h1>
        <p className={page.lead}>{label('web.symptoms-lead')}</p>
      </header>
      {planned.places.length === 0 ? (
        <div className={page.sheet}>
          <p>{label('web.symptoms-no-place')}</p>
          <div>
            <ButtonLink href="/add-place" look="main">
              {label('web.garden-add')}
            </ButtonLink>
          </div>
        </div>
      ) : (
        <section aria-labelledby="where" className={page.page}>
          <h2 id="where">{label('web.symptoms-choose')}</h2>
          <ul className={styles.answers}>
            {planned.places.map(({ id, name }) => (
              <li key={id}>
                <Link href={`/place/${id}/symptoms`} className={styles.answer}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function AtPlace({ planned }: { readonly planned: PlannedPlace }) {
  const plants = planned.place?.plants.map(({ name }) => name) ?? [];
  const [plant, setPlant] = useState(plants.length === 1 ? (plants[0] ?? '') : '');
  const [begun, setBegun] = useState(false);
  return (
    <div className={page.page}>
      <header className={`${page.head} ${page.narrow}`}>
        <p className="no-print">
          <Link href={`/place/${planned.id}`}>{planned.name}</Link>
        </p>
        <h1>{label('web.symptoms-title', { place: planned.name })}</h1>
        {begun ? (
          <p className={page.lead}>
            {label('web.symptoms-about', { plant: plant.trim() === '' ? label('web.symptoms-a-plant') : plant })}
          </p>
        ) : (
          <p className={page.lead}>{label('web.symptoms-lead')}</p>
        )}
      </header>
      {begun ? (
        <Talk planned={planned} plant={plant.trim()} />
      ) : (
        <form
          className={`${page.sheet} ${page.narrow}`}
          onSubmit={(event) => {
            event.preventDefault();
            setBegun(true);
          }}
        >
          {plants.length < 2 ? null : (
            <ul className={styles.offers} aria-label={label('web.symptoms-plant')}>
              {plants.map((name) => (
                <li key={name}>
                  <Button
                    aria-pressed={plant === name}
                    look={plant === name ? 'main' : 'plain'}
                    onClick={() => setPlant(plant === name ? '' : name)}
                  >
                    {name}
                  </Button>
                </li>
              ))}
            </ul>
          )}
          <TextInput
            label={label('web.symptoms-plant')}
            hint={label('web.symptoms-plant-hint')}
            value={plant}
            onChange={setPlant}
          />
          <div>
            <Button type="submit" look="main">
              {label('web.symptoms-start')}
            </Button>
          </div>
        </form>
      )}
    </div>
  );
}
