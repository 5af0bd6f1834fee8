import type { Recommendation } from '@sorrel/engine/plan';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Question, WishAnswer } from './forecast-worker.ts';
import { openWorker } from './open-worker.ts';
import { type Picture, type QuickAnswer, quickAnswer, type RestedAnswer } from './wished-picture.ts';
import { isWish, type Wish, type Wishing } from './wished-plan.ts';

export interface WishState {
  readonly wished: QuickAnswer;
  /** The plan: at once the quick one, held to the forecast once the sliders have rested. */
  readonly plan: Recommendation;
  /** Undefined where nothing can be foreseen. */
  readonly picture: Picture | undefined;
  /** The dose is not yet held to the forecast, and will be. */
  readonly unchecked: boolean;
}

/** So long a slider must not have moved to be at rest. */
const REST_MS = 250;

interface Rested extends RestedAnswer {
  readonly of: QuickAnswer;
}

/**
 * The answer to a wish: near enough in the frame in which the slider moves, and from a worker as exact as every plan when
 * it rests. No wish that was overtaken is worked on.
 */
export function useWish(wishing: Wishing, wish: Wish): WishState {
  const wished = useMemo(() => quickAnswer(wishing, wish), [wishing, wish]);
  const [rested, setRested] = useState<Rested>();
  const desk = useRef<Desk>(undefined);
  const newest = useRef(wished);

  useEffect(() => {
    // Nobody looks at the answer to a wish that was overtaken.
    const opened = openDesk((answer) => {
      if (answer.of === newest.current) setRested(answer);
    });
    desk.current = opened;
    return opened.close;
  }, []);

  useEffect(() => {
    // The working of the plan is large, and nobody asks the worker for it.
    const { derivation: _, ...plan } = wishing.plan;
    desk.current?.begin({ ...wishing, plan });
  }, [wishing]);

  useEffect(() => {
    newest.current = wished;
    const timer = setTimeout(() => desk.current?.ask(wish, wished), REST_MS);
    return () => clearTimeout(timer);
  }, [wish, wished]);

  const current = rested?.of === wished ? rested : undefined;
  return {
    wished,
    plan: current?.held ?? wished.plan,
    picture: current?.picture ?? wished.picture,
    unchecked: isWish(wish) && wished.plan.applications.length > 0 && current === undefined,
  };
}

/** A worker with at most one wish under way and one waiting. */
interface Desk {
  begin(wishing: Wishing): void;
  /** @param of what the answer is marked with */
  ask(wish: Wish, of: QuickAnswer): void;
  close(): void;
}

function openDesk(give: (rested: Rested) => void): Desk {
  let current: QuickAnswer | undefined;
  let waiting: (() => void) | undefined;
  const post = (question: Question) => worker.postMessage(question);
  const done = (answer: RestedAnswer) => {
    const of = current;
    const next = waiting;
    current = undefined;
    waiting = undefined;
    next?.();
    if (of !== undefined) give({ of, ...answer });
  };
  // Where the forecast fails, the quick answer stands.
  const nothing = () => done({ picture: undefined, held: undefined });
  const worker = openWorker<WishAnswer>((answer) => ('failed' in answer ? nothing() : done(answer)), nothing);
  return {
    begin: (wishing) => post({ ask: 'wishing', wishing }),
    ask(wish, of) {
      const send = () => {
        current = of;
        post({ ask: 'wish', wish });
      };
      if (current === undefined) send();
      else waiting = send;
    },
    close: () => worker.terminate(),
  };
}
