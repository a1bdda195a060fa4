/** An attribute is a word or, for `value` and attributes of one's own that count, a number. */
export type AttributeValue = string | number;

/**
 * One physical card. `id` is its index in the routine's list of cards and never changes. A card of which only the colour
 * is known simply lacks the other attributes.
 */
export interface Card {
  readonly id: number;
  /** How a person calls it: `10C`, `"lamp"`, `a red card`. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, AttributeValue>>;
}

/** The attributes every pip card has; `value` counts ace as 1, courts as 11, 12, 13 unless the note says otherwise. */
export const CARD_ATTRIBUTES = ['rank', 'suit', 'colour', 'value', 'parity', 'court'] as const;

/** What handling can change about a card, besides its place. A mark is any other word, such as `chosen`. */
export const HANDLED_BITS = ['up', 'end'] as const;

export type Bit = string;
