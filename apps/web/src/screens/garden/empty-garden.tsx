import { ButtonLink } from '../../kit/button.tsx';
import { label } from '../../words/label.ts';
import styles from './garden.module.css';

/** A garden without places: what a place is, and how it goes on. */
export function EmptyGarden({ name }: { readonly name: string }) {
  return (
    <div className={styles.empty}>
      <h1>{name}</h1>
      <h2>{label('web.garden-empty-title')}</h2>
      <p>{label('web.garden-empty-text')}</p>
      <ButtonLink href="/add-place" look="main">
        {label('web.garden-add')}
      </ButtonLink>
      <h3>{label('web.garden-empty-how')}</h3>
      <ol>
        <li>{label('web.garden-empty-1')}</li>
        <li>{label('web.garden-empty-2')}</li>
        <li>{label('web.garden-empty-3')}</li>
      </ol>
    </div>
  );
}
