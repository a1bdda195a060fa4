import type { Amount, NumberRef, PileRef } from '../phrases/values.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf, type Layout } from '../pictures/layout.ts';
import type { Option } from './move.ts';

/** Small turns of hand that many moves share. */

/** How a sentence speaks of a whole pile: `the packet`, `all the cards of pile 2`; `the cards` are those of the packet. */
export const PILE = '({pile:pile}|all of {pile:pile}|[all] the cards of {pile:pile}|[all] the cards)';

/** A way on without its price. */
export type Way = Omit<Option, 'off'>;

/** The beginning of a move: the first way is the plain one, every other is a decision. */
export function decided(ways: readonly Way[]): Option[] {
  return ways.map((way, i) => ({ ...way, off: i === 0 ? 0 : 1 }));
}

/** Later moments of one mix: the decision to mix was counted when it began. */
export function within(ways: readonly Way[]): Option[] {
  return ways.map((way) => ({ ...way, off: 0 }));
}

/** All of a pile, as it is, on top of another; nothing to do when it has no cards or is that pile. */
export function layOn(from: string, count: number, to: string): Action[] {
  return from === to || count === 0 ? [] : [carry(from, 0, count, to, 0)];
}

/** The top cards one by one onto another pile, which reverses them; onto the same pile they go by way of the table. */
export function dealSingly(from: string, count: number, to: string): Action[] {
  return bringOver(from, count, to, true);
}

/** The top cards as one group onto another pile, their order kept. */
export function pushOff(from: string, count: number, to: string): Action[] {
  return from === to ? [] : bringOver(from, count, to, false);
}

function bringOver(from: string, count: number, to: string, reversed: boolean): Action[] {
  if (count === 0) return [];
  if (from !== to) return [carry(from, 0, count, to, 0, reversed ? { reversed } : {})];
  return [carry(from, 0, count, '~dealt', 0, { reversed }), carry('~dealt', 0, count, to, 0)];
}

export interface NumberedPile {
  readonly name: string;
  readonly n: number;
  readonly size: number;
}

/** The piles `pile 1`, `pile 2`, ... that have cards, in order of their numbers. */
export function numberedPiles(stem: string, layout: Layout): NumberedPile[] {
  const found: NumberedPile[] = [];
  for (const name of layout.names) {
    const tail = name.startsWith(`${stem} `) ? name.slice(stem.length + 1) : '';
    if (/^[1-9]\d*$/.test(tail)) found.push({ name, n: Number(tail), size: sizeOf(layout, name) });
  }
  return found.sort((a, b) => a.n - b.n);
}

/** `piles` to `pile`: the noun of a sentence to the name of its piles. */
export type Plural = 'piles' | 'heaps' | 'hands';

export function stemOf(plural: Plural): string {
  return plural.slice(0, -1);
}

/** The names among these that a sentence can bring into being; a pile whose number is still to be named exists already. */
export function named(...refs: readonly (PileRef | undefined)[]): string[] {
  return refs.filter((ref) => typeof ref === 'string');
}

/** The greatest number an amount can stand for whatever the cards, or undefined when that is open. */
export function greatest(amount: Amount): number | undefined {
  const literal = (ref: NumberRef): number | undefined => (typeof ref === 'number' ? ref : undefined);
  switch (amount.of) {
    case 'exactly':
    case 'at most':
      return literal(amount.n);
    case 'range':
      return literal(amount.to);
    case 'any':
    case 'at least':
    case 'multiple':
    case 'half':
      return undefined;
  }
}

export function cardCount(n: number): string {
  return n === 1 ? '1 card' : `${n} cards`;
}

/** The choice of a number given back as a number the note can use. */
export function called(name: string | undefined, n: number): Pick<Option, 'set'> {
  return name === undefined ? {} : { set: { [name]: n } };
}
