import {
  BudgetEnded,
  check,
  DEFAULT_LIMITS,
  format,
  freedom,
  moments,
  MOVES,
  sayTrouble,
  slipsOf,
  structuresReport,
  type Checked,
  type Limits,
  type ReportVerdict,
} from '@foregone/engine';
import { onePerformance } from './play.ts';
import { insightInto } from './insight.ts';
import {
  TOPICS,
  type BitOf,
  type Bounds,
  type Digest,
  type Questions,
  type QuestionName,
} from './protocol.ts';
import { understoodIn } from './understood.ts';

/** Bits as they are found, then the answer. */
export type Answering<Name extends QuestionName> = Generator<BitOf<Name>, Questions[Name]>;

type Answers = {
  readonly [Name in QuestionName]: (text: string, about: string) => Questions[Name] | Answering<Name>;
};

// Several questions about one text follow each other, so the last note stays checked, and its desk of freedom open.
let last: Checked | undefined;
let desk: { readonly text: string; readonly found: ReturnType<typeof freedom> } | undefined;

/** Whether the question being answered may go on; what is kept outlives the question it was made for. */
let mayGoOn: (spent: number) => boolean = () => true;
const limits: Limits = { ...DEFAULT_LIMITS, goOn: (spent) => mayGoOn(spent) };

const answers: Answers = {
  check(text) {
    last = check(text, limits);
    return { report: last.report, digest: digestOf(last) };
  },
  moments: (text) => moments(checked(text), limits),
  read(text) {
    // The reading itself is bounded by its own count of work; the proof is stopped before it begins.
    const { note, compiled, report } =
      last?.text === text ? last : check(text, { ...limits, goOn: () => false });
    return { understood: understoodIn(note, compiled), report };
  },
  play(text, about) {
    const { routine } = checked(text).compiled;
    return routine === undefined ? null : onePerformance(routine, text, Number(about) || 0);
  },
  format: (text) => format(text),
  *verdicts(_, about) {
    const little = { ...limits, work: LITTLE_WORK, states: LITTLE_STATES, trials: 0 };
    const verdicts: ReportVerdict[] = [];
    for (const text of listIn(about)) {
      const { verdict } = check(text, little).report;
      verdicts.push(verdict);
      yield verdict;
    }
    return verdicts;
  },
  structures(text) {
    const { decision } = checked(text);
    if (decision === undefined) return [];
    try {
      const moments = structuresReport(decision, text, limits).flatMap((step) => step.moments);
      const all = moments.flatMap(({ certain, needed }) => [
        ...certain,
        ...needed.flatMap((need) => need?.structures ?? []),
      ]);
      return [...new Set(all.map(({ name }) => name))];
    } catch (error) {
      // A note too large for it is found by its other traits.
      if (error instanceof BudgetEnded) return [];
      throw error;
    }
  },
  *freedom(text, about) {
    const found = deskOf(text);
    if (found === null) return '';
    if (!found.ok) return sayTrouble(found.error);
    const ended = yield* found.value.rows(about);
    return ended === null ? '' : sayTrouble(ended);
  },
  *changes(text, about) {
    const found = deskOf(text);
    if (found === null || !found.ok) return '';
    const ended = yield* found.value.alterations(about);
    return ended === null ? '' : sayTrouble(ended);
  },
  breaking(text, about) {
    const found = deskOf(text);
    const [place = '', row = ''] = listIn(about);
    return found?.ok === true ? found.value.failure(place, row) : null;
  },
  insight(text, about) {
    const topic = TOPICS.find((one) => one === about);
    // The page asks about the topics it was given.
    if (topic === undefined) throw new Error(`no topic ${about}`);
    return insightInto(topic, checked(text), limits);
  },
  *slips(text) {
    const found = slipsOf(checked(text), limits);
    if (found === null) return '';
    if (!found.ok) return sayTrouble(found.error);
    yield* found.value;
    return '';
  },
};

function checked(text: string): Checked {
  if (last?.text !== text) last = check(text, limits);
  return last;
}

function deskOf(text: string): ReturnType<typeof freedom> {
  if (desk?.text !== text) desk = { text, found: freedom(checked(text), limits) };
  return desk.found;
}

function listIn(json: string): readonly string[] {
  const list: unknown = JSON.parse(json);
  return Array.isArray(list) ? list.map(String) : [];
}

/** What one of many texts may cost before it is left undecided. */
const LITTLE_WORK = 400_000;
const LITTLE_STATES = 20_000;

/** What a question is answered with besides its text. */
export interface AnswerOptions {
  readonly bounds: Bounds;
  /** Milliseconds. */
  readonly clock: () => number;
  /** Told the work spent so far, now and then. */
  readonly progress: (spent: number) => void;
  /** See `Request.about`. */
  readonly about: string;
}

/** Answers one question about a note, bit by bit where it is asked for bit by bit. */
export function* answering<Name extends QuestionName>(
  ask: Name,
  text: string,
  { bounds, clock, progress, about }: AnswerOptions,
): Answering<Name> {
  const started = clock();
  let told = started;
  const goOn = (spent: number) => {
    const now = clock();
    if (now - told > PROGRESS_APART) {
      told = now;
      progress(spent);
    }
    return now - started < bounds.time;
  };
  mayGoOn = goOn;
  const found = answers[ask](text, about);
  if (!isBitByBit(found)) return found;
  for (;;) {
    mayGoOn = goOn;
    const next = found.next();
    if (next.done === true) return next.value;
    yield next.value;
  }
}

/** The whole answer at once. */
export function answer<Name extends QuestionName>(
  ask: Name,
  text: string,
  { time }: Bounds,
  clock: () => number,
  progress: (spent: number) => void,
  about = '',
): Questions[Name] {
  const found = answering(ask, text, { bounds: { time }, clock, progress, about });
  for (;;) {
    const next = found.next();
    if (next.done === true) return next.value;
  }
}

function isBitByBit<Name extends QuestionName>(
  found: Questions[Name] | Answering<Name>,
): found is Answering<Name> {
  return typeof found === 'object' && found !== null && Symbol.iterator in found && 'next' in found;
}

/** Milliseconds between two words of progress. */
const PROGRESS_APART = 100;

function digestOf({ note, report, compiled }: Checked): Digest {
  const ids = new Set<string>();
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(walk);
    else if (typeof value === 'object' && value !== null) {
      if ('do' in value && value.do === 'move' && 'move' in value) ids.add(String(value.move));
      else Object.values(value).forEach(walk);
    }
  };
  walk(compiled.routine?.steps);
  return {
    cards: report.coverage?.cards ?? null,
    minutes: note.head.minutes,
    moves: MOVES.filter(({ id }) => ids.has(id)).map(({ title }) => title),
  };
}
