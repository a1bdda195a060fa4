import type { Card } from '../cards/card.ts';
import type { Measure } from '../claims/formula.ts';
import { applyOp } from '../pictures/effect.ts';
import type { MemberProof } from '../verdicts/certificate.ts';

/** A function of one card and its bits, as the plain list of its values: cards outermost, settings of `bits` innermost. */
export type Values = readonly number[];

export function mod(value: number, p: number): number {
  return ((value % p) + p) % p;
}

export function valuesOf(
  measure: Measure,
  bits: readonly string[],
  cards: readonly Card[],
  p: number,
): Values {
  const values: number[] = [];
  for (const card of cards)
    for (let s = 0; s < 1 << bits.length; s++)
      values.push(
        mod(
          measure.of(card, (bit) => (s >> bits.indexOf(bit)) & 1),
          p,
        ),
      );
  return values;
}

/** The setting that an operation makes of a setting; `kinds` number the bits as the operation word does. */
export function settingUnder(op: number, setting: number, kinds: readonly number[]): number {
  let after = 0;
  kinds.forEach((kind, i) => {
    after |= applyOp((setting >> i) & 1, (op >>> (2 * kind)) & 3) << i;
  });
  return after;
}

/**
 * Writes a function as a combination of a member's columns and a constant, or null when it is none: plain elimination on the
 * lists of values.
 */
export function combine(
  target: Values,
  member: MemberProof,
  p: number,
): { columns: number[]; constant: number } | null {
  const functions = [target.map(() => 1), ...member.columns];
  const rows = target.map((value, i) => [...functions.map((f) => mod(f[i], p)), mod(value, p)]);
  const width = functions.length;
  const pivots: number[] = [];
  let top = 0;
  for (let k = 0; k < width; k++) {
    const found = rows.findIndex((row, i) => i >= top && row[k] !== 0);
    if (found < 0) continue;
    [rows[top], rows[found]] = [rows[found], rows[top]];
    const scale = power(rows[top][k], p - 2, p);
    rows[top] = rows[top].map((value) => (value * scale) % p);
    rows.forEach((row, i) => {
      if (i === top || row[k] === 0) return;
      const times = row[k];
      rows[i] = row.map((value, j) => mod(value - times * rows[top][j], p));
    });
    pivots.push(k);
    top++;
  }
  if (rows.slice(top).some((row) => row[width] !== 0)) return null;
  const solution = new Array<number>(width).fill(0);
  pivots.forEach((k, i) => (solution[k] = rows[i][width]));
  return { constant: solution[0], columns: solution.slice(1) };
}

/** a to the e-th modulo p by squaring. */
export function power(a: number, e: number, p: number): number {
  let result = 1 % p;
  let base = mod(a, p);
  for (let n = e; n > 0; n = Math.floor(n / 2)) {
    if (n % 2 === 1) result = (result * base) % p;
    base = (base * base) % p;
  }
  return result;
}
