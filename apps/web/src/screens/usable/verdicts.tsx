import { type NutrientVerdict, nutrientName, type PlaceNutrients } from '@sorrel/engine/nutrients';
import { useGarden } from '../../app/garden-context.tsx';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { ButtonLink } from '../../kit/button.tsx';
import { Cited } from '../../kit/cited.tsx';
import { Icon, type IconName } from '../../kit/icon.tsx';
import page from '../../kit/page.module.css';
import { label, type WebCode } from '../../words/label.ts';
import styles from './usable.module.css';

const icons: Readonly<Record<NutrientVerdict['verdict'], IconName>> = {
  'enough and usable': 'fine',
  'enough but locked': 'lock',
  'truly short': 'down',
  'too much': 'up',
  'cannot tell': 'look',
};
/** What needs doing first. */
const order: readonly NutrientVerdict['verdict'][] = [
  'truly short',
  'too much',
  'enough but locked',
  'cannot tell',
  'enough and usable',
];

export const verdictText = (verdict: NutrientVerdict['verdict']): string =>
  label(`web.usable-verdict-${verdict.replaceAll(' ', '-')}` as WebCode);

/** Each nutrient of the latest test: enough, locked, short or too much, why, and what to do or leave. */
export function Verdicts({ planned, found }: { readonly planned: PlannedPlace; readonly found: PlaceNutrients }) {
  const { speaker } = useGarden();
  if (found.verdicts.length === 0)
    return (
      <div className={page.sheet}>
        <p>{label('web.usable-no-levels')}</p>
        <div className="no-print">
          <ButtonLink href={`/test/${planned.id}`}>{label('web.usable-add-levels')}</ButtonLink>
        </div>
      </div>
    );
  const sorted = [...found.verdicts].sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));
  return (
    <ul className={styles.verdicts}>
      {sorted.map((each) => (
        <li key={each.nutrient} className={styles.verdict} data-verdict={each.verdict}>
          <h3 className={styles.name}>{nutrientName(each.nutrient)}</h3>
          <p className={styles.word}>
            <Icon name={icons[each.verdict]} size={20} />
            {verdictText(each.verdict)}
          </p>
          {each.reasons.map((message, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: sentences keep their order
            <p key={index}>{speaker.say(message)}</p>
          ))}
          {each.actions.length === 0 ? null : (
            <p>
              <strong>{label('web.usable-do')}:</strong> {each.actions.map(speaker.say).join(' ')}
            </p>
          )}
          <Cited sources={each.sources} basis={each.basis} />
        </li>
      ))}
    </ul>
  );
}
