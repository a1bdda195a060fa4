import { toNumber } from '../base/rational.ts';
import type { SentenceDecision } from '../proving/decision.ts';
import { costData } from './performance.ts';
import type { Coverage } from './coverage.ts';

/** `1,234`; from a thousand million on `about 8.1 × 10^67`. */
export function grouped(exact: bigint | number | string): string {
  const digits = String(exact);
  if (digits.length > 12) return `about ${digits[0]}.${digits[1]} × 10^${digits.length - 1}`;
  return digits.replace(/\B(?=(\d{3})+$)/g, ',');
}

export function counted(n: number, one: string, many = `${one}s`): string {
  return `${grouped(n)} ${n === 1 ? one : many}`;
}

/** How a sentence was settled, in words. */
export function sayMethod({
  method,
  states,
  rows,
}: Pick<SentenceDecision, 'method' | 'states' | 'rows'>): string {
  switch (method) {
    case 'sizes':
      return 'by the numbers of cards alone';
    case 'linear':
      return `by linear algebra (${counted(rows, 'equation')})`;
    case 'exact':
      return `by complete search (${counted(states, 'table')})`;
    case 'exact then linear':
      return `by complete search up to the last look at cards (${counted(states, 'table')}), then by linear algebra (${counted(rows, 'equation')})`;
    case 'rule':
      return `by search for a rule that the performer can follow (${counted(states, 'state of knowledge', 'states of knowledge')})`;
    case 'chance':
      return 'by its chance when every choice is made at random';
    case 'trials':
      return 'by random performances';
  }
}

/** `all 40,320 performances`, `every performance, however long`. */
export function sayPerformances({ performances, starts }: Pick<Coverage, 'performances' | 'starts'>): string {
  const laid = starts === '1' ? '' : `, for each of the ${grouped(starts)} ways to lay the cards out`;
  if (performances === 'unlimited') return `every performance, however often it is repeated${laid}`;
  if (performances === null) return `every performance${laid}`;
  if (performances === '1') return `the one performance there is${laid}`;
  return `all ${grouped(performances)} performances${laid}`;
}

export function sayDecisions(cost: number): string {
  const { decisions, steps } = costData(cost);
  const after = counted(steps, 'step');
  if (decisions === 0) return `on the plainest way there is, after ${after}`;
  return `with ${counted(decisions, 'decision')} off the plainest way, after ${after}`;
}

/** What random performances gave where nothing was settled. */
export function sayTrials(trials: SentenceDecision['trials']): string {
  if (trials === undefined || trials.runs === 0) return 'No random performance came to its end.';
  return `${counted(trials.runs, 'random performance')} (seed ${trials.seed}): none failed, which proves nothing.`;
}

/** A chance in words: `3 in 4 (0.75)`, `about 0.8417`. */
export function sayChance(chance: NonNullable<SentenceDecision['chance']>): string {
  switch (chance.kind) {
    case 'exact': {
      const { n, d } = chance.value;
      const decimal = toNumber(chance.value)
        .toFixed(4)
        .replace(/\.?0+$/, '');
      return String(d).length > 9 ? `about ${decimal}` : `${String(n)} in ${String(d)} (${decimal})`;
    }
    case 'estimate':
      return `between ${chance.low.toFixed(4)} and ${chance.high.toFixed(4)}, as far as ${counted(chance.runs, 'random performance')} tell`;
    case 'none':
      return 'not known';
  }
}
