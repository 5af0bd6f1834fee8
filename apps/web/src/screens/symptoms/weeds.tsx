import { indicatorPlants } from '@sorrel/almanac/indicator-plants';
import { weedEvidence } from '@sorrel/engine/nutrients';
import { useGarden } from '../../app/garden-context.tsx';
import { Cited } from '../../kit/cited.tsx';
import { Disclosure } from '../../kit/disclosure.tsx';
import page from '../../kit/page.module.css';
import { Tick } from '../../kit/tick.tsx';
import { label } from '../../words/label.ts';
import styles from './symptoms.module.css';

interface Props {
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Weeds that grow here: a weak hint on the same path, never more. */
export function Weeds({ chosen, onChange }: Props) {
  const { speaker } = useGarden();
  const found = weedEvidence(chosen);
  return (
    <Disclosure title={label('web.symptoms-weeds')}>
      {() => (
        <>
          <p className={page.soft}>{label('web.symptoms-weeds-lead')}</p>
          <ul className={styles.weeds}>
            {indicatorPlants.map(({ key, name }) => (
              <li key={key}>
                <Tick
                  checked={chosen.includes(name)}
                  onChange={(checked) => onChange(checked ? [...chosen, name] : chosen.filter((each) => each !== name))}
                >
                  {name}
                </Tick>
              </li>
            ))}
          </ul>
          {chosen.length === 0 ? null : (
            <div aria-live="polite">
              <ul className={page.bullets}>
                {found.messages.map((message, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a sentence a weed, in their order
                  <li key={index}>{speaker.say(message)}</li>
                ))}
              </ul>
              <Cited sources={found.sources} />
            </div>
          )}
        </>
      )}
    </Disclosure>
  );
}
