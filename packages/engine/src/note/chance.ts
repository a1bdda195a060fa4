import { numberIn } from '../phrases/tokens.ts';
import type { ChanceAsked } from '../routine/routine.ts';
import { placeOf, saysAt, type Line, type Span } from './line.ts';
import type { Range } from '../base/diagnostic.ts';

/** `With probability at least 0.8`, where it stands, and the sentence without it. */
export interface ChanceSaid {
  /** Null where no chance from 0 to 1 is said. */
  readonly asked: ChanceAsked | null;
  readonly range: Range;
  readonly rest: Span;
}

// Decimals beyond that are more exact than any chance needs, and stay whole numbers of a double.
const MOST_DIGITS = 12;

/** A chance at the beginning of a sentence, or at its end. */
export function chanceIn(line: Line, span: Span): ChanceSaid | null {
  const starts = (at: number): boolean =>
    saysAt(line.tokens, at, ['with', 'probability']) || saysAt(line.tokens, at, ['with', 'chance']);
  if (starts(span.from)) {
    const read = readChance(line, { from: span.from + 2, to: span.to });
    let to = read?.next ?? span.from + 2;
    while (read === null && to < span.to && !line.before[to].includes(',')) to++;
    const range = placeOf(line, { from: span.from, to });
    return { asked: read?.asked ?? null, range, rest: { from: to, to: span.to } };
  }
  for (let at = span.to - 2; at > span.from; at--) {
    if (!starts(at)) continue;
    const read = readChance(line, { from: at + 2, to: span.to });
    if (read?.next !== span.to) return null;
    return {
      asked: read.asked,
      range: placeOf(line, { from: at, to: span.to }),
      rest: { from: span.from, to: at },
    };
  }
  return null;
}

/** `of at least 0.8`, `at least 80 percent`, `at least 4 in 5`. */
function readChance(line: Line, { from, to }: Span): { asked: ChanceAsked | null; next: number } | null {
  const { tokens } = line;
  const at = saysAt(tokens, from, ['of']) ? from + 1 : from;
  if (!saysAt(tokens, at, ['at', 'least'])) return null;
  const whole = numberIn(tokens[at + 2]);
  if (whole === undefined || at + 3 > to) return null;
  let n = whole;
  let d = 1;
  let next = at + 3;
  const decimals = next < to ? tokens[next] : undefined;
  const gap =
    decimals === undefined
      ? ''
      : line.text.slice(tokens[next - 1].to - line.range.from, decimals.from - line.range.from);
  if (decimals !== undefined && gap === '.' && /^\d+$/.test(decimals.text)) {
    if (decimals.text.length > MOST_DIGITS) return { asked: null, next: next + 1 };
    d = 10 ** decimals.text.length;
    n = whole * d + Number(decimals.text);
    next++;
  }
  const of = saysAt(tokens, next, ['out', 'of']) ? 2 : saysAt(tokens, next, ['in']) ? 1 : 0;
  const all = of === 0 || next + of >= to ? undefined : numberIn(tokens[next + of]);
  if (all !== undefined) {
    d *= all;
    next += of + 1;
  } else if (next < to && (saysAt(tokens, next, ['%']) || saysAt(tokens, next, ['percent']))) {
    d *= 100;
    next++;
  } else if (next + 1 < to && saysAt(tokens, next, ['per', 'cent'])) {
    d *= 100;
    next += 2;
  }
  return { asked: d > 0 && n <= d ? { n, d } : null, next };
}

/** The words for a chance asked for, as a decimal where it is one. */
export function printChance({ n, d }: ChanceAsked): string {
  const digits = Math.log10(d);
  const isDecimal = Number.isInteger(digits);
  return `with probability at least ${isDecimal ? (n / d).toFixed(digits) : `${n} in ${d}`}`;
}
