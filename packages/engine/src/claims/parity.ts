import type { Card } from '../cards/card.ts';
import { boundsOfTerms } from './bounds.ts';
import { equal, FALSE, type Formula, type Term } from './formula.ts';
import { normalModulo2 } from './normal.ts';

/**
 * A statement that some 0/1 readings add up to an even number: one equation over GF(2) in normal form, so that two of them can be
 * compared and added. Keys tell (slot, measure) apart, measures being alike when they read the same of every card.
 */
export interface Parity {
  readonly entries: ReadonlyMap<string, Term>;
  readonly odd: 0 | 1;
}

/** The equation as a parity, or null when it says more than that. */
export function parityOf(formula: Formula, cards: readonly Card[]): Parity | null {
  if (formula.is !== 'equal') return null;
  if (formula.mod === undefined) {
    const [low, high] = boundsOfTerms(formula.terms, cards);
    if (low - formula.total < -1 || high - formula.total > 1) return null;
  } else if (formula.mod !== 2) return null;
  const entries = new Map<string, Term>();
  let odd = formula.total & 1;
  for (const term of formula.terms) {
    if ((term.coef & 1) === 0) continue;
    const { measure, flipped } = normalModulo2(term.measure, cards);
    if (flipped) odd ^= 1;
    if (measure !== null) toggle(entries, `${term.slot} ${measure.id}`, { ...term, measure });
  }
  return { entries, odd: odd === 1 ? 1 : 0 };
}

function toggle(entries: Map<string, Term>, key: string, term: Term): void {
  if (!entries.delete(key)) entries.set(key, { ...term, coef: 1 });
}

/** True when exactly one of the two is: the two statements added. */
export function sumOf(a: Parity, b: Parity): Parity {
  const entries = new Map(a.entries);
  for (const [key, term] of b.entries) toggle(entries, key, term);
  return { entries, odd: a.odd === b.odd ? 0 : 1 };
}

export function opposed(a: Parity): Parity {
  return { ...a, odd: a.odd === 1 ? 0 : 1 };
}

export function formulaOf({ entries, odd }: Parity): Formula {
  if (entries.size === 0) return odd === 0 ? { is: 'known', holds: true } : FALSE;
  return equal([...entries.values()], odd, 2);
}
