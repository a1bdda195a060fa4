import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { defineClaim, means } from './claim.ts';
import { and, FALSE } from './formula.ts';
import { isNamed } from './identity.ts';
import { slotsIn } from './piles.ts';

type ReadsArgs = { list: readonly string[]; pile: PileRef; from: string };

/** C11: a pile is in a stated order. */
export const reads = defineClaim<ReadsArgs>({
  id: 'reads',
  endings: ['C11'],
  title: 'in a stated order',
  phrases: [
    phrase('from the {from=top|bottom} {pile:pile} (reads|is) {list:cardlist}'),
    phrase('{pile:pile} reads {list:cardlist} [from the {from=top|bottom}]'),
    phrase('{pile:pile} is {list:cardlist} from the {from=top|bottom}'),
  ],
  defaults: { from: 'top' },
  help: 'The pile consists of these cards in this order, from the top unless the sentence says from the bottom.',
  caution: 'Every card of the pile must be listed. Facing is not spoken of.',
  synonyms: ['in this order'],
  meaning({ list, pile, from }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    if (slots.value.length !== list.length) return means(FALSE);
    const order = from === 'top' ? slots.value : [...slots.value].reverse();
    return means(and(order.map((slot, i) => isNamed(list[i], slot, exit))));
  },
  examples: [
    { table: 'AS 2S 3S', sentence: 'From the top, the packet reads AS 2S 3S.', holds: true },
    { table: 'AS 2S 3S', sentence: 'From the bottom, the packet reads AS 2S 3S.', holds: false },
    { table: 'pile 1: 10C 9H; pile 2: 4D', sentence: 'Pile 1 reads 9H 10C from the bottom.', holds: true },
  ],
});
