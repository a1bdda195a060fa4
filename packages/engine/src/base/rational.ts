/** An exact fraction in lowest terms with a positive denominator. */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

function gcd(a: bigint, b: bigint): bigint {
  while (b !== 0n) [a, b] = [b, a % b];
  return a < 0n ? -a : a;
}

export function rational(n: bigint, d: bigint = 1n): Rational {
  const g = gcd(n, d);
  const sign = d < 0n ? -1n : 1n;
  return g === 0n ? { n: 0n, d: 1n } : { n: (sign * n) / g, d: (sign * d) / g };
}

export const ZERO: Rational = { n: 0n, d: 1n };
export const ONE: Rational = { n: 1n, d: 1n };

export function plus(a: Rational, b: Rational): Rational {
  if (a.n === 0n) return b;
  if (b.n === 0n) return a;
  return a.d === b.d ? rational(a.n + b.n, a.d) : rational(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function times(a: Rational, b: Rational): Rational {
  if (a.n === 0n || b.n === 0n) return ZERO;
  return rational(a.n * b.n, a.d * b.d);
}

/** The nearest double; exact enough for decimals people read. */
export function toNumber(a: Rational): number {
  if (a.n === 0n) return 0;
  // Scaled to 2^60 so that numbers beyond the range of doubles still divide well.
  const scaled = (a.n << 60n) / a.d;
  return Number(scaled) / 2 ** 60;
}

/**
 * The 95 % interval for a chance of which `hits` in `runs` trials succeeded, by Wilson's score method (E. B. Wilson, Probable
 * inference, the law of succession, and statistical inference, JASA 22, 1927).
 */
export function wilson(hits: number, runs: number): { readonly low: number; readonly high: number } {
  if (runs === 0) return { low: 0, high: 1 };
  const z = 1.959963984540054;
  const share = hits / runs;
  const z2 = (z * z) / runs;
  const centre = (share + z2 / 2) / (1 + z2);
  const half = (z * Math.sqrt((share * (1 - share)) / runs + z2 / (4 * runs))) / (1 + z2);
  return { low: Math.max(0, centre - half), high: Math.min(1, centre + half) };
}
