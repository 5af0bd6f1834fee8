import type { Place, Recommendation, Settings } from '@sorrel/engine/plan';
import { lazy, Suspense } from 'react';
import { Disclosure } from '../../kit/disclosure.tsx';
import { Loading } from '../../kit/loading.tsx';
import { Section } from '../../kit/section.tsx';
import { label } from '../../words/label.ts';

export interface WaysProps {
  readonly place: Place;
  readonly plan: Recommendation;
  readonly settings: Settings;
}

const WaysTable = lazy(() => import('./ways-table.tsx'));

/** The ways open to the place, side by side; worked out when somebody wants to see them. */
export function Ways(props: WaysProps) {
  return (
    <Section id="ways" title="web.sec-ways">
      <Disclosure title={label('web.ways-open')}>
        {() => (
          <Suspense fallback={<Loading code="web.working" />}>
            <WaysTable {...props} />
          </Suspense>
        )}
      </Disclosure>
    </Section>
  );
}
