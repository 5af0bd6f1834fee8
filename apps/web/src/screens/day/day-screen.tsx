import type { ReactNode } from 'react';
import { Failure } from '../../kit/failure.tsx';
import { Loading } from '../../kit/loading.tsx';
import { type DaySession, useDay } from './use-day.ts';

/** A screen of a soil day, once the day has been fetched. */
export function DayScreen({ children }: { readonly children: (session: DaySession) => ReactNode }) {
  const day = useDay();
  if (day.state === 'loading') return <Loading />;
  if (day.state === 'failed') return <Failure error={day.error} retry={day.retry} />;
  return children(day.session);
}
