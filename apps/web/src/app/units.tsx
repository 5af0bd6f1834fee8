import type { UnitSystem } from '@sorrel/engine/units';
import { createContext, type ReactNode, use, useMemo, useState } from 'react';

/** The reader's own choice of units; what is stored never changes with it. */
interface UnitsChoice {
  /** Undefined until she chooses; then the garden's own units hold. */
  readonly chosen: UnitSystem | undefined;
  readonly choose: (system: UnitSystem) => void;
}

const KEY = 'sorrel.units';
const UnitsContext = createContext<UnitsChoice>({ chosen: undefined, choose: () => {} });

function remembered(): UnitSystem | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'metric' || kept === 'us' ? kept : undefined;
  } catch {
    return undefined;
  }
}

export function UnitsProvider({ children }: { readonly children: ReactNode }) {
  const [chosen, setChosen] = useState(remembered);
  const value = useMemo<UnitsChoice>(
    () => ({
      chosen,
      choose(system) {
        setChosen(system);
        try {
          localStorage.setItem(KEY, system);
        } catch {
          // A browser that keeps nothing: the choice lasts as long as the page.
        }
      },
    }),
    [chosen],
  );
  return <UnitsContext value={value}>{children}</UnitsContext>;
}

export const useUnitsChoice = (): UnitsChoice => use(UnitsContext);

/** Units to show: the reader's choice, else the garden's, else those of the browser's country. */
export function useUnits(ofGarden?: UnitSystem): UnitSystem {
  const { chosen } = useUnitsChoice();
  return chosen ?? ofGarden ?? (navigator.language === 'en-US' ? 'us' : 'metric');
}
