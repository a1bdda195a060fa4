import { check, DEFAULT_LIMITS, moments, MOVES, type Checked, type Limits } from '@foregone/engine';
import type { Bounds, Digest, Questions, QuestionName } from './protocol.ts';

type Answers = {
  readonly [Name in QuestionName]: (text: string, limits: Limits) => Questions[Name];
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
};

/**
 * Answers one question about a note.
 *
 * @param clock milliseconds
 * @param progress told the work spent so far, now and then
 */
export function answer<Name extends QuestionName>(
  ask: Name,
  text: string,
  { time }: Bounds,
  clock: () => number,
  progress: (spent: number) => void,
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
  return answers[ask](text, { ...DEFAULT_LIMITS, goOn });
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
