import { RANKS, sameCard, SUITS, type PipCard, type Rank, type Suit } from './names.ts';

/** An order of the whole pack that people know by name, from the top of the face-down pack. */
export interface NamedOrder {
  readonly id: 'new pack' | 'Si Stebbins' | 'Eight Kings';
  /** As a set-up writes it. */
  readonly title: string;
  readonly order: readonly PipCard[];
  /** How the order goes, in a sentence; where makers or books differ, what was taken. */
  readonly convention: string;
}

function suit(name: Suit, down = false): PipCard[] {
  const cards = RANKS.map((rank) => ({ rank, suit: name }));
  return down ? cards.reverse() : cards;
}

/** Values follow the cycle, suits go clubs, hearts, spades, diamonds; both wrap, so that any card can be the first. */
function cyclic(values: readonly Rank[]): PipCard[] {
  return Array.from({ length: 52 }, (_, p) => ({ rank: values[p % 13], suit: SUITS[p % 4] }));
}

const EVERY_THIRD = RANKS.map((_, p) => RANKS[(3 * p) % 13]);
const EIGHT_KINGS: readonly Rank[] = ['8', 'K', '3', '10', '2', '7', '9', '5', 'Q', '4', 'A', '6', 'J'];

export const NAMED_ORDERS: readonly NamedOrder[] = [
  {
    id: 'new pack',
    title: 'new pack order',
    order: [...suit('hearts'), ...suit('clubs'), ...suit('diamonds', true), ...suit('spades', true)],
    convention:
      'from the top of the face-down pack: ace to king of hearts, ace to king of clubs, king to ace of diamonds, king to ace of spades; other makers order their packs differently',
  },
  {
    id: 'Si Stebbins',
    title: 'Si Stebbins order',
    order: cyclic(EVERY_THIRD),
    convention:
      'each card three higher than the one before, suits in the order clubs, hearts, spades, diamonds',
  },
  {
    id: 'Eight Kings',
    title: 'Eight Kings order',
    order: cyclic(EIGHT_KINGS),
    convention:
      'values 8 K 3 10 2 7 9 5 Q 4 A 6 J over and over, suits in the order clubs, hearts, spades, diamonds',
  },
];

export function namedOrder(id: NamedOrder['id']): NamedOrder {
  const found = NAMED_ORDERS.find((order) => order.id === id);
  // The type lists exactly the orders above.
  if (found === undefined) throw new Error(`no order ${id}`);
  return found;
}

/** The pack as it comes from the box (USPCC custom), jokers and advertisements left out. */
export function newPackOrder(): readonly PipCard[] {
  return namedOrder('new pack').order;
}

/** The order cut so that `start` comes first. */
export function startingWith(order: readonly PipCard[], start: PipCard): PipCard[] {
  const at = Math.max(
    0,
    order.findIndex((card) => sameCard(card, start)),
  );
  return [...order.slice(at), ...order.slice(0, at)];
}
