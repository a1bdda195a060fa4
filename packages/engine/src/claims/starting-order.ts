import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means, pileAt, senseless } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { isCard, isRing } from './identity.ts';
import { slotsIn } from './piles.ts';

type StartingOrderArgs = { pile: PileRef; of?: PileRef; how: string; round: boolean };

/** C11: the cards are back in the order in which the working began. */
export const startingOrder = defineClaim<StartingOrderArgs>({
  id: 'starting-order',
  endings: ['C11'],
  title: 'back in the starting order',
  phrases: [
    phrase('{pile:pile} is [back] in its starting order going round', { how: 'same', round: true }),
    phrase('{pile:pile} is [back] in its starting order', { how: 'same', round: false }),
    phrase('{pile:pile} is in the reverse of its starting order going round', {
      how: 'reverse',
      round: true,
    }),
    phrase('{pile:pile} is in the reverse of its starting order', { how: 'reverse', round: false }),
    phrase('{pile:pile} is [back] in the starting order of {of:pile} going round', {
      how: 'same',
      round: true,
    }),
    phrase('{pile:pile} is [back] in the starting order of {of:pile}', { how: 'same', round: false }),
    phrase('{pile:pile} is in the reverse of the starting order of {of:pile} going round', {
      how: 'reverse',
      round: true,
    }),
    phrase('{pile:pile} is in the reverse of the starting order of {of:pile}', {
      how: 'reverse',
      round: false,
    }),
    phrase('{pile:pile} is [back] in the same order as (at the start|before|at the beginning)', {
      how: 'same',
      round: false,
    }),
    phrase('{pile:pile} is [back] in the same cyclic order as (at the start|before|at the beginning)', {
      how: 'same',
      round: true,
    }),
    phrase(
      'the cards are [back] in (their starting order|the same order as at the start|the same order as before)',
      {
        how: 'same',
        round: false,
        pile: 'packet',
      },
    ),
    phrase(
      'the cards are [back] in (their starting order going round|the same cyclic order as at the start)',
      {
        how: 'same',
        round: true,
        pile: 'packet',
      },
    ),
    phrase('{pile:pile} is [back] in the order (it began in|it began with|we began with)', {
      how: 'same',
      round: false,
    }),
  ],
  defaults: { round: false },
  help: 'The pile has the cards it began with, in the same order or in exactly the reverse order; going round, where the order begins is open.',
  caution:
    'Facing is not spoken of. Where the set-up leaves the order open there is no starting order to compare with.',
  synonyms: ['in the order we began', 'cyclic order'],
  upToCut: (args) => ({ ...args, round: true }),
  meaning({ pile, of, how, round }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const name = pileAt(of ?? pile, exit);
    const start = Object.hasOwn(exit.start, name) ? exit.start[name] : undefined;
    if (start === undefined) return senseless('no-starting-order', { pile: name });
    if (slots.value.length !== start.length || start.length === 0) return means(FALSE);
    const order = how === 'same' ? slots.value : [...slots.value].reverse();
    if (round) return means(isRing(start, order, exit));
    return means(and(order.map((slot, i) => isCard(start[i], slot, exit))));
  },
  examples: [
    { table: 'AS 2S 3S', sentence: 'The packet is back in its starting order.', holds: true },
    { table: 'AS 2S 3S', sentence: 'The packet is in the reverse of its starting order.', holds: false },
    {
      table: 'AS 2S 3S',
      sentence: 'The packet is in the reverse of its starting order, going round.',
      holds: false,
    },
    {
      table: 'AS 2S',
      sentence: 'The packet is in the reverse of its starting order, going round.',
      holds: true,
    },
  ],
});
