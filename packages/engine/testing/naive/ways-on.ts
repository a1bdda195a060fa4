import type { Trouble } from '../../src/base/diagnostic.ts';
import type { Card } from '../../src/cards/card.ts';
import { moveById } from '../../src/moves/index.ts';
import { isStuck, START, type Key } from '../../src/moves/move.ts';
import type { MoveStep } from '../../src/routine/routine.ts';
import { settle, past, type Moment } from './machine.ts';
import { act, layoutOfTable, seenTable, type Bits } from './table.ts';

/** One thing that can happen next. */
export interface WayOn {
  readonly key: Key;
  readonly off: 0 | 1;
  /** The option begins a step of the working. */
  readonly begins: boolean;
  /** It is an option of a move; false for going round again or not, and for either / or. */
  readonly option: boolean;
  readonly to: Moment;
}

export type Next =
  | { readonly is: 'exit' }
  | { readonly is: 'stuck'; readonly trouble: Trouble }
  | { readonly is: 'ways'; readonly ways: readonly WayOn[] };

/** Everything that can happen at a moment, in the order in which moves list it. */
export function nextOf(at: Moment, cards: readonly Card[], bits: Bits): Next {
  const { moment, decision } = settle(at);
  switch (decision.decide) {
    case 'nothing: it is over':
      return { is: 'exit' };
    case 'way':
      return { is: 'ways', ways: decision.ways.map((way) => ({ ...way, begins: false, option: false })) };
    case 'move':
      return waysOfMove(moment, decision.step, cards, bits);
  }
}

function waysOfMove(moment: Moment, step: MoveStep, cards: readonly Card[], bits: Bits): Next {
  const move = moveById(step.move);
  const { table, numbers, phase } = moment;
  const blind = { layout: layoutOfTable(table), phase, numbers, seen: undefined };
  const seen = move.looks?.observe(step.args, seenTable(table, cards, bits), blind);
  const options = move.options(step.args, { ...blind, seen });
  if (isStuck(options)) return { is: 'stuck', trouble: options.stuck };
  if (options.length === 0) throw new Error(`${step.move} neither goes on nor is stuck`);
  const ways = options.map((option): WayOn => {
    const after = act(table, option.actions, bits);
    const fixed = option.set === undefined ? numbers : { ...numbers, ...option.set };
    const to =
      option.next === null
        ? past(moment, after, fixed)
        : { ...moment, table: after, numbers: fixed, phase: option.next };
    return { key: option.key, off: option.off, begins: phase === START, option: true, to };
  });
  return { is: 'ways', ways };
}
