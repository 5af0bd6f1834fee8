import { nutrientName, type SymptomEvidence } from '@sorrel/engine/nutrients';
import { useGarden } from '../../app/garden-context.tsx';
import page from '../../kit/page.module.css';
import { label } from '../../words/label.ts';
import { verdictText } from '../usable/verdicts.tsx';

/** What of the place itself counts as evidence beside the look of the plant. */
export function KnownHere({ evidence }: { readonly evidence: SymptomEvidence }) {
  const { speaker } = useGarden();
  const { ph } = evidence;
  const verdicts = (evidence.verdicts ?? []).filter(({ verdict }) => verdict !== 'cannot tell');
  return (
    <>
      <h3>{label('web.symptoms-known')}</h3>
      <ul className={page.bullets}>
        <li>
          {ph === undefined
            ? label('web.symptoms-known-no-ph')
            : label('web.symptoms-known-ph', { ph: speaker.ph(ph) })}
        </li>
        {verdicts.map(({ nutrient, verdict }) => (
          <li key={nutrient}>
            {label('web.symptoms-known-verdict', { nutrient: nutrientName(nutrient), verdict: verdictText(verdict) })}
          </li>
        ))}
      </ul>
    </>
  );
}
