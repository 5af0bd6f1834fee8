import { diseasesOf, diseaseTarget } from '@sorrel/engine/nutrients';
import { rangeFor } from '@sorrel/engine/placing';
import { useGarden } from '../../app/garden-context.tsx';
import { Cited } from '../../kit/cited.tsx';
import page from '../../kit/page.module.css';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';
import type { AnyPlant } from '../edit-place/plant-search.ts';
import styles from './plant.module.css';

/** Diseases whose pH overrides what the plant would like, with how far that can be trusted. */
export function Diseases({ plant }: { readonly plant: AnyPlant }) {
  const { speaker } = useGarden();
  const found = diseasesOf(plant.key);
  const range = rangeFor(plant, 'mineral');
  const bare = range ?? { key: plant.key, name: plant.name, low: 0, high: 14 };
  return (
    <Section id="diseases" title="web.plant-diseases">
      {found.length === 0 ? (
        <p>{label('web.plant-no-diseases')}</p>
      ) : (
        <>
          <p className={page.lead}>{label('web.plant-diseases-lead')}</p>
          <ul className={styles.diseases}>
            {found.map((disease) => (
              <li key={disease.key}>
                <h3>{disease.name}</h3>
                {diseaseTarget([bare], [disease.key]).messages.map((message) => (
                  <p key={message.code}>{speaker.say(message)}</p>
                ))}
                <Cited sources={disease.sources} basis={disease.basis} />
              </li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}
