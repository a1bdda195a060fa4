/**
 * What a performance costs: decisions away from the plain path, then steps begun, then options taken. Kept as one whole
 * number, so that less is less; each part stays below 2^17.
 */
export interface Cost {
  readonly off: number;
  readonly steps: number;
  readonly options: number;
}

const PART = 2 ** 17;

export function pack(off: number, steps: number, options: number): number {
  return (off * PART + steps) * PART + options;
}

export function unpack(cost: number): Cost {
  const options = cost % PART;
  const rest = (cost - options) / PART;
  return { off: Math.floor(rest / PART), steps: rest % PART, options };
}
