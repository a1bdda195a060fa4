import type { Key } from '../../moves/move.ts';
import { printPile } from '../../phrases/blanks/pile.ts';
import { printOrdinal } from '../../phrases/tokens.ts';

/** Every place of a pile, with a key and words: `packet 3`, `the 3rd card of the packet`. */
export function places(pile: string, size: number): { key: Key; words: string; at: number }[] {
  return Array.from({ length: size }, (_, at) => ({
    key: `${pile} ${at + 1}`,
    words: `the ${nth(at, size)} card of ${printPile(pile)}`,
    at,
  }));
}

/** `top`, `3rd`, `bottom`. */
export function nth(at: number, size: number): string {
  return at === 0 ? 'top' : at === size - 1 ? 'bottom' : printOrdinal(at + 1);
}
