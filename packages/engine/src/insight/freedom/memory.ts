import { CandidateBooks } from './candidates.ts';
import type { FreedomRow } from './row.ts';

// Moments that are kept; a long note has some dozens.
const MOST_MOMENTS = 400;

/**
 * What was found at moments seen before, by what arrives there and what is needed from there on, and what could be done with piles of
 * such sizes at all. Kept by the caller while a note is edited, so that only moments that changed are worked out again.
 */
export class FreedomMemory {
  readonly books = new CandidateBooks();
  /** Moments that were found here, and moments that had to be worked out. */
  remembered = 0;
  worked = 0;
  private readonly rows = new Map<string, readonly FreedomRow[]>();

  get isEmpty(): boolean {
    return this.rows.size === 0;
  }

  recall(key: string): readonly FreedomRow[] | undefined {
    const known = this.rows.get(key);
    if (known === undefined) return undefined;
    this.remembered++;
    // The most lately used stands last.
    this.rows.delete(key);
    this.rows.set(key, known);
    return known;
  }

  keep(key: string, rows: readonly FreedomRow[]): void {
    this.worked++;
    const [oldest] = this.rows.keys();
    if (this.rows.size >= MOST_MOMENTS && oldest !== undefined) this.rows.delete(oldest);
    this.rows.set(key, rows);
  }
}
