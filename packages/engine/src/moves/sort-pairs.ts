import { trouble } from '../base/diagnostic.ts';
import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { named } from './handling.ts';
import { defineMove, pileName } from './move.ts';
import { dealPair, isTwice, seenPair } from './pairs.ts';

type SortPairsArgs = { pile: PileRef; kind: Kind; both: PileRef; mixed: PileRef; rest: PileRef };

const OTHERS = '(the others|the rest|the other pairs)';

/** P75: pairs taken off the top and laid in three heaps: both of a kind, one of it, neither. */
export const sortPairs = defineMove<SortPairsArgs>({
  id: 'sort-pairs',
  procedures: ['P75'],
  hands: 'deal',
  title: 'sort pairs into three heaps',
  phrases: [
    phrase(
      `(sort|deal) {pile:pile} in pairs, (pairs of|two) {kind:kind} (to|onto|on) {both:newpile}, mixed pairs (to|onto|on) {mixed:newpile} ` +
        `[and] ${OTHERS} (to|onto|on) {rest:newpile}`,
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'Two cards at a time come off the top. Where both are of the kind they go on the first heap, where one is on the second, where neither on the third. A last single card stays.',
  caution:
    'Only the counts are certain: with as many of the kind as not, the first heap and the third are equal.',
  synonyms: ['both red, both black, mixed'],
  brings: ({ both, mixed, rest }) => ({ piles: named(both, mixed, rest) }),
  check: ({ pile, both, mixed, rest }) => (isTwice([pile, both, mixed, rest]) ? [trouble('pile-twice')] : []),
  looks: {
    attributes: ({ kind }) => attributesOfKind(kind),
    bits: ({ kind }) => bitsOfKind(kind),
    observe: (args, table, view) =>
      seenPair(args.pile, table, view, (pile) => {
        const [one, other] = [0, 1].map((place) =>
          isOfKind(args.kind, table.cardAt(pile, place), (bit) => table.bitAt(pile, place, bit)),
        );
        return one && other ? 'both' : one || other ? 'mixed' : 'neither';
      }),
  },
  options: (args, view) =>
    dealPair(args.pile, view, {
      both: pileName(args.both, view),
      mixed: pileName(args.mixed, view),
      neither: pileName(args.rest, view),
    }),
  say: () => '',
  examples: [
    {
      before: '4H 6D 5S 7D 9C 8S 2H',
      sentence:
        'Sort the packet in pairs, two red cards to the left, mixed pairs to the table and the others to the right.',
      choices: [],
      after: 'left: 4H 6D; packet: 2H; right: 9C 8S; table: 5S 7D',
    },
  ],
});
