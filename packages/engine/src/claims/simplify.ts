import type { Card } from '../cards/card.ts';
import { boundsOfTerms } from './bounds.ts';
import { and, FALSE, not, or, TRUE, type Formula, type Term } from './formula.ts';
import { normal } from './normal.ts';
import { unionOf } from './parallel.ts';
import { formulaOf, opposed, parityOf, sumOf } from './parity.ts';
import { between, equals, plus, times, ZERO, type Sum } from './sums.ts';

function known(holds: boolean): Formula {
  return holds ? TRUE : FALSE;
}

/**
 * The same meaning in a form that linear algebra can decide wherever there is one: nested `and` and `or` flattened, what is
 * known folded away, and over 0/1 readings `not`, `exactly when` and some `or` written as equations modulo 2.
 */
export function simplify(formula: Formula, cards: readonly Card[]): Formula {
  switch (formula.is) {
    case 'known':
    case 'judged':
      return formula;
    case 'equal':
    case 'order':
      return settled(formula, cards);
    case 'and':
      return conjunction(formula.parts.map((part) => simplify(part, cards)));
    case 'or':
      return disjunction(
        formula.parts.map((part) => simplify(part, cards)),
        cards,
      );
    case 'not':
      return denial(simplify(formula.part, cards), cards);
    case 'if': {
      const when = simplify(formula.when, cards);
      const then = simplify(formula.then, cards);
      if (when.is === 'known') return when.holds ? then : TRUE;
      if (then.is === 'known') return then.holds ? TRUE : denial(when, cards);
      return { is: 'if', when, then };
    }
    case 'exactly when':
      return equivalence(simplify(formula.left, cards), simplify(formula.right, cards), cards);
  }
}

/** In normal measures, with the sign that makes the first term positive; settled where the cards alone decide. */
function settled(asked: Formula & { is: 'equal' | 'order' }, cards: readonly Card[]): Formula {
  const sum = inNormalTerms(asked.terms, cards);
  const sign = (sum.terms[0]?.coef ?? 1) < 0 ? -1 : 1;
  const { least, most } = asked.is === 'order' ? asked : {};
  const formula =
    asked.is === 'equal'
      ? equals(times(sum, sign), sign * asked.total, asked.mod)
      : sign > 0
        ? between(sum, least, most)
        : between(times(sum, -1), negative(most), negative(least));
  if (formula.is !== 'equal' && formula.is !== 'order') return formula;
  const [low, high] = boundsOfTerms(formula.terms, cards);
  if (formula.is === 'order') {
    const { least = -Infinity, most = Infinity } = formula;
    if (low >= least && high <= most) return TRUE;
    return high < least || low > most ? FALSE : formula;
  }
  const { total, mod } = formula;
  if (low === high) return known(mod === undefined ? low === total : (low - total) % mod === 0);
  return mod === undefined && (total < low || total > high) ? FALSE : formula;
}

function inNormalTerms(terms: readonly Term[], cards: readonly Card[]): Sum {
  const sums = terms.map(({ slot, coef, measure }): Sum => {
    const found = normal(measure, cards);
    const reads =
      found.measure === null ? ZERO : { terms: [{ slot, coef: 1, measure: found.measure }], constant: 0 };
    return times(found.flipped ? plus({ terms: [], constant: 1 }, times(reads, -1)) : reads, coef);
  });
  const { terms: all, constant } = plus(...sums);
  return { terms: [...all].sort((a, b) => a.slot - b.slot), constant };
}

function negative(limit: number | undefined): number | undefined {
  return limit === undefined ? undefined : -limit;
}

function conjunction(parts: readonly Formula[]): Formula {
  const kept: Formula[] = [];
  for (const part of parts) {
    if (part.is === 'known' && !part.holds) return FALSE;
    if (part.is === 'and') kept.push(...part.parts);
    else if (part.is !== 'known') kept.push(part);
  }
  return kept.length === 0 ? TRUE : and(distinct(kept));
}

function disjunction(parts: readonly Formula[], cards: readonly Card[]): Formula {
  const kept: Formula[] = [];
  for (const part of parts) {
    if (part.is === 'known' && part.holds) return TRUE;
    if (part.is === 'or') kept.push(...part.parts);
    else if (part.is !== 'known') kept.push(part);
  }
  const once = distinct(kept);
  if (once.length < 2) return once[0] ?? FALSE;
  const union = unionOf(once, cards);
  return union === null ? or(once) : union.is === 'and' ? conjunction(union.parts) : union;
}

function denial(part: Formula, cards: readonly Card[]): Formula {
  if (part.is === 'known') return known(!part.holds);
  if (part.is === 'not') return part.part;
  const parity = parityOf(part, cards);
  return parity === null ? not(part) : formulaOf(opposed(parity));
}

function equivalence(left: Formula, right: Formula, cards: readonly Card[]): Formula {
  if (left.is === 'known') return left.holds ? right : denial(right, cards);
  if (right.is === 'known') return right.holds ? left : denial(left, cards);
  const [a, b] = [parityOf(left, cards), parityOf(right, cards)];
  return a === null || b === null ? { is: 'exactly when', left, right } : formulaOf(sumOf(a, b));
}

function distinct(parts: readonly Formula[]): Formula[] {
  return [...new Map(parts.map((part) => [keyOf(part), part] as const)).values()];
}

/** The same for formulas that are the same up to the order of terms. */
function keyOf(formula: Formula): string {
  switch (formula.is) {
    case 'known':
      return String(formula.holds);
    case 'equal':
    case 'order': {
      const terms = formula.terms.map(({ slot, coef, measure }) => `${coef}*${slot}:${measure.id}`).sort();
      const limits = formula.is === 'equal' ? [formula.total, formula.mod] : [formula.least, formula.most];
      return `${formula.is} ${terms.join('+')} ${limits.join()}`;
    }
    case 'judged':
      return `${formula.id}(${formula.terms.map(({ slot, measure }) => `${slot}:${measure.id}`).join()})`;
    case 'and':
    case 'or':
      return `${formula.is}(${formula.parts.map(keyOf).sort().join(';')})`;
    case 'not':
      return `not(${keyOf(formula.part)})`;
    case 'if':
      return `if(${keyOf(formula.when)};${keyOf(formula.then)})`;
    case 'exactly when':
      return `when(${[formula.left, formula.right].map(keyOf).sort().join(';')})`;
  }
}
