import type { Card } from '../../src/cards/card.ts';
import type { Freedom, Lying, Routine } from '../../src/routine/routine.ts';
import { lying, tableOf, type Table } from './table.ts';

/** One way of filling in everything the set-up leaves open. */
export interface Start {
  readonly cards: readonly Card[];
  readonly table: Table;
  /** Pile to card ids, top first, as they lie in this start; without piles whose order is left open. */
  readonly order: Readonly<Record<string, readonly number[]>>;
}

interface Filling {
  readonly cards: readonly Card[];
  readonly piles: readonly { readonly name: string; readonly cards: readonly Lying[] }[];
}

/** Every start the set-up allows, the freedoms filled in one after the other in every way. */
export function startsOf(routine: Pick<Routine, 'cards' | 'setUp'>): Start[] {
  let fillings: Filling[] = [{ cards: routine.cards, piles: routine.setUp.piles }];
  for (const freedom of routine.setUp.freedoms)
    fillings = fillings.flatMap((filling) => fill(filling, freedom));
  return fillings.map(({ cards, piles }) => ({
    cards,
    table: tableOf(piles.map((pile) => [pile.name, pile.cards.map((c) => lying(c.card, c.up, c.end))])),
    order: Object.fromEntries(
      piles
        .filter(({ name }) => !routine.setUp.freedoms.some((f) => f.free === 'order' && f.pile === name))
        .map((pile) => [pile.name, pile.cards.map((c) => c.card)]),
    ),
  }));
}

function fill(filling: Filling, freedom: Freedom): Filling[] {
  if (freedom.free === 'attribute') {
    let ways: Card[][] = [[...filling.cards]];
    for (const card of freedom.cards)
      ways = ways.flatMap((cards) =>
        freedom.values.map((value) => {
          const changed = [...cards];
          const attributes = { ...cards[card].attributes, [freedom.attribute]: value };
          changed[card] = { ...cards[card], attributes };
          return changed;
        }),
      );
    return ways.map((cards) => ({ ...filling, cards }));
  }
  return filling.piles.flatMap((pile, at) => {
    if (pile.name !== freedom.pile) return [];
    const before = pile.cards.slice(0, freedom.from);
    const among = pile.cards.slice(freedom.from, freedom.from + freedom.count);
    const after = pile.cards.slice(freedom.from + freedom.count);
    const ways = freedom.free === 'order' ? orders(among) : facings(among);
    return ways.map((way) => ({
      ...filling,
      piles: filling.piles.map((p, i) => (i === at ? { ...p, cards: [...before, ...way, ...after] } : p)),
    }));
  });
}

function orders<T>(list: readonly T[]): T[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((first, i) => orders(list.filter((_, k) => k !== i)).map((rest) => [first, ...rest]));
}

function facings(list: readonly Lying[]): Lying[][] {
  let ways: Lying[][] = [[]];
  for (const card of list)
    ways = ways.flatMap((way) => [
      [...way, { ...card, up: 0 }],
      [...way, { ...card, up: 1 }],
    ]);
  return ways;
}
