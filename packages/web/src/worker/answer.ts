import { check, DEFAULT_LIMITS, format, moments, MOVES, type Checked, type Limits } from '@foregone/engine';
import { onePerformance } from './play.ts';
import type { Bounds, Digest, Questions, QuestionName } from './protocol.ts';
import { understoodIn } from './understood.ts';

type Answers = {
  readonly [Name in QuestionName]: (text: string, limits: Limits, about: string) => Questions[Name];
};

// Several questions about one text follow each other, so the last note stays checked.
let last: Checked | undefined;

const answers: Answers = {
  check(text, limits) {
    last = check(text, limits);
    return { report: last.report, digest: digestOf(last) };
  },
  moments(text, limits) {
    if (last?.text !== text) last = check(text, limits);
    return moments(last, limits);
  },
  read(text, limits) {
    // The reading itself is bounded by its own count of work; the proof is stopped before it begins.
    const { note, compiled, report } =
      last?.text === text ? last : check(text, { ...limits, goOn: () => false });
    return { understood: understoodIn(note, compiled), report };
  },
  play(text, limits, about) {
    if (last?.text !== text) last = check(text, limits);
    const { routine } = last.compiled;
    return routine === undefined ? null : onePerformance(routine, text, Number(about) || 0);
  },
  format: (text) => format(text),
  verdicts(_, limits, about) {
    const texts: unknown = JSON.parse(about);
    const little = { ...limits, work: LITTLE_WORK, states: LITTLE_STATES, trials: 0 };
    return (Array.isArray(texts) ? texts : []).map((text) => check(String(text), little).report.verdict);
  },
};

/** What one of many texts may cost before it is left undecided. */
const LITTLE_WORK = 400_000;
const LITTLE_STATES = 20_000;

/**
 * Answers one question about a note.
 *
 * @param clock milliseconds
 * @param progress told the work spent so far, now and then
 * @param about see `Request.about`
 */
export function answer<Name extends QuestionName>(
  ask: Name,
  text: string,
  { time }: Bounds,
  clock: () => number,
  progress: (spent: number) => void,
  about = '',
): Questions[Name] {
  const started = clock();
  let told = started;
  const goOn = (spent: number) => {
    const now = clock();
    if (now - told > PROGRESS_APART) {
      told = now;
      progress(spent);
    }
    return now - started < time;
  };
  return answers[ask](text, { ...DEFAULT_LIMITS, goOn }, about);
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
