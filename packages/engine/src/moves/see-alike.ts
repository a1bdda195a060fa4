import { phrase } from '../phrases/phrase.ts';
import type { Groups, PileRef } from '../phrases/values.ts';
import { defineMove, stuck, type View } from './move.ts';
import { badName } from './name-number.ts';
import {
  answered,
  placesOf,
  whether,
  wholePile,
  yesOrNo,
  type Missing,
  type PlaceOnTable,
  type Wording,
} from './seeing.ts';

type SeeAlikeArgs = {
  places?: Groups;
  pile: PileRef;
  relation: string;
  how: 'alike' | 'different';
  call: string;
};

const BITS: Readonly<Record<string, string>> = { facing: 'up', orientation: 'end' };
const ALIKE = { relation: 'facing', how: 'alike' };
const DIFFERENT = { relation: 'facing', how: 'different' };

function spokenOf({ places, pile }: SeeAlikeArgs, view: View): readonly PlaceOnTable[] | Missing {
  return places === undefined ? wholePile(pile, view) : placesOf(places, view);
}

export const SEE_ALIKE: readonly Wording[] = [
  { template: '{places:places} face the same way', fixed: ALIKE },
  { template: '{places:places} face (opposite|different) ways', fixed: DIFFERENT },
  { template: '{places:places} (agree|are alike|match) in {relation:relation}', fixed: { how: 'alike' } },
  { template: '{places:places} (have|are of) the same {relation:relation}', fixed: { how: 'alike' } },
  { template: '{places:places} (differ|are different) in {relation:relation}', fixed: { how: 'different' } },
  { template: '[all] the cards [(of|in) {pile:pile}] face the same way', fixed: ALIKE },
  { template: '[all] the cards [(of|in) {pile:pile}] agree in {relation:relation}', fixed: { how: 'alike' } },
];

/** P77: whether cards agree in something, such as in how they face. */
export const seeAlike = defineMove<SeeAlikeArgs>({
  id: 'see-alike',
  procedures: ['P77'],
  hands: 'choose',
  title: 'see whether cards agree',
  phrases: SEE_ALIKE.map((wording) => phrase(whether(wording), wording.fixed)),
  defaults: { pile: 'packet' },
  help: 'Cards are compared in full view. The answer is kept as a number: 1 if it is so, 0 if not. Different means that no two of them agree.',
  caution: 'Two faces may agree because both are up or because both are down.',
  synonyms: ['match', 'compare the top cards'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: ({ relation }) => (relation in BITS ? [] : [relation]),
    bits: ({ relation }) => (relation in BITS ? [BITS[relation]] : []),
    observe(args, table, view) {
      const places = spokenOf(args, view);
      if ('missing' in places) return 'no card';
      const values = places.map(({ pile, place }) =>
        args.relation in BITS
          ? table.bitAt(pile, place, BITS[args.relation])
          : (table.cardAt(pile, place).attributes[args.relation] ?? ''),
      );
      const kinds = new Set(values).size;
      return yesOrNo(args.how === 'alike' ? kinds <= 1 : kinds === values.length);
    },
  },
  open: true,
  options(args, view) {
    const places = spokenOf(args, view);
    return 'missing' in places ? stuck('no-such-card', places.missing) : answered(args.call, view.seen === 1);
  },
  say: () => '',
  examples: [
    {
      before: 'pile 1: 1^ 2; pile 2: 3^',
      sentence: 'See whether the top cards of pile 1 and pile 2 face the same way, call it K.',
      choices: [],
      after: 'k = 1; pile 1: 1^ 2; pile 2: 3^',
    },
    {
      before: '4H 5S 6D',
      sentence: 'See whether the top 2 cards differ in colour, call it K.',
      choices: [],
      after: 'k = 1; 4H 5S 6D',
    },
    {
      before: '1 2^',
      sentence: 'See whether all the cards face the same way, call it K.',
      choices: [],
      after: 'k = 0; 1 2^',
    },
  ],
});
