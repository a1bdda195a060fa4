import type { Report } from '@foregone/engine';
import { createStore, type Store } from '../ui/store.ts';
import type { Engine } from '../worker/client.ts';
import type { QuestionName, Questions } from '../worker/protocol.ts';
import { safeRows, safeTexts, type SafeRow } from './safe.ts';

/** What the page wants to know about, changed as the author types and moves about. */
export interface Wanted {
  readonly text: string;
  /** Which of the many performances is looked at. */
  readonly performance: number;
  /** The step before which something might be put in; undefined for the end of the working. */
  readonly step?: string | undefined;
}

/** An answer with the text it speaks of. */
export interface Told<T> {
  readonly text: string;
  readonly value: T;
}

/** The latest answers. Those about an earlier text stay until the new ones come. */
export interface Known {
  readonly reading: Told<Questions['read']> | undefined;
  readonly report: Told<Report> | undefined;
  readonly play: Told<Questions['play']> | undefined;
  readonly moments: Told<Questions['moments']> | undefined;
  /** What else could be done before the step at the caret. */
  readonly safe: (Told<readonly SafeRow[]> & { readonly step: string | undefined }) | undefined;
  /** The question being worked on. */
  readonly busy: QuestionName | undefined;
  /** A fault of ours, in words. */
  readonly fault: string | undefined;
}

const NOTHING: Known = {
  reading: undefined,
  report: undefined,
  play: undefined,
  moments: undefined,
  safe: undefined,
  busy: undefined,
  fault: undefined,
};

/** In the order in which a person misses them. */
const ORDER = ['read', 'check', 'play', 'moments', 'verdicts'] as const;
type Task = (typeof ORDER)[number];

export interface Desk {
  readonly known: Store<Known>;
  /** Tells what is wanted now; work on what is no longer wanted is given up. */
  want(wanted: Wanted): void;
  stop(): void;
}

/** Asks the engine one question after the other about the text as it is now. */
export function openDesk(engine: Engine): Desk {
  const known = createStore<Known>(NOTHING);
  const done = new Map<Task, string>();
  let wanted: Wanted | undefined;
  let running: { readonly task: Task; readonly key: string } | undefined;
  let closed = false;

  const change = (part: Partial<Known>) => known.set({ ...known.get(), ...part });
  const keyOf = (task: Task, { text, performance, step }: Wanted) => {
    if (task === 'play') return `${performance} ${text}`;
    return task === 'verdicts' ? `${step ?? 'end'} ${text}` : text;
  };
  // Only of a note that always works can it be said what would keep it so.
  const isWanted = (task: Task, { text }: Wanted) => {
    const { report } = known.get();
    return task !== 'verdicts' || (report?.text === text && report.value.verdict === 'proved');
  };

  const keep = (task: Task, { text, step }: Wanted, answer: Questions[Task]) => {
    const told = { text, value: answer };
    // Each answer belongs to the question it was asked with; see `pump`.
    if (task === 'read') change({ reading: told as Known['reading'] });
    else if (task === 'check') change({ report: { text, value: (answer as Questions['check']).report } });
    else if (task === 'play') change({ play: told as Known['play'] });
    else if (task === 'moments') change({ moments: told as Known['moments'] });
    else change({ safe: { text, step, value: safeRows(answer as Questions['verdicts']) } });
  };

  const pump = () => {
    if (closed || wanted === undefined) return;
    const now = wanted;
    const task = ORDER.find((each) => isWanted(each, now) && done.get(each) !== keyOf(each, now));
    if (task === undefined) {
      if (known.get().busy !== undefined) change({ busy: undefined });
      return;
    }
    const key = keyOf(task, now);
    if (running?.task === task && running.key === key) return;
    const mine = { task, key };
    running = mine;
    change({ busy: task });
    const finish = (fault?: string) => {
      if (running !== mine) return;
      running = undefined;
      done.set(task, key);
      change({ fault });
      pump();
    };
    engine.ask(task, now.text, { about: aboutOf(task, now) }).then(
      (answer) => {
        // Undefined: another question came first, and its answer is waited for.
        if (answer === undefined || running !== mine) return;
        keep(task, now, answer);
        finish();
      },
      (error: unknown) => finish(error instanceof Error ? error.message : String(error)),
    );
  };

  return {
    known,
    want(next) {
      wanted = next;
      pump();
    },
    stop() {
      closed = true;
      engine.stop();
    },
  };
}

function aboutOf(task: Task, { text, performance, step }: Wanted): string {
  if (task === 'play') return String(performance);
  return task === 'verdicts' ? JSON.stringify(safeTexts(text, step)) : '';
}
