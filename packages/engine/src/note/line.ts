import type { Range } from '../base/diagnostic.ts';
import { tokenize, type Token } from '../phrases/tokens.ts';
import type { Piece } from './note.ts';

/**
 * A paragraph cut into words. `before[k]` holds the stops, colons, semicolons and commas between word k - 1 and word k;
 * its last entry is what follows the last word.
 */
export interface Line {
  readonly text: string;
  readonly range: Range;
  readonly tokens: readonly Token[];
  readonly before: readonly string[];
  /** Where word k begins with its article, which is no word of its own. */
  readonly starts: readonly number[];
  /** A sign that the words of a sentence cannot carry, such as `½` or `<`: never passed over in silence. */
  readonly stray: Piece | null;
}

// What may stand between words without meaning anything. Digits of other scripts and signs of arithmetic are not among it.
const STRAY = /[\p{N}\p{Sm}\p{Sc}/&@#\\]/u;
const ARTICLES = /(?:\b(?:the|a|an)\s+)+$/i;
const STOP = /[.!?](?=[\s"”'’)\]*_]|$)/;

export function lineOf(piece: Piece): Line {
  const { text, range } = piece;
  const tokens = tokenize(text, range.from);
  const before: string[] = [];
  const starts: number[] = [];
  let stray: Piece | null = null;
  for (let k = 0; k <= tokens.length; k++) {
    const from = (tokens[k - 1]?.to ?? range.from) - range.from;
    const to = (tokens[k]?.from ?? range.to) - range.from;
    const gap = text.slice(from, to);
    const articles = ARTICLES.exec(gap);
    starts.push(range.from + (articles === null ? to : from + articles.index));
    const decimal = gap === '.' && k > 0 && k < tokens.length;
    before.push(decimal ? '' : signsIn(gap));
    const at: number = stray === null ? gap.search(STRAY) : -1;
    if (at >= 0) {
      const sign = String.fromCodePoint(gap.codePointAt(at) as number);
      const place: number = range.from + from + at;
      stray = { text: sign, range: { from: place, to: place + sign.length } };
    }
  }
  return { text, range, tokens, before, starts, stray };
}

function signsIn(gap: string): string {
  let signs = '';
  for (let i = 0; i < gap.length; i++) {
    const c = gap[i];
    if (c === ',' || c === ';') signs += c;
    else if (c === ':' && /^\s|^[*_]|^$/.test(gap.slice(i + 1, i + 2))) signs += c;
    else if (STOP.test(gap.slice(i, i + 2)) && '.!?'.includes(c)) signs += '.';
  }
  return signs;
}

/** Words `from` up to `to`, of one line. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export function wordsOf(line: Line, span: Span): readonly Token[] {
  return line.tokens.slice(span.from, span.to);
}

/** Where a span stands in the note; an empty one is the place before its first word. */
export function placeOf(line: Line, { from, to }: Span): Range {
  if (from >= to) {
    const at = line.tokens[from - 1]?.to ?? line.range.from;
    return { from: at, to: Math.min(at + 1, line.range.to) };
  }
  return { from: line.starts[from], to: line.tokens[to - 1].to };
}

/** The parts of a span between places where one of `signs` stands; empty parts are left out. */
export function splitAt(line: Line, span: Span, signs: string): Span[] {
  const parts: Span[] = [];
  let from = span.from;
  for (let k = span.from + 1; k <= span.to; k++) {
    if (k < span.to && ![...line.before[k]].some((sign) => signs.includes(sign))) continue;
    if (from < k) parts.push({ from, to: k });
    from = k;
  }
  return parts;
}

/** Whether the words from `at` on are these. */
export function saysAt(tokens: readonly Token[], at: number, words: readonly string[]): boolean {
  return words.every((word, i) => tokens[at + i]?.text === word && tokens[at + i]?.quoted === false);
}
