import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import { numberIn, type Token } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';

// Words of one sentence that are tried as the name that is missing.
const MOST_TRIED = 4;

/**
 * The word of a sentence that would be understood if only it were the name of a number or of a card: what is missing is then
 * not the sentence but the name.
 */
export function missingName(
  tokens: readonly Token[],
  names: Names,
  isSuspect: (name: string) => boolean,
  reads: (names: Names) => boolean,
): Diagnostic | null {
  const suspects = tokens.flatMap((token) => {
    const nth = /^(\p{L})th$/u.exec(token.text);
    const name = nth === null ? token.text : nth[1];
    const isWord = !token.quoted && numberIn(token) === undefined && /^\p{L}+$/u.test(name);
    const isKnown = names.numbers.includes(name) || names.marks.includes(name) || names.piles.includes(name);
    return isWord && !isKnown && isSuspect(name) ? [{ name, token }] : [];
  });
  for (const { name, token } of suspects.slice(0, MOST_TRIED)) {
    // A letter is more likely a number, a word a card.
    const kinds = name.length === 1 ? (['numbers', 'marks'] as const) : (['marks', 'numbers'] as const);
    for (const kind of kinds) {
      if (!reads({ ...names, [kind]: [...names[kind], name] })) continue;
      // Names with a space are hidden ones, such as `that pile`.
      const known = names[kind].filter((one) => !one.includes(' '));
      const range = { from: token.from, to: token.to };
      return diagnostic(kind === 'numbers' ? 'number-not-named' : 'mark-not-put', range, { name, known });
    }
  }
  return null;
}
