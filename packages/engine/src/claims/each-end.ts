import { phrase } from '../phrases/phrase.ts';
import type { Kind } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and } from './formula.ts';
import { attributesOf, isKind } from './kinds.ts';
import { numberedPiles } from './piles.ts';

type EachEndArgs = { end: string; stem: string; state: Kind };

/** C10: the top card of each pile is something. */
export const eachEnd = defineClaim<EachEndArgs>({
  id: 'each-end',
  endings: ['C10'],
  title: 'each pile is topped by',
  phrases: [
    phrase('the {end=top|bottom} card of (each|every) {stem=pile~heap|hand} is {state:onestate}'),
    phrase('(each|every) {stem=pile~heap|hand} (is topped by|has on top) {state:onestate}', { end: 'top' }),
  ],
  defaults: { end: 'top', stem: 'pile' },
  help: 'The top card of each numbered pile is an ace, red, face up; where no pile is numbered, of every pile there is.',
  caution: 'It is not said that the aces differ; with four piles and four aces they do.',
  synonyms: ['topped by'],
  attributes: ({ state }) => attributesOf(state),
  meaning({ end, stem, state }, exit) {
    const tops = numberedPiles(stem, exit).map((pile) => pile[end === 'top' ? 0 : pile.length - 1]);
    return means(and(tops.map((slot) => isKind(state, slot, exit))), tops.length === 0);
  },
  examples: [
    {
      table: 'pile 1: AS 9H; pile 2: AD 4C 4D',
      sentence: 'The top card of each pile is an ace.',
      holds: true,
    },
    {
      table: 'pile 1: AS 9H; pile 2: AD 4C 4D',
      sentence: 'The bottom card of each pile is a heart.',
      holds: false,
    },
    {
      table: 'packet: 9H; pile 1: AS 9H; pile 2: AD',
      sentence: 'Each pile is topped by an ace.',
      holds: true,
    },
  ],
});
