import { lazy, Suspense } from 'react';
import type { PlannedPlace } from '../../engine/garden-plan.ts';
import { Loading } from '../../kit/loading.tsx';
import { Section } from '../../kit/section.tsx';

// The key of symptoms and the tables of nutrients come after the plan, which is what the screen is opened for.
const Health = lazy(() => import('./health.tsx'));

/** How the plants of a place do. */
export function HealthSection({ planned }: { readonly planned: PlannedPlace }) {
  return (
    <Section id="health" title="web.sec-health">
      <Suspense fallback={<Loading code="web.working" />}>
        <Health planned={planned} />
      </Suspense>
    </Section>
  );
}
