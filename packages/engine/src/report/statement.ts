import type { Equation } from './equation.ts';

/** Something that is true of every table the equations are true of, and the other way round. */
export interface Statement {
  readonly words: string;
  readonly equations: readonly Equation[];
}
