import type { Card } from '../cards/card.ts';
import type { Graph } from '../routine/graph.ts';
import { applyOps } from '../routine/table.ts';

/**
 * Cards that agree in everything anybody looks at are one and the same for an exact search: a slot then holds a small code,
 * the card's class and the bits that matter.
 */
export interface Classes {
  readonly bits: readonly number[];
  /** One card for each class. */
  readonly representatives: readonly Card[];
  /** Number of different codes. */
  readonly codes: number;
  codeOf(card: Card, bits: number): number;
  cardOf(code: number): Card;
  bitOf(code: number, kind: number): number;
  /** New codes under an operation on bits, indexed by old code; null when it changes nothing that matters. */
  under(op: number): Uint16Array | null;
}

export function classesOf(
  cards: readonly Card[],
  attributes: ReadonlySet<string>,
  bitNames: ReadonlySet<string>,
  graph: Graph,
): Classes {
  // In order of their names: kinds are numbered as a graph meets them, which need not be alike for prover and checker.
  const bits = [...bitNames].sort().map((name) => graph.bits.indexOf(name));
  const names = [...attributes].sort();
  const byKey = new Map<string, number>();
  const classOf = new Map<Card, number>();
  const representatives: Card[] = [];
  for (const card of cards) {
    const key = names
      .map((name) =>
        name === 'id' ? card.id : name === 'name' ? card.name : (card.attributes[name] ?? '\u0000'),
      )
      .map((value) => `${typeof value}${value}`)
      .join('|');
    let index = byKey.get(key);
    if (index === undefined) byKey.set(key, (index = representatives.push(card) - 1));
    classOf.set(card, index);
  }
  const settings = 1 << bits.length;
  const codes = representatives.length * settings;
  const tables = new Map<number, Uint16Array | null>();
  return {
    bits,
    representatives,
    codes,
    codeOf(card, word) {
      let setting = 0;
      bits.forEach((kind, i) => (setting |= ((word >>> kind) & 1) << i));
      return (classOf.get(card) ?? 0) * settings + setting;
    },
    cardOf: (code) => representatives[Math.floor(code / settings)],
    bitOf(code, kind) {
      const i = bits.indexOf(kind);
      return i < 0 ? 0 : ((code % settings) >> i) & 1;
    },
    under(op) {
      const known = tables.get(op);
      if (known !== undefined) return known;
      let table: Uint16Array | null = new Uint16Array(codes);
      let changes = false;
      for (let code = 0; code < codes; code++) {
        let word = 0;
        bits.forEach((kind, i) => (word |= (((code % settings) >> i) & 1) << kind));
        const after = applyOps(word, op);
        let setting = 0;
        bits.forEach((kind, i) => (setting |= ((after >>> kind) & 1) << i));
        table[code] = code - (code % settings) + setting;
        if (table[code] !== code) changes = true;
      }
      if (!changes) table = null;
      tables.set(op, table);
      return table;
    },
  };
}
