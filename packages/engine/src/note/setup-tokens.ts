import { numberIn } from '../phrases/tokens.ts';

/** Longest line that is read, in UTF-16 code units; 208 cards written in words fit twice. */
export const MOST_LINE = 10_000;

/**
 * A piece of a set-up line. Unlike the sentences of the working, a set-up needs its commas, its articles and the places of
 * hyphens, so it has tokens of its own. `odd` is a sign that has no meaning here.
 */
export interface SetUpToken {
  readonly is: 'word' | 'quoted' | 'sign' | 'odd';
  /** Words in lower case; quoted names as written. */
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const TOKEN =
  /\s+|"([^"\n]*)"|“([^“”\n]*)”|([\p{L}\p{N}♠♥♦♣♤♡♢♧](?:[\p{L}\p{M}\p{N}♠♥♦♣♤♡♢♧]|['’](?=\p{L}))*)|([-–—,;:^'’=])|[^\s]/gu;

/** Cuts a line into tokens; `base` is its place in the note. */
export function setUpTokens(text: string, base: number): SetUpToken[] {
  const tokens: SetUpToken[] = [];
  for (const match of text.matchAll(TOKEN)) {
    const [raw, straight, curly, word, sign] = match;
    const from = base + match.index;
    const to = from + raw.length;
    const quoted = straight ?? curly;
    if (quoted !== undefined)
      tokens.push({ is: 'quoted', text: quoted.trim().replace(/\s+/g, ' '), from, to });
    else if (word !== undefined)
      tokens.push({
        is: 'word',
        text: word.replaceAll('\uFE0F', '').replaceAll('’', "'").toLowerCase(),
        from,
        to,
      });
    else if (sign !== undefined) tokens.push({ is: 'sign', text: plainSign(sign), from, to });
    else if (raw.trim() !== '') tokens.push({ is: 'odd', text: raw, from, to });
  }
  // A full stop that ends the line is only punctuation.
  if (tokens.at(-1)?.text === '.') tokens.pop();
  return tokens;
}

function plainSign(sign: string): string {
  return sign === '’' ? "'" : sign.replace(/[–—]/, '-');
}

const TENS: ReadonlyMap<string, number> = new Map([
  ['twenty', 20],
  ['thirty', 30],
  ['forty', 40],
  ['fifty', 50],
]);

/** A number in digits or words (up to fifty-nine) at a token, and how many tokens it takes. */
export function countAt(tokens: readonly SetUpToken[], at: number): { n: number; length: number } | null {
  const token = tokens[at];
  if (token === undefined || token.is !== 'word') return null;
  if (/^\d+$/.test(token.text)) return { n: Math.min(Number(token.text), 1_000_000), length: 1 };
  const tens = TENS.get(token.text);
  if (tens !== undefined) {
    const hyphen = tokens[at + 1]?.text === '-' ? 1 : 0;
    const unit = wordNumber(tokens[at + 1 + hyphen]);
    if (unit !== undefined && unit > 0 && unit < 10) return { n: tens + unit, length: 2 + hyphen };
    return { n: tens, length: 1 };
  }
  const n = wordNumber(token);
  return n === undefined ? null : { n, length: 1 };
}

function wordNumber(token: SetUpToken | undefined): number | undefined {
  if (token === undefined || token.is !== 'word' || /^\d/.test(token.text)) return undefined;
  return numberIn({ text: token.text, quoted: false, from: token.from, to: token.to });
}
