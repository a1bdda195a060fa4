import type { Card } from '../cards/card.ts';
import type { Kind, KindTest } from './values.ts';

/** Whether a card that lies with these bits is of a kind: it passes every test. */
export function isOfKind(kind: Kind, card: Card, bit: (name: string) => number): boolean {
  return kind.tests.every((test) => passes(test, card, bit));
}

function passes(test: KindTest, card: Card, bit: (name: string) => number): boolean {
  switch (test.test) {
    case 'attribute': {
      const value = card.attributes[test.attribute];
      return (value !== undefined && test.values.includes(value)) !== (test.not === true);
    }
    case 'bit':
      return (bit(test.bit) === 1) !== (test.not === true);
    case 'card':
      return (card.name === test.name) !== (test.not === true);
  }
}

/** Attributes that a kind asks for; `name` where it asks for one card. */
export function attributesOfKind(kind: Kind): string[] {
  const names = kind.tests.flatMap((test) =>
    test.test === 'attribute' ? [test.attribute] : test.test === 'card' ? ['name'] : [],
  );
  return [...new Set(names)];
}

/** Bits that a kind asks for. */
export function bitsOfKind(kind: Kind): string[] {
  return [...new Set(kind.tests.flatMap((test) => (test.test === 'bit' ? [test.bit] : [])))];
}
