import type { Card } from '../../cards/card.ts';
import type { Ending } from '../../routine/routine.ts';
import type { Problem } from '../../proving/problem.ts';
import { constantOf, shareOf, slotsOf, type StartLine, type StartNeed } from './start-need.ts';

/** An equation that a packet breaks, for one member of its family or more. */
export interface SetUpFault {
  readonly ending: Ending;
  readonly problem: Problem;
  readonly row: readonly number[];
  /** Slots of the start that the equation speaks of. */
  readonly slots: readonly number[];
}

/**
 * Equations that the cards, lying as in the routine's set-up, do not satisfy, in the order in which somebody looking through the packet
 * from the top can see it; those that speak of fewer cards first. Empty when the ending is certain, as far as it is said in equations.
 */
export function faultsOf(need: StartNeed): SetUpFault[] {
  const { cards, bits } = need.starts.base;
  const broken = new Map<readonly number[], SetUpFault>();
  for (const line of need.lines) {
    if (broken.has(line.row) || valueOf(line, cards, bits) === 0) continue;
    const { ending, problem, row } = line;
    broken.set(row, { ending, problem, row, slots: slotsOf(line) });
  }
  const last = ({ slots }: SetUpFault): number => Math.max(-1, ...slots);
  return [...broken.values()].sort((a, b) => last(a) - last(b) || a.slots.length - b.slots.length);
}

/** Two slots whose cards, exchanged, make all equations true; the two nearest the top; null where no two do. */
export function mendingExchange(need: StartNeed): readonly [number, number] | null {
  const { cards, bits } = need.starts.base;
  const states = need.lines.map((line) => ({ line, value: valueOf(line, cards, bits) }));
  const broken = states.filter(({ value }) => value !== 0);
  const slots = new Set(broken.flatMap(({ line }) => slotsOf(line)));
  const changed = (line: StartLine, value: number, a: number, b: number): number => {
    const share = (slot: number, card: Card): number => shareOf(line, slot, card, bits[slot]);
    const off = share(a, cards[b]) - share(a, cards[a]) + share(b, cards[a]) - share(b, cards[b]);
    return (value + off) % line.problem.p;
  };
  const mends = (a: number, b: number): boolean =>
    broken.every(({ line, value }) => changed(line, value, a, b) === 0) &&
    states.every(({ line, value }) => changed(line, value, a, b) === 0);
  for (let a = 0; a < cards.length; a++)
    for (let b = a + 1; b < cards.length; b++)
      if ((slots.has(a) || slots.has(b)) && mends(a, b)) return [a, b];
  return null;
}

function valueOf(
  line: StartLine,
  cards: readonly Card[],
  bits: readonly number[] | ArrayLike<number>,
): number {
  return cards.reduce(
    (sum, card, slot) => (sum + shareOf(line, slot, card, bits[slot])) % line.problem.p,
    constantOf(line),
  );
}
