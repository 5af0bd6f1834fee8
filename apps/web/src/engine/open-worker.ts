/**
 * A worker with the engine in it.
 *
 * @param answered called with each answer
 * @param broke called when the worker cannot be loaded or breaks
 */
export function openWorker<Answer>(answered: (answer: Answer) => void, broke: (reason: string) => void): Worker {
  const worker = new Worker(new URL('./forecast-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<Answer>) => answered(data);
  worker.onerror = ({ message }) => broke(message);
  return worker;
}
