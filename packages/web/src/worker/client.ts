import type { Report } from '@foregone/engine';
import workerUrl from './engine-worker.ts?worker&url';
import type { Questions, QuestionName, Reply, Request } from './protocol.ts';

export interface AskOptions {
  /** Told the work spent so far, ten times a second at most. */
  readonly onProgress?: (spent: number) => void;
  /** Milliseconds after which the engine stops and says what it knows by then. */
  readonly time?: number;
  /** See `Request.about`. */
  readonly about?: string;
}

/** One engine in a thread of its own. It answers the latest question; an older one still open is dropped. */
export interface Engine {
  /** Undefined when another question came before the answer. Rejects only for a fault of ours. */
  ask<Name extends QuestionName>(
    ask: Name,
    text: string,
    options?: AskOptions,
  ): Promise<Questions[Name] | undefined>;
  stop(): void;
}

/** What a person waits for, in milliseconds, before an honest "undecided" is better. */
const PATIENCE = 20_000;

/** Names the engine that answers: its file, whose name changes with its content once it is built. */
export const engineName = workerUrl.replace(/^.*\//, '');

/** The part of `Worker` that is used. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate'> & {
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
};

function startWorker(): WorkerLike {
  return new Worker(workerUrl, { type: 'module', name: 'engine' });
}

interface Open {
  readonly id: number;
  readonly onProgress: ((spent: number) => void) | undefined;
  readonly settle: (answer: Questions[QuestionName] | undefined) => void;
  readonly fail: (error: Error) => void;
}

export function createEngine(start: () => WorkerLike = startWorker): Engine {
  let worker: WorkerLike | undefined;
  let open: Open | undefined;
  let last = 0;

  // The engine works in one long breath and cannot be spoken to meanwhile, so a question nobody waits for any more ends
  // with its thread.
  const drop = () => {
    if (open === undefined) return;
    open.settle(undefined);
    open = undefined;
    worker?.terminate();
    worker = undefined;
  };

  const fail = (message: string) => {
    open?.fail(new Error(message));
    open = undefined;
    worker?.terminate();
    worker = undefined;
  };

  const hear = ({ data }: MessageEvent<Reply>) => {
    if (data.id !== open?.id) return;
    switch (data.kind) {
      case 'progress':
        open.onProgress?.(data.spent);
        return;
      case 'answer':
        open.settle(data.answer);
        open = undefined;
        return;
      case 'fault':
        fail(data.message);
    }
  };

  return {
    ask<Name extends QuestionName>(
      ask: Name,
      text: string,
      { onProgress, time = PATIENCE, about = '' }: AskOptions = {},
    ) {
      drop();
      return new Promise<Questions[Name] | undefined>((resolve, reject) => {
        last += 1;
        open = {
          id: last,
          onProgress,
          // The thread answers the question it was asked: see `answer.ts`, which is typed by name.
          settle: (answer) => resolve(answer as Questions[Name] | undefined),
          fail: reject,
        };
        if (worker === undefined) {
          worker = start();
          worker.onmessage = hear;
          worker.onerror = ({ message }) => fail(message || 'the engine could not be started');
        }
        const request: Request = { id: last, ask, text, about, bounds: { time } };
        worker.postMessage(request);
      });
    },
    stop() {
      drop();
      worker?.terminate();
      worker = undefined;
    },
  };
}

/** The engine of the note that is open: shared by the page and the table, whichever asks last is answered. */
const openNote = createEngine();

/** The report of a note; undefined when a later text was asked about meanwhile. */
export async function checkNote(text: string, options?: AskOptions): Promise<Report | undefined> {
  return (await openNote.ask('check', text, options))?.report;
}
