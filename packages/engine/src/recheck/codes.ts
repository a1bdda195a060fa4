import type { Card } from '../cards/card.ts';
import type { Graph } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import { applyOps } from '../routine/table.ts';
import type { Effect } from '../pictures/effect.ts';

/** What a proof tells cards apart by. */
export interface ToldApart {
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
}

/** Tables as lists of small numbers: the class of each card, and those of its bits that matter. */
export interface Codes {
  of(table: TableSlots): number[];
  table(codes: readonly number[]): TableSlots;
  after(codes: readonly number[], effect: Effect): number[];
}

export function codesFor(graph: Graph, universe: readonly Card[], told: ToldApart): Codes {
  const names = [...told.attributes].sort();
  const bits = [...told.bits].sort().map((bit) => graph.bits.indexOf(bit));
  const settings = 1 << bits.length;
  const classes = new Map<string, number>();
  const first: Card[] = [];
  const classOf = new Map<Card, number>();
  for (const card of universe) {
    const key = names
      .map((name) =>
        name === 'id' ? card.id : name === 'name' ? card.name : (card.attributes[name] ?? '\u0000'),
      )
      .map((value) => `${typeof value}${value}`)
      .join('|');
    if (!classes.has(key)) classes.set(key, first.push(card) - 1);
    classOf.set(card, classes.get(key) as number);
  }
  const code = (card: Card, word: number): number =>
    (classOf.get(card) ?? 0) * settings + bits.reduce((s, kind, i) => s | (((word >>> kind) & 1) << i), 0);
  const wordOf = (c: number): number =>
    bits.reduce((w, kind, i) => w | ((((c % settings) >> i) & 1) << kind), 0);
  const cardOf = (c: number): Card => first[Math.floor(c / settings)];
  return {
    of: ({ cards, bits: words }) => cards.map((card, slot) => code(card, words[slot])),
    table: (codes) => ({ cards: codes.map(cardOf), bits: codes.map(wordOf) }),
    after: (codes, { from, ops }) =>
      Array.from(from, (old, slot) => {
        const op = ops === null ? 0 : ops[slot];
        return op === 0 ? codes[old] : code(cardOf(codes[old]), applyOps(wordOf(codes[old]), op));
      }),
  };
}
