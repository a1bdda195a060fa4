import type { Card } from '../cards/card.ts';
import { layoutOf } from '../pictures/layout.ts';
import type { Routine } from './routine.ts';

/** A concrete table: the card in each slot and its bits, bit k of the word for bits of kind k. */
export interface TableSlots {
  readonly cards: readonly Card[];
  readonly bits: ArrayLike<number>;
}

/** A starting table, with any free attributes of its cards filled in. */
export type StartTable = TableSlots;

/** Every way a card may turn out when attributes are left open: the card itself where none is. */
export interface Starts {
  readonly base: StartTable;
  /** All cards as they may be; space and classes are made over these. */
  readonly universe: readonly Card[];
  /** The base and every table that differs from it in one card: equations that hold on these hold on all. */
  readonly spanning: readonly StartTable[];
  /** How many there are, before order and faces are filled in. */
  readonly count: bigint;
  all(): Generator<StartTable>;
  /** One of them, each open attribute filled in at random. */
  random(random: () => number): StartTable;
}

export function startsOf(routine: Routine): Starts {
  const ways = new Map<number, Card[]>();
  for (const card of routine.cards) {
    let found: Card[] = [card];
    for (const freedom of routine.setUp.freedoms)
      if (freedom.free === 'attribute' && freedom.cards.includes(card.id))
        found = found.flatMap((c) =>
          freedom.values.map((value) => ({
            ...c,
            attributes: { ...c.attributes, [freedom.attribute]: value },
          })),
        );
    ways.set(card.id, found);
  }
  const layout = layoutOf(routine.setUp.piles.map((pile) => [pile.name, pile.cards.length] as const));
  const lying = layout.names.flatMap((name) => {
    const pile = routine.setUp.piles.find((p) => p.name === name);
    return pile === undefined ? [] : pile.cards;
  });
  const byId = new Map(routine.cards.map((card) => [card.id, card]));
  const waysAt = lying.map((l) => ways.get(byId.get(l.card)?.id ?? l.card) ?? []);
  const bits = Uint32Array.from(lying, (l) => l.up | (l.end << 1));
  const base: StartTable = { cards: waysAt.map((w) => w[0]), bits };
  const spanning = [base];
  waysAt.forEach((w, slot) => {
    for (const other of w.slice(1))
      spanning.push({ cards: base.cards.map((c, s) => (s === slot ? other : c)), bits });
  });
  return {
    base,
    universe: [...ways.values()].flat(),
    spanning,
    count: waysAt.reduce((product, w) => product * BigInt(w.length), 1n),
    random: (random) => ({ cards: waysAt.map((w) => w[Math.floor(random() * w.length)]), bits }),
    *all() {
      const choice = new Array<number>(waysAt.length).fill(0);
      for (;;) {
        yield { cards: choice.map((c, slot) => waysAt[slot][c]), bits };
        let slot = 0;
        while (slot < choice.length && ++choice[slot] === waysAt[slot].length) choice[slot++] = 0;
        if (slot === choice.length) return;
      }
    },
  };
}

/** The cards of each pile at the start, top first, where the set-up settles their order. */
export function startingOrders(routine: Routine): Record<string, readonly number[]> {
  const { piles, freedoms } = routine.setUp;
  const open = new Set(freedoms.flatMap((freedom) => (freedom.free === 'order' ? [freedom.pile] : [])));
  return Object.fromEntries(
    piles
      .filter((pile) => !open.has(pile.name))
      .map((pile) => [pile.name, pile.cards.map((lying) => lying.card)]),
  );
}
