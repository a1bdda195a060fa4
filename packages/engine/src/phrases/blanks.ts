import type { BlankTypes } from './phrase.ts';
import { amount, cards } from './blanks/amount.ts';
import { block, severalBottom, severalTop, topcards } from './blanks/block.ts';
import { many } from './blanks/many.ts';
import { blocks } from './blanks/blocks.ts';
import { cardList, rank } from './blanks/card.ts';
import { groups } from './blanks/groups.ts';
import { howMany } from './blanks/howmany.ts';
import { kind, oneKind, oneOfClass, someCards, those } from './blanks/kind.ts';
import { mark } from './blanks/mark.ts';
import { newName, number, place } from './blanks/number.ts';
import { order, stack } from './blanks/order.ts';
import { newPile, pile } from './blanks/pile.ts';
import { pipCard } from './blanks/pip-card.ts';
import { places } from './blanks/places.ts';
import { numeric, relation, relations } from './blanks/relation.ts';
import { nth, nthcard, sequence, spot, word } from './blanks/spot.ts';
import { oneState, state } from './blanks/state.ts';
import { tally } from './blanks/tally.ts';
import { thisCard } from './blanks/this-card.ts';
import { allWords, words } from './blanks/words.ts';

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
  pipCard,
  topcards,
  block,
  severalTop,
  severalBottom,
  blocks,
  spot,
  nthcard,
  nth,
  word,
  words,
  allWords,
  mark,
  sequence,
  kind,
  oneKind,
  oneOfClass,
  someCards,
  those,
  thisCard,
  state,
  oneState,
  tally,
  relation,
  relations,
  numeric,
  groups,
  places,
  cardList,
  rank,
  howMany,
];

/** Every type of blank by its name. */
export const BLANKS: BlankTypes = Object.fromEntries(ALL.map((blank) => [blank.type, blank]));
