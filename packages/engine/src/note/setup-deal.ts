import { mateOf, mateSuit, type PipCard, type Suit } from '../cards/names.ts';
import { namedOrder, startingWith } from '../cards/stacks.ts';
import { sorted } from './setup-kinds.ts';
import { ranksBetween } from './setup-knowledge.ts';
import type { AttributeValue } from '../cards/card.ts';
import type { CardRef, Mateable, MatesOrder, Test, What } from './setup-syntax.ts';

/**
 * One card to be laid: named, or of a kind. `pair` ties cards of a kind to their mates, counted from 0 within the run; `half` is the second half
 * of a torn card, which is no second card.
 */
export type Dealt = { readonly half?: true } & (
  | { readonly ref: CardRef; readonly facing: 'up' | 'down' | null; readonly end: boolean }
  | {
      readonly ref: null;
      readonly tests: readonly Test[];
      readonly facing: 'up' | 'down' | null;
      readonly pair: number | null;
      readonly free: { readonly attribute: string; readonly values: readonly AttributeValue[] } | null;
    }
);

/** How a run looks up the cards that it only describes. */
export interface Supply {
  readonly pips: (tests: readonly Test[]) => readonly PipCard[];
  /** Takes what no line names. */
  readonly rest: (tests: readonly Test[]) => readonly PipCard[];
}

/** The cards of a run from the top, at most `most` of them. */
export function dealt(what: What, supply: Supply, most: number): Dealt[] {
  switch (what.is) {
    case 'cards':
      return what.cards.map(({ ref, up, end }) => ({ ref, facing: up ? 'up' : null, end }));
    case 'ranks':
      return pips(ranksBetween(what).map((rank) => ({ rank, suit: what.suit })));
    case 'set':
      return pips(supply.pips(what.tests));
    case 'rest':
      return pips(supply.rest(what.tests));
    case 'order': {
      const { order } = namedOrder(what.order);
      return pips((what.start === null ? order : startingWith(order, what.start)).slice(0, what.n));
    }
    case 'copies':
      return row(what.n, most, () => named(what.ref));
    case 'count':
      return row(what.n, most, () => ofKind(what.tests));
    case 'each':
      return row(what.n, most, () => ({
        ...ofKind(what.tests),
        free: { attribute: what.attribute, values: what.values },
      }));
    case 'pattern':
      return row(what.n, most, (k) => {
        const { ref, tests, facing } = what.elements[k % what.elements.length];
        return ref !== null
          ? { ...named(ref), facing }
          : { ...ofKind(sorted([...what.tests, ...tests])), facing };
      });
    case 'mates':
      return withMates(what.base, what.order, most);
  }
}

function row(n: number, most: number, at: (k: number) => Dealt): Dealt[] {
  return Array.from({ length: Math.min(n, most) }, (_, k) => at(k));
}

function pips(cards: readonly PipCard[]): Dealt[] {
  return cards.map((card) => named({ is: 'pip', card }));
}

function named(ref: CardRef): Extract<Dealt, { end: boolean }> {
  return { ref, facing: null, end: false };
}

function ofKind(tests: readonly Test[]): Extract<Dealt, { ref: null }> {
  return { ref: null, tests, facing: null, pair: null, free: null };
}

function withMates(base: Mateable, order: MatesOrder, most: number): Dealt[] {
  const cards = dealt(base, NOTHING, most).map((card, k) =>
    card.ref === null ? { ...card, pair: k } : card,
  );
  if (order === 'torn') return [...cards, ...cards.map((card): Dealt => ({ ...card, half: true }))];
  const mates = cards.map(mate);
  if (order === 'mirror') return [...cards, ...mates.reverse()];
  return order === 'same' ? [...cards, ...mates] : cards.flatMap((card, k) => [card, mates[k]]);
}

// The base of mates is listed or counted; it never asks what else there is.
const NOTHING: Supply = { pips: () => [], rest: () => [] };

function mate(card: Dealt): Dealt {
  if (card.ref === null)
    return {
      ...card,
      tests: card.tests.map((test) =>
        test.attribute === 'suit' ? { attribute: 'suit', value: mateSuit(test.value as Suit) } : test,
      ),
    };
  return card.ref.is === 'pip' ? { ...card, ref: { is: 'pip', card: mateOf(card.ref.card) } } : card;
}
