import type { Family } from './probed.ts';

/** Every operation on the two bits that any card has: facing and ends. */
export const ALL_OPS: readonly number[] = Array.from({ length: 16 }, (_, i) => i).filter((op) => op !== 0);

/**
 * Whether a family's columns can say what an operation on bits does, and say the same for all its members: the family was made for
 * the operations of the routine, and what is put in may bring others.
 */
export class Closed {
  private readonly known = new Map<number, boolean>();
  private readonly family: Family;

  constructor(family: Family) {
    this.family = family;
  }

  under(op: number): boolean {
    let is = this.known.get(op);
    if (is === undefined) this.known.set(op, (is = this.work(op)));
    return is;
  }

  private work(op: number): boolean {
    const { members, space } = this.family.problem;
    if (!space.isClosedUnder(op)) return false;
    const map = JSON.stringify(space.under(op));
    return members.every(
      (member) =>
        member.space === space ||
        (member.space.isClosedUnder(op) && JSON.stringify(member.space.under(op)) === map),
    );
  }
}
