import { trouble } from '../base/diagnostic.ts';
import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type SortKindArgs = { pile: PileRef; kind: Kind; to: PileRef; rest: PileRef };

/** P75: the cards dealt one by one onto two piles, by what they are. */
export const sortKind = defineMove<SortKindArgs>({
  id: 'sort-kind',
  procedures: ['P75'],
  hands: 'deal',
  title: 'sort into two piles',
  phrases: [
    phrase(
      'sort {pile:pile}, {kind:those} (to|onto|on) {to:newpile} [and] (the others|the rest) (to|onto|on) {rest:newpile}',
    ),
    phrase(
      'deal {pile:pile} [out], {kind:those} (to|onto|on) {to:newpile} [and] (the others|the rest) (to|onto|on) {rest:newpile}',
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The cards are dealt singly from the top, those of the kind onto one pile, all others onto the other. Each pile ends in reversed order.',
  caution: 'How many there are on each pile depends on the cards; a claim can only rest on totals.',
  synonyms: ['sort by colour', 'red to the left, black to the right'],
  brings: ({ to, rest }) => ({ piles: named(to, rest) }),
  check: ({ pile, to, rest }) =>
    same(pile, to) || same(pile, rest) || same(to, rest) ? [trouble('pile-twice')] : [],
  looks: {
    attributes: ({ kind }) => attributesOfKind(kind),
    bits: ({ kind }) => bitsOfKind(kind),
    observe(args, table, view) {
      const pile = pileName(args.pile, view);
      if (pileSize(args.pile, view) === 0) return 'none';
      return isOfKind(args.kind, table.cardAt(pile, 0), (bit) => table.bitAt(pile, 0, bit))
        ? 'kind'
        : 'other';
    },
  },
  options(args, view) {
    const [pile, to, rest] = [args.pile, args.to, args.rest].map((ref) => pileName(ref, view));
    if (new Set([pile, to, rest]).size < 3) return stuck('pile-twice', { piles: [pile, to, rest] });
    const left = pileSize(args.pile, view);
    if (left === 0 || view.seen === undefined) return [{ key: 'none', actions: [], next: null, off: 0 }];
    const actions = [carry(pile, 0, 1, view.seen === 'kind' ? to : rest, 0)];
    return [{ key: view.seen, actions, next: left > 1 ? 'going' : null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '4H 5S 6D 7C',
      sentence: 'Sort the packet, the red cards to the left and the others to the right.',
      choices: [],
      after: 'left: 6D 4H; right: 7C 5S',
    },
  ],
});
