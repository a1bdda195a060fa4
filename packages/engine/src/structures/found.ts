import type { Pattern } from './form.ts';

/** A structure that was found in a pile, or in two. */
export interface Found {
  readonly form: string;
  readonly variant: string;
  readonly trade: string;
  readonly subject: string;
  /** In what: `colour`, `facing`. */
  readonly relation: string;
  readonly piles: readonly string[];
  /** Two or three words for margins. */
  readonly name: string;
  /** What is true of the pile or piles, in a sentence without its end. */
  readonly words: string;
  readonly pattern: Pattern;
  readonly ring: boolean;
  /** Sum, step or count; 0 for others. */
  readonly value: number;
  /** Number of independent equations it stands for. */
  readonly rank: number;
  /** Its equations: weights by slot of the table, and the total. */
  readonly rows: readonly SlotRow[];
}

export interface SlotRow {
  readonly weights: readonly (readonly [number, number])[];
  readonly total: number;
}
