import type { UnitSystem } from '@sorrel/engine/units';
import type { ReactNode } from 'react';
import { Link, useRoute } from 'wouter';
import { Icon } from '../kit/icon.tsx';
import { label } from '../words/label.ts';
import styles from './frame.module.css';
import { type Screen, screens } from './screens.ts';
import { useUnits, useUnitsChoice } from './units.tsx';

interface Props {
  /** Name of the garden shown; left out where none is chosen yet. */
  readonly garden?: string;
  readonly ofGarden?: UnitSystem | undefined;
  /** Screens in the bar. */
  readonly bar?: readonly Screen[];
  readonly children: ReactNode;
}

/** What stands around every screen: name and units above; the screens below on a phone, at the side on a desk. */
export function Frame({ garden, ofGarden, bar = screens, children }: Props) {
  const [front] = useRoute('/');
  return (
    <div className={garden === undefined ? styles.alone : styles.frame}>
      <a className={styles.skip} href="#content">
        {label('web.skip')}
      </a>
      <header className={`${styles.header} no-print`}>
        <Link href="~/" className={styles.brand}>
          <img src="/sorrel.svg" alt="" width="28" height="28" />
          <span className={garden === undefined || front ? undefined : styles.brandShort}>{label('web.name')}</span>
          <span className="hidden-text">{label('web.nav-gardens')}</span>
        </Link>
        {garden === undefined || front ? null : <p className={styles.garden}>{garden}</p>}
        <Units ofGarden={ofGarden} />
      </header>
      {garden === undefined ? null : (
        <nav className={`${styles.nav} no-print`} aria-label={label('web.nav')}>
          <ul>
            {bar.map((screen) =>
              screen.icon === undefined ? null : <NavLink key={screen.path} {...screen} icon={screen.icon} />,
            )}
          </ul>
        </nav>
      )}
      <main id="content" tabIndex={-1} className={styles.main}>
        {children}
      </main>
      <footer className={styles.footer}>
        <p>{label('web.footer')}</p>
      </footer>
    </div>
  );
}

function NavLink({ path, title, icon }: Screen & { readonly icon: NonNullable<Screen['icon']> }) {
  const [here] = useRoute(path);
  return (
    <li>
      <Link href={path} aria-current={here ? 'page' : undefined} className={styles.link}>
        <Icon name={icon} />
        <span>{label(title)}</span>
      </Link>
    </li>
  );
}

function Units({ ofGarden }: { readonly ofGarden: UnitSystem | undefined }) {
  const { choose } = useUnitsChoice();
  const units = useUnits(ofGarden);
  return (
    <fieldset className={styles.units}>
      <legend className="hidden-text">{label('web.units')}</legend>
      {(['metric', 'us'] as const).map((system) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            value={system}
            checked={units === system}
            onChange={() => choose(system)}
            className="hidden-text"
          />
          <span className={styles.unit}>{label(system === 'us' ? 'web.units-us' : 'web.units-metric')}</span>
        </label>
      ))}
    </fieldset>
  );
}
