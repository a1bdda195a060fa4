import { phrase } from '../phrases/phrase.ts';
import type { Groups, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE } from './formula.ts';
import { ofEvery } from './gather.ts';
import { slotsIn } from './piles.ts';
import { allAgree, attributesIn } from './traits.ts';

type AgreeArgs = { relation: string; groups?: Groups; places?: Groups; pile?: PileRef };

const FACING = { relation: 'facing' };
const MATES = { relation: 'mates' };
const HALVES = { relation: 'halves' };

/** C7, C8, C9: cards taken together are alike in something. */
export const agree = defineClaim<AgreeArgs>({
  id: 'agree',
  endings: ['C7', 'C8', 'C9', 'C16'],
  title: 'agree',
  phrases: [
    phrase('{groups:groups} faces the same way', FACING),
    phrase('{groups:groups} is (a pair of|) mates', MATES),
    phrase('{groups:groups} is [the] [two] halves of one card', HALVES),
    phrase('{groups:groups} agrees in {relation:relation}'),
    phrase('{groups:groups} is alike in {relation:relation}'),
    phrase('{groups:groups} is [all] of (one|the same) {relation:relation}'),
    phrase('{places:places} face the same way', FACING),
    phrase('{places:places} are mates', MATES),
    phrase('{places:places} are [the] [two] halves of one card', HALVES),
    phrase('{places:places} agree in {relation:relation}'),
    phrase('{places:places} (are alike|match) in {relation:relation}'),
    phrase('{places:places} (are of|have) the same {relation:relation}'),
    phrase('{pile:pile} faces the same way', FACING),
    phrase('{pile:pile} is (a pair of|) mates', MATES),
    phrase('{pile:pile} is all of one {relation:relation}'),
    phrase('{pile:pile} agrees in {relation:relation}'),
    phrase('the {relation:relations} have separated into [the] piles', {
      groups: { groups: 'piles', stem: 'pile' },
    }),
  ],
  defaults: {},
  help: 'The cards of every pair, block, half or pile, or of the places named, are alike in colour, suit, value, facing, and so on. Mates are alike in value and colour; halves of one card in rank and suit.',
  caution:
    'Blocks are counted from the top unless the sentence says from the bottom; cards left over after the last complete block are not spoken of, nor is the middle card of mirror pairs.',
  synonyms: ['match', 'mates', 'alike', 'separated'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, groups, places, pile }, exit) {
    const together = groups ?? places;
    if (together !== undefined) return ofEvery(together, exit, (slots) => allAgree(relation, slots, exit));
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    return means(slots.value.length === 0 ? FALSE : allAgree(relation, slots.value, exit));
  },
  examples: [
    { table: 'r r b b r', sentence: 'Every pair agrees in colour.', holds: true },
    { table: 'r r b b r', sentence: 'Every pair from the bottom agrees in colour.', holds: false },
    { table: 'AS 2H 2D AC', sentence: 'Every mirror pair is a pair of mates.', holds: true },
    { table: 'pile 1: AS 2S; pile 2: 4H KH', sentence: 'Each pile is all of one suit.', holds: true },
    {
      table: 'pile 1: r r; pile 2: b r',
      sentence: 'The colours have separated into the piles.',
      holds: false,
    },
    {
      table: 'pile 1: 7S 2S; pile 2: 7H KH',
      sentence: 'The top cards of pile 1 and pile 2 have the same value.',
      holds: true,
    },
    {
      table: 'AS 2S AS 2S',
      sentence: 'Every pair half a packet apart is the two halves of one card.',
      holds: true,
    },
    {
      table: 'AS 2S 2S AS',
      sentence: 'The top card and the bottom card are halves of one card.',
      holds: true,
    },
    { table: 'r^ b^ b r', sentence: 'Each half faces the same way.', holds: true },
    { table: 'pile 1: AS 2S; pile 2: 4H KS', sentence: 'Pile 2 is all of one colour.', holds: false },
  ],
});
