import type { Token } from '../phrases/tokens.ts';
import { saysAt, type Line, type Span } from './line.ts';

/** Places where a sentence comes apart. */

export function colonIn(line: Line, piece: Span): number | null {
  for (let k = piece.from + 1; k <= piece.to; k++) if (line.before[k].includes(':')) return k;
  return null;
}

export function beginsOtherwise(tokens: readonly Token[], at: number): boolean {
  return saysAt(tokens, at, ['otherwise']) || saysAt(tokens, at, ['else']);
}

/** Where a later piece of the same sentence begins with `otherwise`. */
export function pieceOtherwise(line: Line, body: Span): number | null {
  for (let k = body.from + 1; k < body.to; k++)
    if (/[;,]/.test(line.before[k]) && beginsOtherwise(line.tokens, k)) return k;
  return null;
}

/** Spans between words of joining; an `and` before `then` belongs to it, empty parts are left out. */
export function between(line: Line, span: Span, joint: 'and' | 'or' | 'then'): Span[] {
  const parts: Span[] = [];
  let from = span.from;
  const push = (to: number): void => {
    const end = joint === 'then' && to > from && saysAt(line.tokens, to - 1, ['and']) ? to - 1 : to;
    if (end > from) parts.push({ from, to: end });
  };
  for (let k = span.from; k < span.to; k++) {
    if (!saysAt(line.tokens, k, [joint])) continue;
    push(k);
    from = k + 1;
  }
  push(span.to);
  return parts;
}

const NOTHING = 'nothing|do nothing|leave it|leave it alone|leave it as it is|leave everything as it is'
  .split('|')
  .map((words) => words.split(' '));

/** A way that does nothing: `do nothing`, `leave the packet as it is`. */
export function isNothing(words: readonly Token[]): boolean {
  if (NOTHING.some((one) => one.length === words.length && saysAt(words, 0, one))) return true;
  const end = words.length - 3;
  return end >= 2 && end <= 4 && saysAt(words, 0, ['leave']) && saysAt(words, end, ['as', 'it', 'is']);
}

// Parts of a sentence that are tried together as one before they are read one by one.
const MOST_JOINED = 3;

/**
 * Goes through parts from the first to the last, taking as many together as are understood as one. `take` may answer false
 * to stop; the answer says whether the end was reached.
 */
export function greedy<T>(
  parts: readonly Span[],
  read: (span: Span) => T,
  isGood: (read: T) => boolean,
  take: (read: T) => boolean,
): boolean {
  for (let i = 0; i < parts.length;) {
    let width = Math.min(MOST_JOINED, parts.length - i);
    // All parts together are the sentence that was tried before it was split.
    if (i === 0 && width > 1 && width === parts.length) width--;
    let one = read({ from: parts[i].from, to: parts[i + width - 1].to });
    while (width > 1 && !isGood(one)) {
      width--;
      one = read({ from: parts[i].from, to: parts[i + width - 1].to });
    }
    if (!take(one)) return false;
    i += width;
  }
  return true;
}
