import { Callout } from '../kit/callout.tsx';
import { label } from '../words/label.ts';
import styles from './checking.module.css';
import { useGarden } from './garden-context.tsx';

/**
 * Says, without moving the page, that the doses shown are still being held to the forecast; where that failed, says so
 * for good.
 */
export function Checking() {
  const { held } = useGarden().planned;
  if (held === 'failed')
    return (
      <Callout kind="wrong">
        <p>{label('web.doses-unchecked')}</p>
      </Callout>
    );
  return (
    <p className={held === 'under way' ? styles.checking : 'hidden-text'} role="status">
      {held === 'under way' ? label('web.doses-checking') : label('web.doses-checked')}
    </p>
  );
}
