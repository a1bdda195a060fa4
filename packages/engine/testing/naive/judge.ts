import type { Trouble } from '../../src/base/diagnostic.ts';
import type { Exit } from '../../src/claims/claim.ts';
import type { Moment } from './machine.ts';
import type { Start } from './starts.ts';
import { layoutOfTable, type Bits } from './table.ts';
import type { Said, SaidAt } from './truth.ts';
import type { Node, Walk } from './walk.ts';

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
export function judge(walks: readonly Walk[], saidAt: SaidAt, bits: Bits): Judged {
  const stuck = walks.flatMap((walk) => walk.stuck.map(({ node }) => node));
  const wrong: Node[] = [];
  let aboutSomething = false;
  let speaks = false;
  for (const walk of walks) {
    const known = new Map<string, Said>();
    for (const node of walk.exits) {
      const exit = exitAt(walk.start, node.moment);
      const key = JSON.stringify([exit.layout, exit.numbers]);
      let said = known.get(key);
      if (said === undefined) {
        const result = saidAt(exit, bits);
        if (!result.ok) return { verdict: 'senseless', trouble: result.error };
        known.set(key, (said = result.value));
      }
      const { table } = node.moment;
      if (!said.vacuous) aboutSomething = true;
      if (!said.vacuous && (said.when === undefined || said.when(table))) speaks = true;
      if (!said.test(table)) wrong.push(node);
    }
  }
  if (stuck.length === 0 && !aboutSomething) return { verdict: 'empty' };
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
