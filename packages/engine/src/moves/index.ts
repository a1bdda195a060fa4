import { cut } from './cut.ts';
import type { Move } from './move.ts';

/** Every move there is; a new one is its own file and one line here. */
export const MOVES: readonly Move[] = [
  cut,
];

const BY_ID = new Map(MOVES.map((move) => [move.id, move]));

export function moveById(id: string): Move {
  const move = BY_ID.get(id);
  // Routines are compiled against this same list.
  if (move === undefined) throw new Error(`no move ${id}`);
  return move;
}
