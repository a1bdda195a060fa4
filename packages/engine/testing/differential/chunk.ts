import fc from 'fast-check';
import { CLAIMS } from '../../src/claims/index.ts';
import { MOVES } from '../../src/moves/index.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Step } from '../../src/routine/routine.ts';
import { makeCase, rolls, type Case } from './cases.ts';
import { compare, isEquationsEverywhere, written } from './compare.ts';
import { claimsIn } from './sentences.ts';

/** Enough for everything that has no more tables than the walk visits. */
const LIMITS = { ...DEFAULT_LIMITS, work: 5_000_000, states: 200_000, trials: 20 };

/** Routines in all chunks together, and how often each move and each ending must have been among them. */
export const ROUTINES = 20_000;
const TIMES_EACH = 200;

/** What a chunk has tried. */
interface Tally {
  skipped: number;
  verdicts: Map<string, number>;
  moves: Map<string, number>;
  claims: Map<string, number>;
}

const add = (counts: Map<string, number>, name: string): unknown =>
  counts.set(name, (counts.get(name) ?? 0) + 1);

/**
 * The engine against the walk on random routines. Every sentence gets the same verdict; a failing performance is done again by the
 * walk and costs what the cheapest does; equations without looks are never settled by listing tables. Throws at the first
 * difference; returns what there was too little of to be worth much.
 */
export function tryChunk(seed: number, runs: number): string[] {
  const tally: Tally = { skipped: 0, verdicts: new Map(), moves: new Map(), claims: new Map() };
  fc.assert(
    fc.property(rolls, (list) => {
      const made = makeCase(list);
      if (made === null) tally.skipped++;
      fc.pre(made !== null);
      try {
        agree(made);
      } catch (error) {
        throw new Error(`${String(error)}\n${written(made.routine)}`, { cause: error });
      }
      count(made, tally);
    }),
    { seed, numRuns: runs },
  );
  const complaints: string[] = [];
  for (const verdict of ['proved', 'refuted']) {
    const share = (tally.verdicts.get(verdict) ?? 0) / total(tally.verdicts);
    if (share < 0.25) complaints.push(`${verdict}: ${share}`);
  }
  // Routines with too many tables for the walk; they were not counted as runs.
  if (tally.skipped > runs / 8) complaints.push(`skipped: ${tally.skipped} beside ${runs}`);
  const least = (TIMES_EACH * runs) / ROUTINES;
  for (const [list, counts] of [
    [MOVES, tally.moves],
    [CLAIMS, tally.claims],
  ] as const)
    for (const { id } of list) {
      const times = counts.get(id) ?? 0;
      if (times < least) complaints.push(`${id}: ${times}`);
    }
  return complaints;
}

function total(counts: Map<string, number>): number {
  return [...counts.values()].reduce((sum, n) => sum + n, 0);
}

function agree(made: Case): void {
  const decision = decide(made.routine, LIMITS);
  const looks = made.routine.steps.some(looksIn);
  made.routine.endings.forEach(({ sentence }, i) => {
    const decided = decision.sentences[i];
    compare(made, i, decided);
    // Whether a condition is ever met is more than an equation can say.
    const exact = decided.method.startsWith('exact');
    if (exact && !looks && sentence.says !== 'if' && isEquationsEverywhere(made, sentence))
      throw new Error(`equations were settled by listing tables: sentence ${i + 1}`);
  });
}

function looksIn(step: Step): boolean {
  switch (step.do) {
    case 'move':
      return MOVES.find(({ id }) => id === step.move)?.looks !== undefined;
    case 'repeat':
    case 'each':
      return step.body.some(looksIn);
    case 'either':
      return step.branches.some((branch) => branch.some(looksIn));
    case 'if':
      return [...step.then, ...step.otherwise].some(looksIn);
  }
}

/** Each move and each claim once for a routine, however often it is in it. */
function count({ routine, judged }: Case, tally: Tally): void {
  for (const id of new Set(routine.steps.flatMap(movesIn))) add(tally.moves, id);
  for (const id of new Set(routine.endings.flatMap(({ sentence }) => claimsIn(sentence))))
    add(tally.claims, id);
  for (const { verdict } of judged) if (verdict !== 'senseless') add(tally.verdicts, verdict);
}

function movesIn(step: Step): string[] {
  switch (step.do) {
    case 'move':
      return [step.move];
    case 'repeat':
    case 'each':
      return step.body.flatMap(movesIn);
    case 'either':
      return step.branches.flat().flatMap(movesIn);
    case 'if':
      return [...step.then, ...step.otherwise].flatMap(movesIn);
  }
}
