import { phrase } from '../phrases/phrase.ts';
import type { Groups } from '../phrases/values.ts';
import { defineClaim, type Exit } from './claim.ts';
import type { Formula } from './formula.ts';
import { ofEvery } from './gather.ts';
import { bitMeasure, xor } from './measures.ts';
import { equals, plus, total } from './sums.ts';
import { allAgree, allDiffer, attributesIn, digitsOf } from './traits.ts';

type FacesTellArgs = { relation: string; groups?: Groups; places?: Groups; how: string };

/** Two cards and one thing in which they may differ: an equation. Anything else says it as it stands. */
function toldBy(relation: string, agrees: boolean, slots: readonly number[], exit: Exit): Formula {
  const digits = digitsOf(relation, exit);
  if (slots.length === 2 && digits.length === 1) {
    const [a, b] = slots;
    const shown = xor(bitMeasure('up'), digits[0]);
    return equals(plus(total(shown, [a], exit), total(shown, [b], exit)), agrees ? 0 : 1, 2);
  }
  const right = agrees ? allAgree(relation, slots, exit) : allDiffer(relation, slots, exit);
  return { is: 'exactly when', left: allAgree('facing', slots, exit), right };
}

/** C7, C8: how the cards of a pair face tells whether they are alike. */
export const facesTell = defineClaim<FacesTellArgs>({
  id: 'faces-tell',
  endings: ['C7', 'C8'],
  title: 'faces tell whether cards agree',
  phrases: [
    phrase('{groups:groups} faces the same way exactly when it {how=agrees|differs} in {relation:relation}'),
    phrase(
      '{places:places} face the same way exactly when they {how=agrees~agree|differs~differ} in {relation:relation}',
    ),
  ],
  defaults: {},
  help: 'Of every pair the two cards face the same way when they are alike in colour (or in what else is named), and opposite ways when they are not; or just the reverse.',
  caution: 'Cards left over after the last complete block are not spoken of.',
  synonyms: ['faces agree', 'facing tells'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, groups, places, how }, exit) {
    const together = groups ?? places;
    // A phrase of this claim always names its cards.
    if (together === undefined) throw new Error('faces of no cards');
    return ofEvery(together, exit, (slots) => toldBy(relation, how === 'agrees', slots, exit));
  },
  examples: [
    {
      table: 'r b^ b b',
      sentence: 'Every pair faces the same way exactly when it agrees in colour.',
      holds: true,
    },
    {
      table: 'r b r r^',
      sentence: 'Every pair faces the same way exactly when it differs in colour.',
      holds: true,
    },
    {
      table: 'r b^ b b',
      sentence: 'Every pair faces the same way exactly when it differs in colour.',
      holds: false,
    },
    {
      table: 'r^ b r b^',
      sentence: 'The top card and the bottom card face the same way exactly when they differ in colour.',
      holds: true,
    },
  ],
});
