import { phrase } from '../phrases/phrase.ts';
import type { Groups, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { ofEvery, wrongSize } from './gather.ts';
import { slotsIn } from './piles.ts';
import { attributesIn, kindsOf, oneOfEach as everyOnce } from './traits.ts';

type OneOfEachArgs = { relation: string; groups?: Groups; places?: Groups; pile?: PileRef };

/** C8: every block or pile shows each colour, suit or value once. */
export const oneOfEach = defineClaim<OneOfEachArgs>({
  id: 'one-of-each',
  endings: ['C8'],
  title: 'one of each',
  phrases: [
    phrase('{groups:groups} has one [card] of each {relation:relation}'),
    phrase('{groups:groups} (shows|contains) (one [card] of each|every|each) {relation:relation} [once]'),
    phrase('{places:places} are one of each {relation:relation}'),
    phrase('{pile:pile} has one [card] of each {relation:relation}'),
    phrase('{pile:pile} (shows|contains) one [card] of each {relation:relation}'),
  ],
  defaults: {},
  help: 'Every pair has one card of each colour, every four one of each suit, every thirteen one of each value: exactly one card for each value that cards of this routine have.',
  caution:
    'Blocks are counted from the top unless the sentence says from the bottom; cards left over after the last complete block are not spoken of.',
  synonyms: ['every suit once'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, groups, places, pile }, exit) {
    const together = groups ?? places;
    if (together !== undefined)
      return (
        wrongSize(together, kindsOf(relation, exit).length) ??
        ofEvery(together, exit, (slots) => everyOnce(relation, slots, exit))
      );
    const slots = slotsIn(pile, exit);
    return slots.ok ? means(everyOnce(relation, slots.value, exit)) : slots;
  },
  examples: [
    { table: 'AS 2H 3D 4C 5D 6C 7H 8S 9S', sentence: 'Every four has one of each suit.', holds: true },
    {
      table: 'AS 2H 3D 4C 5D 6C 7H 8S 9S',
      sentence: 'Every four from the bottom has one of each suit.',
      holds: false,
    },
    { table: 'r b b r', sentence: 'Every pair has one of each colour.', holds: true },
    { table: 'pile 1: AS 2H; pile 2: AC 2D', sentence: 'Each pile has one card of each value.', holds: true },
    { table: 'pile 1: AS 2H AD; pile 2: AC 2D', sentence: 'Each pile has one of each value.', holds: false },
    { table: 'pile 1: AS 2H; pile 2: AC 2C', sentence: 'Pile 1 has one of each colour.', holds: true },
  ],
});
