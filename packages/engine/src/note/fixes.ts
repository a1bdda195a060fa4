import { distance } from 'fastest-levenshtein';
import type { Diagnostic, Facts, Fix } from '../base/diagnostic.ts';
import { printHead } from './blocks.ts';

const MOST_FIXES = 3;

/** A diagnostic with the changes its facts suggest, where whoever found it gave none. */
export function withFixes(found: Diagnostic, text: string, cards: readonly string[]): Diagnostic {
  if (found.fixes.length > 0) return found;
  const fixes = fixesFor(found, text.slice(found.range.from, found.range.to), cards);
  return fixes.length === 0 ? found : { ...found, fixes };
}

function fixesFor({ code, range, facts }: Diagnostic, written: string, cards: readonly string[]): Fix[] {
  const write = (text: string): Fix => ({ label: text, range, text });
  switch (code) {
    case 'unknown-pile':
      return near(written, facts.pile, facts.known).map(write);
    case 'unknown-mark':
      return near(written, facts.mark, facts.known).map(write);
    case 'number-not-named':
    case 'mark-not-put':
      return near(written, facts.name, facts.known, true).map(write);
    case 'unknown-card':
      return near(written, facts.card, cards).map(write);
    case 'who-repeats':
      return (['spectator', 'performer'] as const).map((who) =>
        write(printHead({ is: 'repeat', times: { of: 'any' }, who })),
      );
    default:
      return [];
  }
}

/** The nearest of the names there are, if what is written is the name and nothing else; of a few, all. */
function near(
  written: string,
  name: Facts[string] | undefined,
  known: Facts[string] | undefined,
  all = false,
): string[] {
  if (typeof name !== 'string' || !Array.isArray(known) || written.toLowerCase() !== name.toLowerCase())
    return [];
  const most = Math.max(1, Math.floor(name.length / 2));
  return (known as readonly string[])
    .filter((one) => one !== '')
    .map((one) => ({ one, off: distance(name.toLowerCase(), one.toLowerCase()) }))
    .filter(({ off }) => all || off <= most)
    .sort((a, b) => a.off - b.off)
    .slice(0, MOST_FIXES)
    .map(({ one }) => (one.length === 1 ? one.toUpperCase() : one));
}
