import type { Claim } from './claim.ts';
import { agree } from './agree.ts';
import { allAre } from './all-are.ts';
import { allBut } from './all-but.ts';
import { allButAre } from './all-but-are.ts';
import { allExcept } from './all-except.ts';
import { allIn } from './all-in.ts';
import { alternate } from './alternate.ts';
import { asMany } from './as-many.ts';
import { betterHand } from './better-hand.ts';
import { between } from './between.ts';
import { cardAmong } from './card-among.ts';
import { cardIn } from './card-in.ts';
import { cardIs } from './card-is.ts';
import { count } from './count.ts';
import { differ } from './differ.ts';
import { difference } from './difference.ts';
import { distance } from './distance.ts';
import { eachEnd } from './each-end.ts';
import { exactlyThose } from './exactly-those.ts';
import { facesTell } from './faces-tell.ts';
import { groupCount } from './group-count.ts';
import { groupTotal } from './group-total.ts';
import { moreThan } from './more-than.ts';
import { nextTo } from './next-to.ts';
import { oneOfEach } from './one-of-each.ts';
import { onlyCard } from './only-card.ts';
import { onlyOtherWay } from './only-other-way.ts';
import { placeIs } from './place-is.ts';
import { placesAre } from './places-are.ts';
import { reads } from './reads.ts';
import { repeat } from './repeat.ts';
import { runs } from './runs.ts';
import { sameNumber } from './same-number.ts';
import { sameTotal } from './same-total.ts';
import { sameWay } from './same-way.ts';
import { sorted } from './sorted.ts';
import { startingOrder } from './starting-order.ts';
import { steps } from './steps.ts';
import { totalIs } from './total-is.ts';
import { totalMore } from './total-more.ts';
import { twoWays } from './two-ways.ts';
import { valueAt } from './value-at.ts';
import { valuePlace } from './value-place.ts';

/** Every form of ending there is; a new one is its own file and one line here. */
export const CLAIMS: readonly Claim[] = [
  count,
  allAre,
  sameWay,
  allBut,
  allButAre,
  twoWays,
  onlyOtherWay,
  exactlyThose,
  allExcept,
  asMany,
  sameNumber,
  difference,
  moreThan,
  agree,
  differ,
  facesTell,
  oneOfEach,
  groupCount,
  totalIs,
  groupTotal,
  sameTotal,
  totalMore,
  betterHand,
  placeIs,
  cardIs,
  cardIn,
  cardAmong,
  allIn,
  onlyCard,
  placesAre,
  eachEnd,
  reads,
  startingOrder,
  alternate,
  repeat,
  steps,
  runs,
  sorted,
  distance,
  nextTo,
  between,
  valueAt,
  valuePlace,
];

const BY_ID = new Map(CLAIMS.map((claim) => [claim.id, claim]));

export function claimById(id: string): Claim {
  const claim = BY_ID.get(id);
  // Routines are compiled against this same list.
  if (claim === undefined) throw new Error(`no claim ${id}`);
  return claim;
}
