import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { named } from './handling.ts';
import { defineMove, pileName } from './move.ts';
import { dealPair, isTwice, seenPair } from './pairs.ts';

type AgreePairsArgs = { pile: PileRef; relation: string; to: PileRef; rest: PileRef };

/** Relations that are bits, not attributes. */
const BITS: Readonly<Record<string, string>> = { facing: 'up', orientation: 'end' };
const HEAPS =
  '(to|onto|on) {to:newpile} [and] (the others|the rest|the other pairs) (to|onto|on) {rest:newpile}';

/** P77: pairs taken off the top; those that agree in something go on one heap, the others on another. */
export const agreePairs = defineMove<AgreePairsArgs>({
  id: 'agree-pairs',
  procedures: ['P77'],
  hands: 'deal',
  title: 'match pairs and discard',
  phrases: [
    phrase(
      `(sort|deal) {pile:pile} in pairs, pairs (that agree|alike|that are alike|matching) in {relation:relation} ${HEAPS}`,
    ),
    phrase(`(sort|deal) {pile:pile} in pairs, pairs (that face|facing) the same way ${HEAPS}`, {
      relation: 'facing',
    }),
  ],
  defaults: { pile: 'packet' },
  help: 'Two cards at a time come off the top. Where they agree they go on the first heap, else on the second. A last single card stays.',
  caution: 'Faces of a pair may agree because both are up or because both are down.',
  synonyms: ['match and discard', 'keep on equal faces'],
  brings: ({ to, rest }) => ({ piles: named(to, rest) }),
  check: ({ pile, to, rest }) => (isTwice([pile, to, rest]) ? [trouble('pile-twice')] : []),
  looks: {
    attributes: ({ relation }) => (relation in BITS ? [] : [relation]),
    bits: ({ relation }) => (relation in BITS ? [BITS[relation]] : []),
    observe: (args, table, view) =>
      seenPair(args.pile, table, view, (pile) => {
        const [one, other] = [0, 1].map((place) =>
          args.relation in BITS
            ? table.bitAt(pile, place, BITS[args.relation])
            : table.cardAt(pile, place).attributes[args.relation],
        );
        return one === other ? 'same' : 'different';
      }),
  },
  options: (args, view) =>
    dealPair(args.pile, view, { same: pileName(args.to, view), different: pileName(args.rest, view) }),
  say: () => '',
  examples: [
    {
      before: '1 2^ 3^ 4^ 5',
      sentence:
        'Deal the packet in pairs, pairs that face the same way to the left and the others to the right.',
      choices: [],
      after: 'left: 3^ 4^; packet: 5; right: 1 2^',
    },
    {
      before: '4H 6D 5S 7D',
      sentence:
        'Sort the packet in pairs, pairs that agree in colour to the hand and the others to the table.',
      choices: [],
      after: 'hand: 4H 6D; table: 5S 7D',
    },
  ],
});
