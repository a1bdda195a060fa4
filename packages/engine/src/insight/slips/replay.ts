import type { Action, Carry, Mark } from '../../pictures/actions.ts';
import type { Layout } from '../../pictures/layout.ts';

/** Numbers of cards in piles while hands are at work. */
export class Sizes {
  private readonly of: Map<string, number>;

  constructor(layout: Layout) {
    this.of = new Map(layout.names.map((name, i) => [name, layout.sizes[i]]));
  }

  at(pile: string): number {
    return this.of.get(pile) ?? 0;
  }

  after(action: Action): void {
    if (action.do !== 'carry') return;
    this.of.set(action.from, this.at(action.from) - action.count);
    this.of.set(action.to, this.at(action.to) + action.count);
  }
}

/**
 * An action as a person means it: all of a pile or so many cards, from the top or the bottom, on top or beneath. Done again on piles
 * of other sizes it is still the same.
 */
export interface Meant {
  readonly action: Action;
  readonly all: boolean;
  readonly fromBottom: boolean;
  readonly beneath: boolean;
  /** A mark on just those cards that the action before laid down. */
  readonly onLaid: boolean;
}

export function meantBy(before: Layout, actions: readonly Action[]): Meant[] {
  const sizes = new Sizes(before);
  let laid: Carry | null = null;
  return actions.map((action): Meant => {
    const pile = action.do === 'carry' ? action.from : action.pile;
    const size = sizes.at(pile);
    const all = action.count === size;
    const fromBottom = !all && action.at > 0 && action.at + action.count === size;
    let beneath = false;
    let onLaid = false;
    if (action.do === 'carry') {
      const there = sizes.at(action.to) - (action.from === action.to ? action.count : 0);
      beneath = there > 0 && action.into === there;
      laid = action;
    } else
      onLaid =
        laid !== null && laid.to === action.pile && laid.into === action.at && laid.count === action.count;
    sizes.after(action);
    return { action, all, fromBottom, beneath, onLaid };
  });
}

/** The same on other piles; what there are no cards for is left out. `sizes` are those of the piles, and afterwards those that result. */
export function redone(sizes: Sizes, meant: readonly Meant[]): Action[] {
  const done: Action[] = [];
  let laid: Carry | null = null;
  for (const one of meant) {
    const action: Action | null =
      one.action.do === 'carry' ? carried(one, one.action, sizes) : marked(one, one.action, sizes, laid);
    if (action === null) continue;
    sizes.after(action);
    done.push(action);
    if (action.do === 'carry') laid = action;
  }
  return done;
}

function carried({ all, fromBottom, beneath }: Meant, action: Carry, sizes: Sizes): Carry | null {
  const size = sizes.at(action.from);
  const count = all ? size : Math.min(action.count, size);
  if (count === 0) return null;
  const there = sizes.at(action.to) - (action.from === action.to ? count : 0);
  return {
    ...action,
    count,
    at: fromBottom ? size - count : Math.min(action.at, size - count),
    into: beneath ? there : Math.min(action.into, there),
  };
}

function marked(
  { all, fromBottom, onLaid }: Meant,
  action: Mark,
  sizes: Sizes,
  laid: Carry | null,
): Mark | null {
  const size = sizes.at(action.pile);
  const wanted = onLaid && laid !== null ? laid.count : all ? size : action.count;
  const count = Math.min(wanted, size);
  if (count === 0) return null;
  return { ...action, count, at: fromBottom ? size - count : Math.min(action.at, size - count) };
}
