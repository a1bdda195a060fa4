import type { Kind } from '../phrases/values.ts';
import type { Exit } from './claim.ts';
import { among, numeric } from './measures.ts';
import { total, type Sum } from './sums.ts';

/** What an attribute of the cards of a kind adds up to in some slots. */
export function totalOf(attribute: string, kind: Kind, slots: readonly number[], exit: Exit): Sum {
  const measure = numeric(attribute);
  return total(kind.tests.length === 0 ? measure : among(kind, measure), slots, exit);
}
