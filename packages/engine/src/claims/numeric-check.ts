import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';

/** Adding up needs whole numbers on every card. */
export function notNumbers(attribute: string, cards: readonly Card[]): Trouble[] {
  const card = cards.find((c) => !Number.isInteger(c.attributes[attribute]));
  return card === undefined ? [] : [trouble('not-a-number', { attribute, card: card.name })];
}
