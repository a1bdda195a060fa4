import { distance } from 'fastest-levenshtein';
import type { AttributeValue } from '../cards/card.ts';
import { COLOURS, RANK_WORDS, RANKS, SUITS } from '../cards/names.ts';
import { printCardName } from '../cards/names.ts';
import { PACK } from '../cards/pack.ts';
import type { Test } from './setup-syntax.ts';

/** A word that says something about a card. Plural nouns cannot stand for one card. */
export interface KindWord {
  readonly tests: readonly Test[];
  readonly plural: boolean;
}

const one = (attribute: string, value: AttributeValue, plural = false): KindWord => ({
  tests: [{ attribute, value }],
  plural,
});

/** `six` becomes `sixes`. */
export function plural(noun: string): string {
  return noun.endsWith('x') ? `${noun}es` : `${noun}s`;
}

/** The words about cards that every set-up knows. */
export const KIND_WORDS: ReadonlyMap<string, KindWord> = new Map<string, KindWord>([
  ['card', { tests: [], plural: false }],
  ['cards', { tests: [], plural: true }],
  ...COLOURS.flatMap((colour): [string, KindWord][] => [
    [colour, one('colour', colour)],
    [`${colour}s`, one('colour', colour, true)],
  ]),
  ['odd', one('parity', 'odd')],
  ['even', one('parity', 'even')],
  ['court', one('court', 'court')],
  ['courts', one('court', 'court', true)],
  ['picture', one('court', 'court')],
  ['pictures', one('court', 'court', true)],
  ['spot', one('court', 'spot')],
  ['spots', one('court', 'spot', true)],
  ...SUITS.flatMap((suit): [string, KindWord][] => [
    [suit.slice(0, -1), one('suit', suit)],
    [suit, one('suit', suit, true)],
  ]),
  ...RANKS.flatMap((rank): [string, KindWord][] => [
    [RANK_WORDS[rank], one('rank', rank)],
    [plural(RANK_WORDS[rank]), one('rank', rank, true)],
    ...(/\d/.test(rank) ? [[`${rank}s`, one('rank', rank, true)] as [string, KindWord]] : []),
  ]),
  ['deuce', one('rank', '2')],
  ['deuces', one('rank', '2', true)],
  ['knave', one('rank', 'J')],
  ['knaves', one('rank', 'J', true)],
]);

/** Attributes that cards of the pack have; an attribute of one's own needs another name. */
export const PACK_ATTRIBUTES: readonly string[] = ['rank', 'suit', 'colour', 'value', 'parity', 'court'];

/** The attribute that ties a card without a name to its mate. */
export const PAIR = 'pair';

// Words that only ever name a pile, so that `left: 7H` is not taken for an attribute.
const PILE_WORDS: ReadonlySet<string> = new Set(
  (
    'packet pack deck pile heap stock table hand left right pocket envelope box ring tail counter discard rest glass ' +
    'wallet case top bottom middle centre center half face-up face-down row column'
  ).split(' '),
);

export function isPileName(name: string): boolean {
  return name.includes(' ') || PILE_WORDS.has(name);
}

const OTHER_WORDS =
  'any then and all these alternately repeated times face up down order in each or as they like full pack new rest of the ' +
  'from two packs their mates mirror same torn half stacked beside followed by its joker jokers empty Stebbins Eight turned end for exactly';

const VOCABULARY: readonly string[] = [...KIND_WORDS.keys(), ...OTHER_WORDS.split(' ')];
const CARD_CODES: readonly string[] = PACK.map(printCardName);

/** `9X`, `11C`: a word that was meant as a card's short name. */
export function isLikeCode(word: string): boolean {
  return /^(?:\d{1,2}[^\d]|[ajqkt][^\d])$/u.test(word);
}

// Longer words are not searched for; nothing in a set-up is as long.
const MOST_LETTERS = 24;

/** Words nearest to one that is not known, best first, at most four. */
export function nearest(word: string, among: readonly string[]): string[] {
  if (word.length > MOST_LETTERS) return [];
  const most = Math.max(1, Math.floor(word.length / 3));
  return [...new Set(among)]
    .map((known) => ({ known, off: distance(word.toLowerCase(), known.toLowerCase()) }))
    .filter(({ off }) => off <= most)
    .sort((a, b) => a.off - b.off)
    .slice(0, 4)
    .map(({ known }) => known);
}

export function nearestWords(word: string, more: readonly string[]): string[] {
  return nearest(word, isLikeCode(word) ? CARD_CODES : [...VOCABULARY, ...more]);
}
