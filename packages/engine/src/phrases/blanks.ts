import type { BlankTypes } from './phrase.ts';
import { amount, cards } from './blanks/amount.ts';
import { newName, number, place } from './blanks/number.ts';
import { newPile, pile } from './blanks/pile.ts';

const ALL = [number, place, newName, amount, cards, pile, newPile];

/** Every type of blank by its name. */
export const BLANKS: BlankTypes = Object.fromEntries(ALL.map((blank) => [blank.type, blank]));
