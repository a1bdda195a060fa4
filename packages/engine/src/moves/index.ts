import { countAndTransfer } from './count-and-transfer.ts';
import { cut } from './cut.ts';
import { dealAll } from './deal-all.ts';
import { dealPiles } from './deal-piles.ts';
import { deal } from './deal.ts';
import { gatherBySkips } from './gather-by-skips.ts';
import { gatherOrder } from './gather-order.ts';
import { gatherOutermost } from './gather-outermost.ts';
import { gather } from './gather.ts';
import { pushOffCards } from './push-off.ts';
import { putBeneath } from './put-beneath.ts';
import { putOn } from './put-on.ts';
import { run } from './run.ts';
import type { Move } from './move.ts';

/** Every move there is; a new one is its own file and one line here. */
export const MOVES: readonly Move[] = [
  countAndTransfer,
  cut,
  deal,
  dealAll,
  dealPiles,
  gather,
  gatherBySkips,
  gatherOrder,
  gatherOutermost,
  pushOffCards,
  putBeneath,
  putOn,
  run,
];

const BY_ID = new Map(MOVES.map((move) => [move.id, move]));

export function moveById(id: string): Move {
  const move = BY_ID.get(id);
  // Routines are compiled against this same list.
  if (move === undefined) throw new Error(`no move ${id}`);
  return move;
}
