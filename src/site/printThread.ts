import { Worker } from 'node:worker_threads';

/** What the printing thread is asked; it answers with the key, and with what went wrong. */
export interface PrintAsk {
  readonly key: string;
  readonly html: string;
  /** Where the PDF is kept. */
  readonly stored: string;
  /** Length of the page. */
  readonly size: number;
}

export interface PrintAnswer {
  readonly key: string;
  readonly error?: string;
}

interface Outcome {
  readonly done: () => void;
  readonly fail: (error: Error) => void;
}

/** The printing thread, started by the first call: many builds have nothing to print. */
export function printThread(browser: string) {
  const asked = new Map<string, Outcome>();
  let worker: Worker | undefined;
  const failAll = (error: Error) => {
    for (const { fail } of asked.values()) fail(error);
    asked.clear();
    worker = undefined;
  };
  const start = () => {
    const made = new Worker(new URL('./printWorker.mjs', import.meta.url), { workerData: browser });
    made.on('message', ({ key, error }: PrintAnswer) => {
      const one = asked.get(key);
      asked.delete(key);
      if (error === undefined) one?.done();
      else one?.fail(new Error(error));
    });
    made.on('error', failAll);
    made.on('exit', () => failAll(new Error('the printing thread has ended')));
    return made;
  };
  const post = (message: PrintAsk | 'warm') => {
    worker ??= start();
    worker.postMessage(message);
  };
  const print = (ask: PrintAsk) =>
    new Promise<void>((done, fail) => {
      asked.set(ask.key, { done, fail });
      post(ask);
    });
  const close = () =>
    new Promise<void>((done) => {
      if (!worker) return done();
      worker.once('exit', () => done());
      worker.postMessage('close');
    });
  return { warm: () => post('warm'), print, close };
}
