import type { Move } from './move.ts';
import { SEE_ALIKE, seeAlike } from './see-alike.ts';
import { SEE_ALL, seeAll } from './see-all.ts';
import { SEE_CARD, seeCard } from './see-card.ts';
import { SEE_IN, seeIn } from './see-in.ts';
import type { Wording } from './seeing.ts';

/** What a block may ask of the cards, `If the top card is red:`, and the move that looks. */
export const CONDITIONS: readonly { readonly move: Move; readonly wordings: readonly Wording[] }[] = [
  { move: seeCard, wordings: SEE_CARD },
  { move: seeIn, wordings: SEE_IN },
  { move: seeAlike, wordings: SEE_ALIKE },
  { move: seeAll, wordings: SEE_ALL },
];
