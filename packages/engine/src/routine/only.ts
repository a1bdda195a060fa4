import { isStuck, stuck, type Move } from '../moves/move.ts';
import type { Only } from './routine.ts';

/** A move with no other options at one phase than these. It has a name of its own, so that nothing kept for the move is taken for it. */
export function restricted(move: Move, { phase, keys }: Only): Move {
  const allowed = new Set(keys);
  const { count: _count, scatters: _scatters, ...rest } = move;
  return {
    ...rest,
    id: `${move.id}|${JSON.stringify([phase, keys])}`,
    options(args, view) {
      const all = move.options(args, view);
      if (isStuck(all) || view.phase !== phase) return all;
      const kept = all.filter(({ key }) => allowed.has(key));
      return kept.length === 0 ? stuck('no-such-choice') : kept;
    },
  };
}
