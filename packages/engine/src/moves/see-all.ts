import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineMove } from './move.ts';
import { badName } from './name-number.ts';
import { answered, whether, wholePile, yesOrNo, type Wording } from './seeing.ts';

type SeeAllArgs = { pile: PileRef; kind: Kind; is: Kind; how: 'all' | 'any' | 'no'; call: string };

export const SEE_ALL: readonly Wording[] = [
  { template: 'all {kind:kind} [(in|of) {pile:pile}] are {is:state}', fixed: { how: 'all' } },
  { template: '(any|some) {kind:onekind} [(in|of) {pile:pile}] is {is:onestate}', fixed: { how: 'any' } },
  { template: 'no {kind:onekind} [(in|of) {pile:pile}] is {is:onestate}', fixed: { how: 'no' } },
];

/** P77: whether all, some or none of the cards of a pile are of a kind. */
export const seeAll = defineMove<SeeAllArgs>({
  id: 'see-all',
  procedures: ['P77'],
  hands: 'choose',
  title: 'see what all cards are',
  phrases: SEE_ALL.map((wording) => phrase(whether(wording), wording.fixed)),
  defaults: { pile: 'packet' },
  help: 'A pile is spread in full view. The answer is kept as a number: 1 if it is so, 0 if not.',
  caution: 'Of a pile without such cards everything is true of all, and nothing of any.',
  synonyms: ['spread and look'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: ({ kind, is }) => [...new Set([...attributesOfKind(kind), ...attributesOfKind(is)])],
    bits: ({ kind, is }) => [...new Set([...bitsOfKind(kind), ...bitsOfKind(is)])],
    observe(args, table, view) {
      const passes = (test: Kind, { pile, place }: { pile: string; place: number }): boolean =>
        isOfKind(test, table.cardAt(pile, place), (bit) => table.bitAt(pile, place, bit));
      const cards = wholePile(args.pile, view).filter((at) => passes(args.kind, at));
      const found = cards.filter((at) => passes(args.is, at)).length;
      return yesOrNo(args.how === 'all' ? found === cards.length : found > 0 === (args.how === 'any'));
    },
  },
  open: true,
  options: (args, view) => answered(args.call, view.seen === 1),
  say: () => '',
  examples: [
    {
      before: '4H 6D 5S',
      sentence: 'See whether all cards are red, call it K.',
      choices: [],
      after: 'k = 0; 4H 6D 5S',
    },
    {
      before: '4H 6D^ 5S',
      sentence: 'See whether any red card is face up, call it K.',
      choices: [],
      after: 'k = 1; 4H 6D^ 5S',
    },
    {
      before: 'packet: 1; left: 4H 6D',
      sentence: 'See whether no card of the left is black, call it K.',
      choices: [],
      after: 'k = 1; left: 4H 6D; packet: 1',
    },
  ],
});
