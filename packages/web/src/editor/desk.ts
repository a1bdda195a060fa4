import type { FailureData, FreedomRowData, Report } from '@foregone/engine';
import { createStore, type Store } from '../ui/store.ts';
import type { Engine } from '../worker/client.ts';
import type { QuestionName, Questions } from '../worker/protocol.ts';
import { breakersOf, safePlaceOf, withoutEach, type SafePlace } from './safe.ts';

/** What the page wants to know about, changed as the author types and moves about. */
export interface Wanted {
  readonly text: string;
  /** Which of the many performances is looked at. */
  readonly performance: number;
  /** The step before which something might be put in; undefined for the end of the working. */
  readonly step?: string | undefined;
  /** The row of which the page wants to see how it breaks the note. */
  readonly breaking?: string | undefined;
}

/** An answer with the text it speaks of. */
export interface Told<T> {
  readonly text: string;
  readonly value: T;
}

/** What else could be done at a place, as far as it is known. */
export interface SafeRows {
  readonly at: SafePlace;
  readonly rows: readonly FreedomRowData[];
  readonly isAll: boolean;
  /** Why there are no more rows; empty where these are all there are. */
  readonly ended: string;
}

/** The latest answers. Those about an earlier text stay until the new ones come. */
export interface Known {
  readonly reading: Told<Questions['read']> | undefined;
  readonly report: Told<Report> | undefined;
  readonly play: Told<Questions['play']> | undefined;
  readonly moments: Told<Questions['moments']> | undefined;
  /** Steps without which a note that can fail would always work. */
  readonly breakers: Told<readonly string[]> | undefined;
  readonly safe: Told<SafeRows> | undefined;
  /** How the note fails with a row put in; null where no failing performance was found. */
  readonly breaking: (Told<FailureData | null> & { readonly row: string }) | undefined;
  /** The question being worked on. */
  readonly busy: QuestionName | undefined;
  /** A fault of ours, in words. */
  readonly fault: string | undefined;
}

export const NOTHING_KNOWN: Known = {
  reading: undefined,
  report: undefined,
  play: undefined,
  moments: undefined,
  breakers: undefined,
  safe: undefined,
  breaking: undefined,
  busy: undefined,
  fault: undefined,
};

/** In the order in which a person misses them; what is about the note itself, and what else could be done in it. */
const ABOUT_IT = ['read', 'check', 'play', 'moments'] as const;
const BESIDES = ['verdicts', 'breaking', 'freedom'] as const;
type Task = (typeof ABOUT_IT)[number] | (typeof BESIDES)[number];

/** A task with all that its question takes. */
interface Question {
  readonly task: Task;
  /** What the engine is asked about, which is not always the note as it stands. */
  readonly text: string;
  readonly about: string;
  /** Two questions with the same key have the same answer. */
  readonly key: string;
  readonly at?: SafePlace;
}

export interface Desk {
  readonly known: Store<Known>;
  /** Tells what is wanted now; work on what is no longer wanted is given up. */
  want(wanted: Wanted): void;
  stop(): void;
}

/** Milliseconds between two drawings of rows that come one after the other. */
const ROWS_APART = 60;

/**
 * Asks about the text as it is now, one question after the other.
 *
 * @param engine for what is about the note itself, always ready for the next key
 * @param besides for what else could be done, which takes longer
 */
