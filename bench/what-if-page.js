// Runs in the page: notes when a slider was moved, and when the answer was painted.
// Well under what a slider counts as at rest, so that no exact answer is worked out between two moves.
const SETTLED = 120;

/** After the next frame has been handed over for painting. */
const painted = () =>
  new Promise((resolve) => {
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => resolve(performance.now());
      port2.postMessage(undefined);
    });
  });

let last = Promise.resolve(null);

/** Milliseconds that the newest move took; null when the last key moved nothing. */
globalThis.moved = async () => {
  const found = await last;
  last = Promise.resolve(null);
  return found;
};

async function answered(start, section) {
  let end = await painted();
  const observer = new MutationObserver(async () => {
    end = await painted();
  });
  observer.observe(section, { subtree: true, childList: true, characterData: true, attributes: true });
  await new Promise((resolve) => setTimeout(resolve, start + SETTLED - performance.now()));
  observer.disconnect();
  return end - start;
}

addEventListener(
  'input',
  ({ timeStamp }) => {
    last = answered(timeStamp, document.querySelector('section[aria-labelledby="what-if"]'));
  },
  { capture: true },
);
