import type { Card } from '../../cards/card.ts';
import { strangeness } from './packet-looks.ts';
import type { Packets } from './packets.ts';

/** What a packet should be like, besides making the ending certain. Small is good. */
export interface Wish {
  /** What a card in a slot costs with its neighbours; `before` are the cards above it, the nearest first. */
  readonly cost: (card: Card, before: readonly (Card | undefined)[]) => number;
}

// Cards above that matter for what a card costs.
const REACH = 3;
// Exchanges that are tried before the packet is taken as it is.
const MOST_TRIES = 60_000;

/** As innocent as can be. */
export const INNOCENT: Wish = { cost: strangeness };

/** As few blocks as can be, each a stretch of an order that is at hand: `placeOf` tells where in it a card lies. */
export function inBlocks(placeOf: (card: Card) => number): Wish {
  return {
    cost: (card, [above]) => (above !== undefined && Math.abs(placeOf(card) - placeOf(above)) === 1 ? 0 : 1),
  };
}

/** As few changes from one class to another as can be; of those that have as few, an innocent one. */
export function inHeaps(classOf: (card: Card) => number): Wish {
  return {
    cost: (card, before) => {
      const [above] = before;
      const change = above !== undefined && classOf(card) === classOf(above) ? 0 : 1;
      return change + strangeness(card, before) / LITTLE;
    },
  };
}

// More than a card can ever be strange.
const LITTLE = 1000;

/** The same classes in the same slots, the cards of each in the order of `placeOf` from the top. */
export function inOrderOf(
  packets: Packets,
  laid: readonly Card[],
  placeOf: (card: Card) => number,
): readonly Card[] {
  const classes = packets.classNumbers();
  const supply = packets.classes.map(({ cards }) => [...cards].sort((a, b) => placeOf(a) - placeOf(b)));
  return laid.map((card) => supply[classes.get(card.id) ?? 0].shift() ?? card);
}

/**
 * A packet that makes the ending certain and comes near to the wish: laid card by card, then bettered by exchanging cards while that
 * helps. Not the best there is, but often near it.
 */
export function packetFor(packets: Packets, { cost }: Wish): readonly Card[] | 'none' | 'not found' {
  const before = (laid: readonly (Card | undefined)[], slot: number): (Card | undefined)[] =>
    Array.from({ length: Math.min(REACH, slot) }, (_, k) => laid[slot - 1 - k]);
  const found = packets.find((card, slot, laid) => {
    const after = laid[slot + 1];
    const own = cost(card, before(laid, slot));
    return after === undefined ? own : own + cost(after, [card, ...before(laid, slot)]);
  });
  if (typeof found === 'string') return found;
  const laid = [...found];
  const classes = packets.classNumbers();
  const classOf = (card: Card): number => classes.get(card.id) ?? 0;
  const costAt = (slots: ReadonlySet<number>): number => {
    let sum = 0;
    for (const slot of slots) sum += cost(laid[slot], before(laid, slot));
    return sum;
  };
  const touched = (...slots: readonly number[]): Set<number> =>
    new Set(
      slots.flatMap((slot) =>
        Array.from({ length: REACH + 1 }, (_, k) => slot + k).filter((one) => one < laid.length),
      ),
    );
  const ids = new Set(laid.map(({ id }) => id));
  const spare = packets.classes.flatMap(({ cards }) => cards.filter(({ id }) => !ids.has(id)));
  let tries = 0;
  const isBetter = (slots: ReadonlySet<number>, change: () => void, back: () => void): boolean => {
    tries++;
    const old = costAt(slots);
    change();
    if (costAt(slots) < old) return true;
    back();
    return false;
  };
  for (let changed = true; changed && tries < MOST_TRIES;) {
    changed = false;
    for (let a = 0; a < laid.length && tries < MOST_TRIES; a++) {
      for (let b = a + 1; b < laid.length; b++) {
        const swap = (): void => void ([laid[a], laid[b]] = [laid[b], laid[a]]);
        if (!packets.mayExchange(a, classOf(laid[a]), b, classOf(laid[b]))) continue;
        if (isBetter(touched(a, b), swap, swap)) changed = true;
      }
      for (const [k, other] of spare.entries()) {
        const old = laid[a];
        if (!packets.mayReplace(a, classOf(old), classOf(other))) continue;
        const change = (): void => void ([laid[a], spare[k]] = [other, old]);
        const back = (): void => void ([laid[a], spare[k]] = [old, other]);
        if (isBetter(touched(a), change, back)) changed = true;
      }
    }
  }
  return laid;
}
