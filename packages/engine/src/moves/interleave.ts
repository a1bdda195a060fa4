import { printPile } from '../phrases/blanks/pile.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { decided, within, type Way } from './handling.ts';
import { START, type Key, type Option, type View } from './move.ts';

/** One of two packets that fall into each other, and what it is called in a choice. */
export interface Side {
  readonly key: string;
  readonly pile: string;
}

/** Where cards fall until both packets are gone. */
const FALLEN = '~riffled';

/**
 * The next card falls from the bottom of one side or the other; when a side is used up the rest of the other falls in one go and all
 * is laid on `to`. How many cards each side still has is all that a later moment can know, so a riffle of 52 has some 1,300 moments.
 * Chances are those of G. Bayer and P. Diaconis, Trailing the dovetail shuffle to its lair, 1992: in proportion to what each side has.
 */
export function dropNext(sides: readonly [Side, Side], to: string, view: View): readonly Option[] {
  const sizes = sides.map(({ pile }) => sizeOf(view.layout, pile));
  const fallen = sizeOf(view.layout, FALLEN);
  const all = sizes[0] + sizes[1] + fallen;
  const fall = (pile: string, at: number, count: number): Action[] =>
    count === 0 ? [] : [carry(pile, at, count, FALLEN, 0)];
  const taken = all === 0 ? [] : [carry(FALLEN, 0, all, to, 0)];
  if (sizes[0] === 0 || sizes[1] === 0) {
    const rest = sides.flatMap(({ pile }, i) => fall(pile, 0, sizes[i]));
    return [{ key: 'rest', actions: [...rest, ...taken], next: null, off: 0 }];
  }
  const ways = sides.map(({ key, pile }, i): Way => {
    const other = 1 - i;
    const ends = sizes[i] === 1;
    return {
      key,
      actions: [
        ...fall(pile, sizes[i] - 1, 1),
        ...(ends ? [...fall(sides[other].pile, 0, sizes[other]), ...taken] : []),
      ],
      next: ends ? null : 'drop',
      weight: sizes[i],
    };
  });
  return view.phase === START ? decided(ways) : within(ways);
}

/** `left 2, right 1, left 1, then the rest`, from the bottom up. */
export function saidDrops(keys: readonly Key[]): string {
  const runs: { key: Key; n: number }[] = [];
  for (const key of keys) {
    const last = runs.at(-1);
    if (last !== undefined && last.key === key) last.n++;
    else runs.push({ key, n: 1 });
  }
  const fallen = runs
    .map(({ key, n }) => (key === 'rest' ? '' : `${n} from ${printPile(String(key))}`))
    .filter((text) => text !== '');
  return [...fallen, fallen.length === 0 ? 'all at once' : 'then the rest'].join(', ');
}

/** Ways of cutting n cards into two packets, c above: the binomial coefficient, as near as numbers come beyond 56 cards. */
export function waysToCut(n: number, c: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(c, n - c); i++) ways = Math.round((ways * (n - i + 1)) / i);
  return ways;
}
