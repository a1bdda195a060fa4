import fc from 'fast-check';
import type { Ending, Routine, Sentence } from '../../src/routine/routine.ts';
import { judge, type Judged } from '../naive/judge.ts';
import { startsOf } from '../naive/starts.ts';
import { Bits } from '../naive/table.ts';
import { startMoment, TooBig, walkAll, type Walk } from '../naive/walk.ts';
import { sentenceAt } from '../naive/truth.ts';
import { Dice } from './dice.ts';
import { Maker } from './routines.ts';
import { seenIn, type Scope } from './scope.ts';
import { claimsIn, makeSentence } from './sentences.ts';
import { makeSetUp } from './set-ups.ts';

/** A small routine, everything that can happen in it, and the verdict on every sentence of its ending. */
export interface Case {
  readonly routine: Routine;
  readonly walks: readonly Walk[];
  readonly bits: Bits;
  readonly judged: readonly Judged[];
}

export const MOST_NODES = 1000;
const CANDIDATES = 12;

/** Decisions enough for any case. */
export const rolls: fc.Arbitrary<number[]> = fc.noBias(
  fc.array(fc.nat({ max: 65_535 }), { minLength: 400, maxLength: 700, size: 'max' }),
);

/** The case that these decisions make, or null when it has too many tables. */
export function makeCase(list: readonly number[]): Case | null {
  const dice = new Dice(list);
  const bits = new Bits();
  const { cards, setUp } = makeSetUp(dice);
  const bare: Routine = { title: '', cards, setUp, steps: [], endings: [] };
  const start = startMoment(bare, startsOf(bare)[0]);
  const piles = start.table.names;
  const scope: Scope = { ...seenIn(start.table), piles, numbers: [], marks: [], that: null, cards };
  const length = 1 + dice.weighted([15, 40, 30, 15]);
  const made = new Maker(dice, bits).sequence(length, { scope, moment: { ...start, frames: [] } }, 2);
  const working: Routine = { ...bare, steps: made.steps };
  let walks: Walk[];
  try {
    walks = walkAll(working, MOST_NODES, bits);
  } catch (error) {
    if (error instanceof TooBig) return null;
    throw error;
  }
  const endings = makeEndings(walks, made.scope, bits, dice);
  const routine: Routine = { ...working, endings: endings.map(({ sentence }, i) => ending(sentence, i)) };
  return { routine, walks, bits, judged: endings.map(({ judged }) => judged) };
}

function ending(sentence: Sentence, i: number): Ending {
  return { text: `sentence ${i + 1}`, range: { from: i, to: i }, sentence };
}

interface Candidate {
  readonly sentence: Sentence;
  readonly judged: Judged;
}

/** Sentences chosen by what is true of the walk: some that hold, some that fail, some as they come. */
function makeEndings(walks: readonly Walk[], scope: Scope, bits: Bits, dice: Dice): Candidate[] {
  const wanted: (Judged['verdict'] | 'any')[] = ['proved', 'refuted', dice.chance(60) ? 'proved' : 'any'];
  const chosen: Candidate[] = [];
  const open = walks.some(({ start }) => start.cards !== walks[0].start.cards);
  for (let i = 0; i < CANDIDATES && wanted.length > 0; i++) {
    const sentence = makeSentence(scope, dice);
    if (sentence === null) continue;
    // What "each value" ranges over is not settled while the values are open.
    if (open && claimsIn(sentence).includes('one-of-each')) continue;
    const judged = judge(walks, sentenceAt(sentence), bits);
    const at = wanted.findIndex((verdict) => verdict === judged.verdict || verdict === 'any');
    if (at < 0) continue;
    wanted.splice(at, 1);
    chosen.push({ sentence, judged });
  }
  return chosen;
}
