import { carry, mark, type Action, type Mark } from '../../pictures/actions.ts';
import type { Option } from '../../moves/move.ts';
import { sizeOf, type Layout } from '../../pictures/layout.ts';
import { meantBy, redone, Sizes, type Meant } from './replay.ts';

/** One card taken off the top and laid somewhere. */
export interface Dealt {
  readonly to: string;
  readonly beneath: boolean;
  /** Turned over on the way. */
  readonly isTurned: boolean;
  /** How it is laid: face up, say, or marked. */
  readonly laid: readonly Pick<Mark, 'bit' | 'op'>[];
}

/** A step in which cards are taken off the top of one pile one after another. */
export interface Dealing {
  readonly from: string;
  readonly cards: readonly Dealt[];
  /** What is done before and after. */
  readonly first: readonly Meant[];
  readonly last: readonly Meant[];
  /** True when it goes on until no card is left there. */
  readonly exhausts: boolean;
  /** Cards that stay, where the dealing goes on until so many are left. */
  readonly floor: number;
}

/** The actions of a step as a dealing of single cards, or null where they are none. */
export function dealingIn(before: Layout, actions: readonly Action[]): Dealing | null {
  const meant = meantBy(before, actions);
  const isOfOne = (action: Action): boolean =>
    action.do === 'carry' &&
    action.at === 0 &&
    (action.count === 1 || action.reversed === true) &&
    action.turned === undefined &&
    action.spun !== true;
  const begin = actions.findIndex(isOfOne);
  const start = actions[begin];
  if (start === undefined || start.do !== 'carry') return null;
  const { from } = start;
  const turned = new Set<number>();
  // Cards that are turned as they are dealt are marked where they lie before.
  let first = begin;
  for (; first > 0; first--) {
    const action = actions[first - 1];
    if (action.do !== 'mark' || action.pile !== from || action.bit !== 'up' || action.op !== 'toggle') break;
    for (let k = 0; k < action.count; k++) turned.add(action.at + k);
  }
  const cards: { to: string; beneath: boolean; isTurned: boolean; laid: Pick<Mark, 'bit' | 'op'>[] }[] = [];
  const sizes = new Sizes(before);
  actions.slice(0, begin).forEach((action) => sizes.after(action));
  let i = begin;
  for (; i < actions.length; i++) {
    const action = actions[i];
    if (action.do === 'mark') {
      const latest = cards.slice(cards.length - action.count);
      const fits =
        action.at === 0 && latest.length === action.count && latest.every(({ to }) => to === action.pile);
      if (!fits) break;
      latest.forEach(({ laid }) => laid.push({ bit: action.bit, op: action.op }));
      continue;
    }
    if (!isOfOne(action) || action.from !== from) break;
    const { beneath } = meant[i];
    for (let k = 0; k < action.count; k++)
      cards.push({ to: action.to, beneath, isTurned: turned.has(cards.length), laid: [] });
    sizes.after(action);
  }
  const left = sizes.at(from);
  const goesUnder = cards.some(({ to }) => to === from);
  const goesDown = cards.some(({ to }) => to !== from);
  return {
    from,
    cards,
    first: meant.slice(0, first),
    last: meant.slice(i),
    exhausts: left === 0,
    floor: goesUnder && goesDown ? left : 0,
  };
}

/** The dealing done again with these cards to deal; where card number `doubled` should go, two go as one. */
export function dealt(before: Layout, dealing: Dealing, cards: readonly Dealt[], doubled = -1): Action[] {
  const { from, floor, first, last } = dealing;
  const sizes = new Sizes(before);
  const done = redone(sizes, first);
  const act = (action: Action): void => {
    sizes.after(action);
    done.push(action);
  };
  cards.forEach(({ to, beneath, isTurned, laid }, i) => {
    const size = sizes.at(from);
    const count = Math.min(i === doubled ? 2 : 1, to === from ? size : size - floor);
    if (count <= 0) return;
    const there = sizes.at(to) - (to === from ? count : 0);
    const into = beneath ? there : 0;
    act(carry(from, 0, count, to, into, isTurned ? { turned: 'side' } : {}));
    for (const { bit, op } of laid) act(mark(to, into, count, bit, op));
  });
  return [...done, ...redone(sizes, last)];
}

/** The pile from which cards are dealt one by one whatever is chosen, and how many at least; null where there is none. */
export function dealtByAll(
  layout: Layout,
  options: readonly Pick<Option, 'actions'>[],
): { readonly pile: string; readonly count: number } | null {
  const dealings = options.map(({ actions }) => dealingIn(layout, actions));
  const [first] = dealings;
  if (first === undefined || first === null) return null;
  const counts: number[] = [sizeOf(layout, first.from)];
  for (const dealing of dealings) {
    if (dealing?.from !== first.from) return null;
    counts.push(dealing.cards.length);
  }
  return { pile: first.from, count: Math.min(...counts) };
}
