import { phrase } from '../phrases/phrase.ts';
import type { Groups, PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { FALSE } from './formula.ts';
import { ofEvery } from './gather.ts';
import { slotsIn } from './piles.ts';
import { allDiffer, attributesIn } from './traits.ts';

type DifferArgs = { relation: string; groups?: Groups; places?: Groups; pile?: PileRef };

const NEIGHBOURS = { groups: { groups: 'neighbours', round: false, pile: 'packet' } } as const;

/** C7, C8, C19: no two cards taken together are alike in something. */
export const differ = defineClaim<DifferArgs>({
  id: 'differ',
  endings: ['C7', 'C8', 'C19'],
  title: 'differ',
  phrases: [
    phrase('{groups:groups} faces opposite ways', { relation: 'facing' }),
    phrase('{groups:groups} differs in {relation:relation}'),
    phrase('{groups:groups} is of different {relation:relations}'),
    phrase('{groups:groups} (has|shows) different {relation:relations}'),
    phrase('no two neighbours (agree|are alike) in {relation:relation}', NEIGHBOURS),
    phrase('{places:places} face opposite ways', { relation: 'facing' }),
    phrase('{places:places} differ in {relation:relation}'),
    phrase('{places:places} (are of|have) different {relation:relations}'),
    phrase('no two cards (in|of) {pile:pile} (agree|are alike) in {relation:relation}'),
  ],
  defaults: {},
  help: 'No two cards of any pair, block, half or pile, or of the places named, are alike in colour, suit, value, facing, and so on.',
  caution:
    'Cards left over after the last complete block are not spoken of. With more than two values this costs an exact search, unless a block shows every value once.',
  synonyms: ['no two neighbours alike', 'opposite', 'different'],
  attributes: ({ relation }) => attributesIn(relation),
  meaning({ relation, groups, places, pile }, exit) {
    const together = groups ?? places;
    if (together !== undefined) return ofEvery(together, exit, (slots) => allDiffer(relation, slots, exit));
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    return means(slots.value.length === 0 ? FALSE : allDiffer(relation, slots.value, exit));
  },
  examples: [
    { table: 'r b b r r', sentence: 'Every pair differs in colour.', holds: true },
    { table: 'r b b r', sentence: 'No two neighbours agree in colour.', holds: false },
    { table: 'AS 2H AD AC', sentence: 'Every pair differs in suit.', holds: true },
    { table: 'r^ b b r^', sentence: 'Every pair faces opposite ways.', holds: true },
    {
      table: 'pile 1: 7S 2S; pile 2: 7H KH',
      sentence: 'The bottom cards of the piles differ in value.',
      holds: true,
    },
    { table: 'AS 2H AD AC', sentence: 'No two cards of the packet agree in value.', holds: false },
  ],
});
