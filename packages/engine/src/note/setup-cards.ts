import {
  parseCardName,
  parseRank,
  parseSuit,
  sameCard,
  type PipCard,
  type Rank,
  type Suit,
} from '../cards/names.ts';
import type { Reader } from './setup-reader.ts';
import type { CardRef, Listed } from './setup-syntax.ts';
import { isLikeCode } from './setup-words.ts';

/** Reads `10C`, `ten of clubs`, `"lamp"`, `red joker`; null, and nothing passed over, when no card's name stands here. */
export function readCard(r: Reader): CardRef | null {
  const token = r.token;
  if (token === undefined) return null;
  if (token.is === 'quoted') {
    if (token.text === '') return null;
    r.at++;
    return { is: 'own', name: token.text };
  }
  const pip = readPip(r);
  if (pip !== null) return { is: 'pip', card: pip };
  const coloured = r.word() === 'red' || r.word() === 'black';
  if (r.word(coloured ? 1 : 0) !== 'joker') return null;
  const colour = coloured ? (r.word() as 'red' | 'black') : null;
  r.at += coloured ? 2 : 1;
  return { is: 'joker', colour };
}

/** Whether cards or a range of cards begin here. */
export function isCard(r: Reader): boolean {
  const [start, told] = [r.at, r.diagnostics.length];
  const found = readRanks(r) !== null || readCard(r) !== null;
  r.at = start;
  r.diagnostics.length = told;
  return found;
}

/** A card of the pack, in letters or in words. */
export function readPip(r: Reader): PipCard | null {
  const word = r.word();
  if (r.token?.is !== 'word') return null;
  const code = parseCardName(word);
  if (code !== null) {
    r.at++;
    return code;
  }
  if (r.word(1) !== 'of') return null;
  const the = r.word(2) === 'the' ? 1 : 0;
  const rank = parseRank(word);
  const suit = parseSuit(r.word(2 + the));
  if (rank === null || suit === null) return null;
  r.at += 3 + the;
  return { rank, suit };
}

/**
 * Reads cards one after another, with `^` for face up and `'` for ends exchanged. A word that was meant as a card is
 * reported and passed over, so that one slip does not hide the next.
 */
export function readList(r: Reader): Listed[] {
  const list: Listed[] = [];
  for (;;) {
    const from = r.at;
    const ref = readCard(r);
    if (ref === null) {
      if (!isSlip(r, list.length > 0)) return list;
      r.blame('set-up-card');
      r.at++;
      continue;
    }
    const up = r.eat('^');
    const end = r.eat("'");
    list.push({ ref, up: up || r.eat('^'), end, range: r.rangeFrom(from) });
  }
}

function isSlip(r: Reader, inList: boolean): boolean {
  const word = r.word();
  if (r.token?.is !== 'word' || r.shared.words.has(word) || (r.word(1) === 'of' && parseRank(word) !== null))
    return false;
  return isLikeCode(word) && (inList || !/^\d+$/.test(word));
}

export interface Ranks {
  readonly suit: Suit;
  readonly from: Rank;
  readonly to: Rank;
}

/** Reads `A-K of spades`, `ace to king of spades`, `2H-9H`; null, and nothing passed over, when no range stands here. */
export function readRanks(r: Reader): Ranks | null {
  const start = r.at;
  const ranks = rangeAt(r);
  if (ranks === null) r.at = start;
  return ranks;
}

function rangeAt(r: Reader): Ranks | null {
  const start = r.at;
  const first = readPip(r);
  const from = first?.rank ?? parseRank(r.word());
  if (from === null || r.token?.is === 'quoted') return null;
  if (first === null) r.at++;
  if (!r.eat('-') && !r.eat('to')) return null;
  const last = readPip(r);
  if (last !== null) {
    if (first !== null && !sameCard(first, { ...last, rank: first.rank })) {
      r.tell('set-up-range-suits', r.rangeFrom(start), { from: first.suit, to: last.suit });
      return { suit: last.suit, from, to: last.rank };
    }
    return { suit: last.suit, from, to: last.rank };
  }
  const to = parseRank(r.word());
  if (to === null) return null;
  r.at++;
  if (first !== null) return { suit: first.suit, from, to };
  const of = r.eat('of');
  r.eat('the');
  const suit = parseSuit(r.word());
  if (suit !== null) {
    r.at++;
    return { suit, from, to };
  }
  if (of) r.blame('set-up-suit');
  return of ? { suit: 'clubs', from, to } : null;
}
