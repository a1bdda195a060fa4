import fc from 'fast-check';
import { attributesOf } from '../src/cards/pack.ts';
import { RANKS, SUITS, printCardName } from '../src/cards/names.ts';
import type { Card } from '../src/cards/card.ts';
import type { Claim, Exit } from '../src/claims/claim.ts';
import type { SlotView } from '../src/claims/formula.ts';
import { SAMPLE_NAMES } from '../src/phrases/blank.ts';
import { BLANKS } from '../src/phrases/blanks.ts';
import { matchPhrase } from '../src/phrases/phrase.ts';
import { tokenize } from '../src/phrases/tokens.ts';
import type { Args, Names } from '../src/phrases/values.ts';
import { layoutOfTable, parseTable, type LaidCard, type Table } from './packets.ts';

/** A table of an example of a claim: as for moves, and `r`, `b` are a red and a black card. */
export function claimTable(text: string): Table {
  const table = parseTable(text);
  const coloured = ({ card, bits }: LaidCard): LaidCard => {
    const colour = card.name === 'r' ? 'red' : card.name === 'b' ? 'black' : undefined;
    return colour === undefined ? { card, bits } : { card: { ...card, attributes: { colour } }, bits };
  };
  return { ...table, piles: new Map([...table.piles].map(([name, cards]) => [name, cards.map(coloured)])) };
}

/** The cards in slot order. */
export function laidCards(table: Table): LaidCard[] {
  return layoutOfTable(table).names.flatMap((name) => [...(table.piles.get(name) ?? [])]);
}

export function exitOf(table: Table, start?: Exit['start']): Exit {
  const lying = Object.fromEntries(
    [...table.piles].map(([name, cards]) => [name, cards.map(({ card }) => card.id)]),
  );
  return {
    layout: layoutOfTable(table),
    numbers: table.numbers,
    cards: laidCards(table).map(({ card }) => card),
    start: start ?? lying,
  };
}

export function slotView(laid: readonly LaidCard[]): SlotView {
  return {
    card(slot) {
      if (laid[slot] === undefined) throw new Error(`no slot ${slot}`);
      return laid[slot].card;
    },
    bit: (slot, bit) => (laid[slot].bits.has(bit) ? 1 : 0),
  };
}

/** Reads a sentence as this claim: every phrase's reading without troubles, defaults filled in. */
export function readClaim(claim: Claim, sentence: string, names: Names = SAMPLE_NAMES): Args[] {
  const tokens = tokenize(sentence);
  return claim.phrases.flatMap((phrase) => {
    const match = matchPhrase(phrase, tokens, names, BLANKS);
    return match === null || match.troubles.length > 0 ? [] : [{ ...claim.defaults, ...match.args }];
  });
}

const PILES = SAMPLE_NAMES.piles;

/** A card with every attribute that the samples of blanks speak of. */
function anyCard(id: number, roll: number): Card {
  const rank = RANKS[[0, 1, 5, 6, 9, 12][roll % 6]];
  const suit = SUITS[Math.floor(roll / 6) % 4];
  const more = Math.floor(roll / 24);
  const own = {
    warm: more % 2 === 0 ? 'yes' : 'no',
    season: more % 3 === 0 ? 'spring' : 'summer',
    weight: (more % 3) + 1,
  };
  const name = more % 7 === 0 ? 'lamp' : printCardName({ rank, suit });
  return { id, name, attributes: { ...attributesOf({ rank, suit }), ...own } };
}

/** Tables with a few piles of a few cards, often alike, and values for the sample numbers. */
export const claimTables: fc.Arbitrary<Table> = fc
  .record({
    sizes: fc.dictionary(fc.constantFrom(...PILES), fc.integer({ min: 1, max: 6 }), {
      minKeys: 1,
      maxKeys: 3,
    }),
    packet: fc.integer({ min: 0, max: 6 }),
    rolls: fc.array(fc.nat({ max: 24 * 42 - 1 }), { minLength: 24, maxLength: 24 }),
    few: fc.integer({ min: 1, max: 24 }),
    bits: fc.array(fc.nat({ max: 15 }), { minLength: 24, maxLength: 24 }),
    n: fc.integer({ min: 0, max: 4 }),
    k: fc.integer({ min: 0, max: 4 }),
  })
  .map(({ sizes, packet, rolls, few, bits, n, k }) => {
    let id = 0;
    const lay = (size: number): LaidCard[] =>
      Array.from({ length: size }, () => {
        const at = id++;
        const set = ['up', 'end'].filter((_, bit) => ((bits[at % few] >> bit) & 1) === 1);
        if (bits[at] > 12) set.push('chosen');
        return { card: anyCard(at, rolls[at % few]), bits: new Set(set) };
      });
    const all = packet > 0 ? { ...sizes, packet } : sizes;
    return {
      piles: new Map(Object.entries(all).map(([name, size]) => [name, lay(size)])),
      numbers: { n, k },
    };
  });

/** Tables of different cards, the 10C and the lamp among them, one of them chosen: for claims about one certain card. */
export const namedTables: fc.Arbitrary<Table> = fc
  .record({
    order: fc.shuffledSubarray([0, 1, 2, 3, 4, 5], { minLength: 2 }),
    split: fc.nat({ max: 6 }),
    chosen: fc.nat({ max: 5 }),
    ups: fc.nat({ max: 63 }),
    n: fc.integer({ min: 0, max: 4 }),
    k: fc.integer({ min: 0, max: 4 }),
  })
  .map(({ order, split, chosen, ups, n, k }) => {
    const names = ['10C', 'lamp', '2S', 'AH', '3D', '4C'];
    const own = { warm: 'yes', season: 'spring', weight: 2 };
    const laid = order.map((id, i): LaidCard => {
      const suit = SUITS[id % 4];
      const rank = id === 0 ? '10' : RANKS[id];
      const bits = [...((ups >> i) & 1 ? ['up'] : []), ...(i === chosen % order.length ? ['chosen'] : [])];
      return {
        card: { id, name: names[id], attributes: { ...attributesOf({ rank, suit }), ...own } },
        bits: new Set(bits),
      };
    });
    const piles = new Map([['packet', laid.slice(split > 3 ? 1 : 0)]]);
    if (split > 3) piles.set('pile 1', laid.slice(0, 1));
    return { piles, numbers: { n, k } };
  });
