import { type Arrangement, arrange, highsSolver, type PlacingInput } from '@sorrel/engine/placing';
import loadHighs from 'highs';
import wasm from 'highs/runtime?url';

/** All plain data, so that it can cross to the worker. */
export interface PlacingQuestion {
  readonly input: PlacingInput;
  /** Each search gives up after so many seconds, with the best it found. */
  readonly seconds: number;
}

export type PlacingAnswer =
  | { readonly step: number }
  | { readonly arrangement: Arrangement }
  | { readonly failed: string };

const tell = (answer: PlacingAnswer) => self.postMessage(answer);

// Searching takes as long as it takes, so it is done beside the page, which ends it by ending the worker.
self.onmessage = async ({ data: { input, seconds } }: MessageEvent<PlacingQuestion>) => {
  try {
    const solve = highsSolver(await loadHighs({ locateFile: () => wasm }), seconds);
    let step = 0;
    const arrangement = arrange(input, (model, nodes) => {
      step += 1;
      tell({ step });
      return solve(model, nodes);
    });
    tell({ arrangement });
  } catch (error) {
    tell({ failed: error instanceof Error ? error.message : String(error) });
  }
};
