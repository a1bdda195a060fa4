import type { Card } from './card.ts';
import { cardWords, parseCardName } from './names.ts';

/** A card as it lies: which card, face up or not, ends exchanged or not. */
export interface Laid {
  readonly card: Card;
  readonly up: 0 | 1;
  readonly end: 0 | 1;
}

/** True for a card that has no name of its own: `a red card`. */
export function isAnonymous(card: Card): boolean {
  return /^an? /.test(card.name);
}

/** True for printed cards of one's own, which are written in quotes. */
export function isOwn(card: Card): boolean {
  return !isAnonymous(card) && parseCardName(card.name) === null && !/^(red |black )?joker$/.test(card.name);
}

const SHORT_COLOURS: Readonly<Record<string, string>> = { red: 'r', black: 'b' };
const SHORT_SUITS: Readonly<Record<string, string>> = { clubs: 'c', hearts: 'h', spades: 's', diamonds: 'd' };

/**
 * A card in a word: `10C`, `"lamp"`, `joker`. A card without a name is called by what is known of it and by its number in
 * the set-up, counted from 1: `r3`, `h3`, `Q/3`, `3`.
 */
export function shortName(card: Card): string {
  if (isOwn(card)) return `"${card.name}"`;
  if (!isAnonymous(card)) return card.name;
  const { rank, suit, colour } = card.attributes;
  const suitLetter = SHORT_SUITS[String(suit)] ?? SHORT_COLOURS[String(colour)] ?? '';
  return `${rank === undefined ? '' : `${rank}/`}${suitLetter}${card.id + 1}`;
}

/** `10C`, `10C^` face up, `10C'` ends exchanged. */
export function showCard({ card, up, end }: Laid): string {
  return shortName(card) + (up === 1 ? '^' : '') + (end === 1 ? "'" : '');
}

/** A pile from the top: `10C 4D^ "lamp"`; `empty` without cards. */
export function showPile(cards: readonly Laid[]): string {
  return cards.length === 0 ? 'empty' : cards.map(showCard).join(' ');
}

/** One line a pile, in the order given: `pile 1: 10C 4D^`. */
export function showPiles(
  piles: readonly { readonly name: string; readonly cards: readonly Laid[] }[],
): string[] {
  return piles.map(({ name, cards }) => `${name}: ${showPile(cards)}`);
}

/** How a card is said aloud: `ten of clubs`, `lamp`, `a red card`. */
export function sayCard(card: Card): string {
  const name = parseCardName(card.name);
  return name === null ? card.name : cardWords(name);
}
