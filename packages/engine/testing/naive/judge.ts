import type { Trouble } from '../../src/base/diagnostic.ts';
import { good, type Result } from '../../src/base/result.ts';
import type { Exit, Meaning } from '../../src/claims/claim.ts';
import { holds, type Formula } from '../../src/claims/formula.ts';
import { meaningOf } from '../../src/claims/sentence.ts';
import type { Sentence } from '../../src/routine/routine.ts';
import type { Moment } from './machine.ts';
import type { Start } from './starts.ts';
import { layoutOfTable, slotsOfTable, type Bits } from './table.ts';
import type { Node, Walk } from './walk.ts';

/** What a sentence says where a performance ends; of "if ..., then ..." also the condition alone. */
export type MeaningAt = (exit: Exit) => Result<Meaning & { readonly when?: Formula }, Trouble>;

export function sentenceAt(sentence: Sentence): MeaningAt {
  return (exit) => {
    const meaning = meaningOf(sentence, exit);
    if (!meaning.ok || sentence.says !== 'if') return meaning;
    const when = meaningOf(sentence.when, exit);
    return when.ok ? good({ ...meaning.value, when: when.value.formula }) : when;
  };
}

export type Judged =
  | { readonly verdict: 'proved' }
  | { readonly verdict: 'empty' }
  /** The sentence makes no sense at some exit: a fault of the note. */
  | { readonly verdict: 'senseless'; readonly trouble: Trouble }
  | {
      readonly verdict: 'refuted';
      /** Least cost of a failing performance, packed. */
      readonly cost: number;
      /** Performances of this cost that get stuck, and some that end with the sentence false. */
      readonly stuck: readonly Node[];
      readonly wrong: readonly Node[];
    };

/**
 * The verdict on one sentence: every exit of every start is looked at. A performance that gets stuck fails; where nothing
 * ends, or the sentence speaks of nothing at every end, or its condition is never met, it is empty.
 */
export function judge(walks: readonly Walk[], meaningAt: MeaningAt, bits: Bits): Judged {
  const stuck = walks.flatMap((walk) => walk.stuck.map(({ node }) => node));
  const wrong: Node[] = [];
  let speaks = false;
  for (const walk of walks) {
    const known = new Map<string, Meaning & { readonly when?: Formula }>();
    for (const node of walk.exits) {
      const exit = exitAt(walk.start, node.moment);
      const key = JSON.stringify([exit.layout, exit.numbers]);
      let meaning = known.get(key);
      if (meaning === undefined) {
        const result = meaningAt(exit);
        if (!result.ok) return { verdict: 'senseless', trouble: result.error };
        known.set(key, (meaning = result.value));
      }
      const table = slotsOfTable(node.moment.table, walk.start.cards, bits);
      if (meaning.vacuous !== true && (meaning.when === undefined || holds(meaning.when, table)))
        speaks = true;
      if (!holds(meaning.formula, table)) wrong.push(node);
    }
  }
  const cost = Math.min(...stuck.map((node) => node.cost), ...wrong.map((node) => node.cost));
  if (cost < Infinity)
    return {
      verdict: 'refuted',
      cost,
      stuck: stuck.filter((node) => node.cost === cost),
      wrong: wrong.filter((node) => node.cost === cost),
    };
  return { verdict: speaks ? 'proved' : 'empty' };
}

/** What is known of a table where a performance ends. */
export function exitAt(start: Start, moment: Moment): Exit {
  return {
    layout: layoutOfTable(moment.table),
    numbers: moment.numbers,
    cards: start.cards,
    start: start.order,
  };
}
