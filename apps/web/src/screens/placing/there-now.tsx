import { useGarden } from '../../app/garden-context.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Select } from '../../kit/text-input.tsx';
import { label, listed } from '../../words/label.ts';
import {
  type Draft,
  emptyPlace,
  type Ground,
  type Light,
  type Now,
  nowOf,
  type PlaceDraft,
  plantName,
} from './draft.ts';
import styles from './placing.module.css';

interface Props {
  readonly draft: Draft;
  readonly grounds: readonly Ground[];
  readonly onChange: (place: string, change: Partial<PlaceDraft>) => void;
}

/** What grows in each place now, whether it stays, and how light the place is. */
export function ThereNow({ draft, grounds, onChange }: Props) {
  const { planned, speaker } = useGarden();
  const known = new Map(planned.places.map((place) => [place.id, place]));
  return (
    <ul className={styles.cards}>
      {grounds.map((ground) => {
        const { id, name, plants } = ground;
        const place = draft.places[id] ?? emptyPlace;
        const present = known.get(id)?.plan?.present;
        return (
          <li key={id}>
            <Disclosure
              title={
                <span>
                  {name}{' '}
                  <span className={styles.now}>
                    {[
                      present === undefined
                        ? label('web.placing-place-untested')
                        : label('web.placing-place-ph', { ph: speaker.ph(present.mean) }),
                      speaker.amount(ground.area, 'area'),
                      saidOf(ground, place),
                    ].join(' · ')}
                  </span>
                </span>
              }
            >
              {() => (
                <>
                  {[...new Map(plants.map((plant) => [plantName(plant), plant]))].map(([plant, entry]) => (
                    <Select
                      key={plant}
                      label={label('web.placing-one-plant', { plant, place: name })}
                      value={nowOf(ground, entry, place)}
                      onChange={(value) => onChange(id, { now: { ...place.now, [plant]: value as Now } })}
                      options={[
                        { value: 'stays', label: label('web.placing-plant-stays') },
                        { value: 'grew', label: label('web.placing-plant-grew') },
                        { value: 'gone', label: label('web.placing-plant-gone') },
                      ]}
                    />
                  ))}
                  <Select
                    label={label('web.placing-place-light', { place: name })}
                    value={place.light}
                    onChange={(light) => onChange(id, { light: light as Light })}
                    options={[
                      { value: '', label: label('web.placing-place-light-unknown') },
                      { value: 'sun', label: label('web.placing-place-sun') },
                      { value: 'part shade', label: label('web.placing-place-part-shade') },
                      { value: 'shade', label: label('web.placing-place-shade') },
                    ]}
                  />
                </>
              )}
            </Disclosure>
          </li>
        );
      })}
    </ul>
  );
}

/** What stays and what makes room, as one line. */
function saidOf(ground: Ground, place: PlaceDraft): string {
  const names = (now: Now) => [
    ...new Set(ground.plants.filter((plant) => nowOf(ground, plant, place) === now).map(plantName)),
  ];
  const [staying, going] = [names('stays'), [...names('grew'), ...names('gone')]];
  if (staying.length + going.length === 0) return label('web.placing-nothing-grows');
  return [
    ...(staying.length === 0 ? [] : [label('web.placing-now-stays', { plants: listed(staying) })]),
    ...(going.length === 0 ? [] : [label('web.placing-now-goes', { plants: listed(going) })]),
  ].join(' · ');
}
