import type { BlankTypes } from './phrase.ts';
import { amount, cards } from './blanks/amount.ts';
import { block, topcards } from './blanks/block.ts';
import { many } from './blanks/many.ts';
import { newName, number, place } from './blanks/number.ts';
import { order, stack } from './blanks/order.ts';
import { newPile, pile } from './blanks/pile.ts';
import { nth, nthcard, sequence, spot, word } from './blanks/spot.ts';

const ALL = [
  many,
  order,
  stack,
  number,
  place,
  newName,
  amount,
  cards,
  pile,
  newPile,
  topcards,
  block,
  spot,
  nthcard,
  nth,
  word,
  sequence,
];

/** Every type of blank by its name. */
export const BLANKS: BlankTypes = Object.fromEntries(ALL.map((blank) => [blank.type, blank]));
