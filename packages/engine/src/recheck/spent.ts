import type { Budget } from '../base/budget.ts';
import { BudgetEnded } from '../routine/graph.ts';

/** Counts work of the checker; throws BudgetEnded when more is not allowed. */
export function spent(budget: Budget, work = 1): void {
  if (!budget.spend(work)) throw new BudgetEnded('budget ended while a proof was checked');
}

/** A table met costs about as much as so many numbers looked at. */
export const TABLE_WORK = 64;
