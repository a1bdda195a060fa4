/**
 * The two things hands can do to cards. Everything else is made of these: the proof uses the permutation they make and the
 * table plays them, so what is seen is what was proved.
 */
export interface Carry {
  readonly do: 'carry';
  readonly from: string;
  /** Place of the block's uppermost card, 0 = top of the pile. */
  readonly at: number;
  readonly count: number;
  readonly to: string;
  /** Place the block's uppermost card takes, counted after the block has left its old pile. */
  readonly into: number;
  /** Order reversed without turning, as dealing one by one does. */
  readonly reversed?: boolean;
  /** Turned over as one: order reversed, every card shows its other side; `end` also exchanges its ends. */
  readonly turned?: 'side' | 'end';
  /** Turned round flat on the table: ends exchanged, nothing else. */
  readonly spun?: boolean;
}

export interface Mark {
  readonly do: 'mark';
  readonly pile: string;
  readonly at: number;
  readonly count: number;
  /** `up`, `end` or the name of a mark such as `chosen`. */
  readonly bit: string;
  readonly op: 'toggle' | 'set' | 'clear';
}

export type Action = Carry | Mark;

/** A carry of one block; `more` turns, reverses or spins it. */
export function carry(
  from: string,
  at: number,
  count: number,
  to: string,
  into: number,
  more: { reversed?: boolean; turned?: 'side' | 'end'; spun?: boolean } = {},
): Carry {
  return { do: 'carry', from, at, count, to, into, ...more };
}

export function mark(pile: string, at: number, count: number, bit: string, op: Mark['op']): Mark {
  return { do: 'mark', pile, at, count, bit, op };
}
