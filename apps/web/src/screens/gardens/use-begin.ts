import { useLocation } from 'wouter';
import { useUnits } from '../../app/units.tsx';
import { NoAnswer, Refused } from '../../data/garden-store.ts';
import { useStore } from '../../data/store-context.tsx';
import { beginGarden, type Content } from '../../data/write.ts';
import { useToast } from '../../kit/toast.tsx';
import { label } from '../../words/label.ts';

/** Begins a garden and opens one of its screens; when the store would not, says why. */
export function useBegin(): (content: Content<'garden'>, screen: string) => Promise<void> {
  const store = useStore();
  const toast = useToast();
  const units = useUnits();
  const [, go] = useLocation();
  return async (content, screen) => {
    const entry = beginGarden({ ...content, units });
    try {
      await store.append(entry.id, [entry]);
      go(`/g/${entry.id}${screen}`);
    } catch (error) {
      const reason =
        error instanceof NoAnswer
          ? label('web.no-answer')
          : error instanceof Refused
            ? (error.problems[0]?.message ?? error.message)
            : String(error);
      toast({ text: label('web.refused', { reason }) });
    }
  };
}
