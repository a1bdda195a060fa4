import type { Card } from '../cards/card.ts';
import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import type { Kind } from '../phrases/values.ts';
import type { Measure } from './formula.ts';

/** 1 for cards of the kind, 0 for others. */
export function indicator(kind: Kind): Measure {
  return {
    id: `is ${JSON.stringify(kind.tests)}`,
    attributes: attributesOfKind(kind),
    bits: bitsOfKind(kind),
    of: (card, bit) => (isOfKind(kind, card, bit) ? 1 : 0),
  };
}

/** 1 when the bit is set: `bitMeasure('up')` is 1 for a card that lies face up. */
export function bitMeasure(bit: string): Measure {
  return { id: `bit ${bit}`, attributes: [], bits: [bit], of: (_card, read) => read(bit) };
}

/** The number an attribute gives; the claim has made sure that all cards concerned have one. */
export function numeric(attribute: string): Measure {
  return {
    id: `number ${attribute}`,
    attributes: [attribute],
    bits: [],
    of: (card) => Number(card.attributes[attribute] ?? 0),
  };
}

/** 1 for this very card. */
export function isCardNumber(id: number): Measure {
  return { id: `card number ${id}`, attributes: ['id'], bits: [], of: (card) => (card.id === id ? 1 : 0) };
}

/** 1 when the number an attribute gives leaves this remainder. */
export function remainderIs(attribute: string, modulus: number, remainder: number): Measure {
  return {
    id: `${attribute} leaves ${remainder} of ${modulus}`,
    attributes: [attribute],
    bits: [],
    of: (card) => (Number(card.attributes[attribute] ?? 0) % modulus === remainder ? 1 : 0),
  };
}

/**
 * The values of an attribute written in binary, one measure a digit: two cards agree in the attribute exactly when they
 * agree in every digit. `attribute` may be `name`, which tells all cards apart.
 */
export function digits(attribute: string, cards: readonly Card[]): Measure[] {
  const read = (card: Card): string =>
    String(attribute === 'name' ? `${card.name}#${card.id}` : card.attributes[attribute]);
  const code = new Map<string, number>();
  for (const card of cards) if (!code.has(read(card))) code.set(read(card), code.size);
  const width = Math.max(1, Math.ceil(Math.log2(code.size)));
  return Array.from({ length: width }, (_, j) => ({
    id: `digit ${j} of ${attribute}`,
    attributes: [attribute === 'name' ? 'id' : attribute],
    bits: [],
    of: (card: Card) => ((code.get(read(card)) ?? 0) >> j) & 1,
  }));
}

/** 0 or 1 for an attribute with two values among the cards: 1 for the second in order of appearance. */
export function binary(attribute: string, cards: readonly Card[]): Measure {
  return digits(attribute, cards)[0];
}

/** The sum of two 0/1 measures modulo 2, as one measure: `face` xor `red`. */
export function xor(a: Measure, b: Measure): Measure {
  return {
    id: `(${a.id} xor ${b.id})`,
    attributes: once([...a.attributes, ...b.attributes]),
    bits: once([...a.bits, ...b.bits]),
    of: (card, bit) => a.of(card, bit) ^ b.of(card, bit),
  };
}

/** What `measure` reads on cards of the kind, 0 on others: the values of the face-up cards, say. */
export function among(kind: Kind, measure: Measure): Measure {
  const inside = indicator(kind);
  return {
    id: `(${measure.id} if ${inside.id})`,
    attributes: once([...inside.attributes, ...measure.attributes]),
    bits: once([...inside.bits, ...measure.bits]),
    of: (card, bit) => (inside.of(card, bit) === 1 ? measure.of(card, bit) : 0),
  };
}

function once(names: readonly string[]): string[] {
  return [...new Set(names)];
}
