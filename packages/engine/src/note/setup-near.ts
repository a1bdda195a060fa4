import type { Facts } from '../base/diagnostic.ts';

/** `Did you mean "9C" or "9H"?` where near words were found, else what to do without them. */
export function didYouMean(facts: Facts, otherwise: string): string {
  const { near } = facts;
  if (typeof near !== 'object' || near.length === 0) return otherwise;
  const quoted = near.map((word) => (word.startsWith('"') ? word : `"${word}"`));
  const last = quoted[quoted.length - 1];
  return `Did you mean ${quoted.length === 1 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`}?`;
}