export function openDesk(engine: Engine, besides: Engine): Desk {
  const known = createStore<Known>(NOTHING_KNOWN);
  let wanted: Wanted | undefined;
  let closed = false;

  const change = (part: Partial<Known>) => known.set({ ...known.get(), ...part });

  const placeIn = ({ text, step }: Wanted): SafePlace | undefined => {
    const { report, breakers } = known.get();
    if (report?.text !== text) return undefined;
    return safePlaceOf(text, step, report.value.verdict, breakers?.text === text ? breakers.value : []);
  };

  /** The question of a task; undefined where it makes no sense now. */
  const questionOf = (task: Task, now: Wanted): Question | undefined => {
    const { text, performance, breaking } = now;
    const plain = { task, text, about: '', key: text };
    switch (task) {
      case 'play':
        return { ...plain, about: String(performance), key: `${performance} ${text}` };
      case 'verdicts': {
        const { report } = known.get();
        if (report?.text !== text || report.value.verdict !== 'refuted') return undefined;
        return { ...plain, about: JSON.stringify(withoutEach(text).map((one) => one.text)) };
      }
      case 'breaking':
      case 'freedom': {
        const at = placeIn(now);
        if (at === undefined) return undefined;
        const place = { task, text: at.text, about: at.place, at, key: `${at.place} ${at.text}` };
        if (task === 'freedom') return place;
        if (breaking === undefined) return undefined;
        return { ...place, about: JSON.stringify([at.place, breaking]), key: `${breaking} ${place.key}` };
      }
      case 'read':
      case 'check':
      case 'moments':
        return plain;
    }
  };

  const keep = ({ task }: Question, { text, breaking }: Wanted, answer: Questions[Task]) => {
    const told = { text, value: answer };
    // Each answer belongs to the question it was asked with; see `pump`.
    if (task === 'read') change({ reading: told as Known['reading'] });
    else if (task === 'check') change({ report: { text, value: (answer as Questions['check']).report } });
    else if (task === 'play') change({ play: told as Known['play'] });
    else if (task === 'moments') change({ moments: told as Known['moments'] });
    else if (task === 'verdicts')
      change({ breakers: { text, value: breakersOf(text, answer as Questions['verdicts']) } });
    else if (task === 'breaking')
      change({ breaking: { text, row: breaking ?? '', value: answer as Questions['breaking'] } });
  };

  /** A row of questions to one engine; gives back what looks for the next of them. */
  const lane = (asked: Engine, tasks: readonly Task[], isMain: boolean) => {
    const done = new Map<Task, string>();
    let running: Question | undefined;
    const busy = (task: Task | undefined) => {
      if (isMain && known.get().busy !== task) change({ busy: task });
    };
    const pump = () => {
      if (closed || wanted === undefined) return;
      const now = wanted;
      const question = tasks
        .map((task) => questionOf(task, now))
        .find((one) => one !== undefined && done.get(one.task) !== one.key);
      if (question === undefined) {
        busy(undefined);
        return;
      }
      const { task, key } = question;
      if (running?.task === task && running.key === key) return;
      running = question;
      busy(task);
      const finish = (fault?: string) => {
        if (running !== question) return;
        running = undefined;
        done.set(task, key);
        change({ fault });
        pumpAll();
      };
      const rows =
        question.at === undefined ? undefined : gather(now.text, question.at, () => running === question);
      asked
        .ask(task, question.text, {
          about: question.about,
          onBit: (row) => rows?.add(row as FreedomRowData),
        })
        .then(
          (answer) => {
            // Undefined: another question came first, and its answer is waited for.
            if (answer === undefined || running !== question) return;
            if (task === 'freedom') rows?.end(typeof answer === 'string' ? answer : '');
            else keep(question, now, answer);
            finish();
          },
          (error: unknown) => finish(error instanceof Error ? error.message : String(error)),
        );
    };
    return pump;
  };

  /** Shows rows as they come, not one by one. */
  const gather = (text: string, at: SafePlace, isWanted: () => boolean) => {
    const found: FreedomRowData[] = [];
    let timer: ReturnType<typeof setTimeout> | undefined;
    const show = (isAll: boolean, ended: string) => {
      clearTimeout(timer);
      timer = undefined;
      if (!isWanted()) return;
      // Rows that were there before the question was interrupted stay until there are as many again.
      const before = known.get().safe;
      const isAgain = before?.value.at.text === at.text && before.value.at.place === at.place;
      if (!isAll && isAgain && before.value.rows.length > found.length) return;
      change({ safe: { text, value: { at, rows: [...found], isAll, ended } } });
    };
    return {
      add(row: FreedomRowData) {
        found.push(row);
        if (found.length === 1) show(false, '');
        else timer ??= setTimeout(() => show(false, ''), ROWS_APART);
      },
      end: (ended: string) => show(true, ended),
    };
  };

  const lanes = [lane(engine, ABOUT_IT, true), lane(besides, BESIDES, false)];
  const pumpAll = () => lanes.forEach((pump) => pump());

  return {
    known,
    want(next) {
      wanted = next;
      pumpAll();
    },
    stop() {
      closed = true;
      engine.stop();
      besides.stop();
    },
  };
}
