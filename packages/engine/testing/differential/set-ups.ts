import type { Card } from '../../src/cards/card.ts';
import { parseTable } from '../packets.ts';
import type { Freedom, SetUp } from '../../src/routine/routine.ts';
import type { Dice } from './dice.ts';

const PIPS = ['AH', '2S', '3D', '4C', '2H', 'AS', 'KH', 'QS', '3C', 'AD', '4H', 'KC', '10C'];

/**
 * Two to seven cards in one to three piles, some alike, some of which little is known, facing anyhow; now and then a layout, or
 * a dozen cards for what needs that many.
 */
export function makeSetUp(dice: Dice): { cards: Card[]; setUp: SetUp } {
  const size = [4, 2, 3, 5, 6, 7, 12, 13][dice.weighted([30, 8, 24, 20, 12, 6, 3, 1])];
  const cards = makeCards(size, dice);
  const faces = dice.weighted([45, 25, 15, 15]);
  const ends = dice.weighted([80, 20]);
  const lying = cards.map((card, i) => ({
    card: card.id,
    up: bit([0, dice.below(2), i % 2, i === 0 ? 1 : 0][faces]),
    end: bit(ends === 0 ? 0 : dice.below(2)),
  }));
  const others = [
    [],
    ['pile 1'],
    ['pile 1', 'pile 2'],
    ['left'],
    ['table', 'pile 2'],
    ['cell 1 1', 'cell 1 2', 'cell 2 1', 'cell 2 2'],
    ['heap 1', 'heap 2', 'heap 3'],
  ][dice.weighted([58, 10, 10, 6, 4, 8, 4])];
  const piles = [{ name: 'packet', cards: lying }];
  for (const name of others) {
    const from = piles[0].cards;
    const most = from.length - 1;
    if (most < 1) break;
    const count = 1 + dice.below(Math.min(3, most));
    piles[0] = { name: 'packet', cards: from.slice(count) };
    piles.push({ name, cards: from.slice(0, count) });
  }
  return { cards, setUp: { piles, freedoms: makeFreedoms(piles, cards, dice) } };
}

function bit(n: number): 0 | 1 {
  return n === 0 ? 0 : 1;
}

function makeCards(size: number, dice: Dice): Card[] {
  const sort = dice.weighted([50, 18, 14, 18]);
  return Array.from({ length: size }, (_, id): Card => {
    switch (sort) {
      case 1: {
        // Only the colour is known; many are alike.
        const colour = dice.below(2) === 0 ? 'red' : 'black';
        return { id, name: `a ${colour} card`, attributes: { colour } };
      }
      case 2: {
        const value = 1 + dice.below(3);
        return { id, name: `card ${value}`, attributes: { value, warm: dice.below(2) === 0 ? 'yes' : 'no' } };
      }
      case 3: {
        // Cards of one's own have short names, good for spelling.
        if (dice.chance(60)) return { id, name: dice.of(['lamp', 'sea', 'ox']), attributes: { warm: 'yes' } };
        break;
      }
      default:
    }
    const name = dice.of(PIPS);
    const attributes = parseTable(name).piles.get('packet')![0].card.attributes;
    return { id, name, attributes };
  });
}

function makeFreedoms(
  piles: readonly { readonly name: string; readonly cards: readonly unknown[] }[],
  cards: readonly Card[],
  dice: Dice,
): Freedom[] {
  const pile = (): { name: string; from: number; count: number } => {
    const { name, cards: lie } = dice.of(piles);
    const count = Math.min(lie.length, 2 + dice.below(2));
    return { name, count, from: dice.below(lie.length - count + 1) };
  };
  switch (dice.weighted([70, 10, 10, 6, 4])) {
    case 1: {
      const { name, from, count } = pile();
      return [{ free: 'order', pile: name, from, count }];
    }
    case 2: {
      const { name, from, count } = pile();
      return [{ free: 'faces', pile: name, from, count }];
    }
    case 3: {
      const { name, from, count } = pile();
      return [
        { free: 'order', pile: name, from, count },
        { free: 'faces', pile: name, from, count },
      ];
    }
    case 4: {
      const first = dice.below(cards.length);
      const some = [first, (first + 1) % cards.length].slice(0, 1 + dice.below(2));
      const free = dice.chance(60)
        ? { attribute: 'colour', values: ['red', 'black'] }
        : { attribute: 'value', values: [1, 2, 3] };
      return [{ free: 'attribute', ...free, cards: some }];
    }
    default:
      return [];
  }
}
