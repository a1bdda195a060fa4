import type { Report } from '@foregone/engine';
import workerUrl from './engine-worker.ts?worker&url';
import type { Bit, BitOf, Questions, QuestionName, Reply, Request } from './protocol.ts';

export interface AskOptions<Name extends QuestionName = QuestionName> {
  /** Told the work spent so far, ten times a second at most. */
  readonly onProgress?: (spent: number) => void;
  /** Milliseconds after which the engine stops and says what it knows by then. */
  readonly time?: number;
  /** See `Request.about`. */
  readonly about?: string;
  /** Told what comes bit by bit before the answer. */
  readonly onBit?: (bit: BitOf<Name>) => void;
}

/** One engine in a thread of its own. It answers the latest question; an older one still open is dropped. */
export interface Engine {
  /** Undefined when another question came before the answer. Rejects only for a fault of ours. */
  ask<Name extends QuestionName>(
    ask: Name,
    text: string,
    options?: AskOptions<Name>,
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

/**
 * Milliseconds that a thread at work is given to take up the next question. It hears nothing while it works, except between two
 * bits; one that is nearly done is worth more than a new one.
 */
const HEARING = 150;

interface Open {
  readonly request: Request;
  readonly onProgress: ((spent: number) => void) | undefined;
  readonly onBit: ((bit: Bit) => void) | undefined;
  readonly settle: (answer: Questions[QuestionName] | undefined) => void;
  readonly fail: (error: Error) => void;
}

export function createEngine(start: () => WorkerLike = startWorker): Engine {
  let worker: WorkerLike | undefined;
  let open: Open | undefined;
  let last = 0;
  let hearing: ReturnType<typeof setTimeout> | undefined;

  const end = () => {
    clearTimeout(hearing);
    worker?.terminate();
    worker = undefined;
  };

  const send = (request: Request) => {
    if (worker === undefined) {
      worker = start();
      worker.onmessage = hear;
      worker.onerror = ({ message }) => fail(message || 'the engine could not be started');
    }
    worker.postMessage(request);
  };

  const fail = (message: string) => {
    open?.fail(new Error(message));
    open = undefined;
    end();
  };

  const hear = ({ data }: MessageEvent<Reply>) => {
    if (data.id !== open?.request.id) return;
    clearTimeout(hearing);
    switch (data.kind) {
      case 'begun':
        return;
      case 'progress':
        open.onProgress?.(data.spent);
        return;
      case 'bit':
        open.onBit?.(data.bit);
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
      { onProgress, time = PATIENCE, about = '', onBit }: AskOptions<Name> = {},
    ) {
      const dropped = open;
      open = undefined;
      dropped?.settle(undefined);
      return new Promise<Questions[Name] | undefined>((resolve, reject) => {
        last += 1;
        const request: Request = { id: last, ask, text, about, bounds: { time } };
        open = {
          request,
          onProgress,
          // The thread answers the question it was asked: see `answer.ts`, which is typed by name.
          onBit: onBit as ((bit: Bit) => void) | undefined,
          settle: (answer) => resolve(answer as Questions[Name] | undefined),
          fail: reject,
        };
        clearTimeout(hearing);
        if (dropped !== undefined && worker !== undefined) {
          hearing = setTimeout(() => {
            end();
            send(request);
          }, HEARING);
        }
        send(request);
      });
    },
    stop() {
      open?.settle(undefined);
      open = undefined;
      end();
    },
  };
}

/** The engine of the note that is open: shared by the page and the table, whichever asks last is answered. */
const openNote = createEngine();

/** The report of a note; undefined when a later text was asked about meanwhile. */
export async function checkNote(text: string, options?: AskOptions): Promise<Report | undefined> {
  return (await openNote.ask('check', text, options))?.report;
}
