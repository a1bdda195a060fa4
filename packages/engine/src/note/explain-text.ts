import type { Fix, Range } from '../base/diagnostic.ts';
import type { Token } from '../phrases/tokens.ts';
import { placeOf, type Line, type Span } from './line.ts';
import { lowerFirst } from './print-clause.ts';

/** The text with some of its words changed, everything between them as it was. */
export function rewritten(
  line: Line,
  before: readonly Token[],
  after: readonly Token[],
  range: Range,
): string {
  let text = '';
  let at = range.from;
  before.forEach((token, i) => {
    text += line.text.slice(at - line.range.from, token.from - line.range.from);
    const written = line.text.slice(token.from - line.range.from, token.to - line.range.from);
    text += token.text === after[i].text ? written : likeCase(after[i].text, written);
    at = token.to;
  });
  return text + line.text.slice(at - line.range.from, range.to - line.range.from);
}

function likeCase(word: string, written: string): string {
  return /^\p{Lu}/u.test(written) ? word.slice(0, 1).toUpperCase() + word.slice(1) : word;
}

/** The change of the whole sentence into each of its near ones. */
export function replacements(nearest: readonly string[], text: string, range: Range): Fix[] {
  const capital = /^\p{Lu}/u.test(text);
  return nearest.map((one) => ({ label: one, range, text: capital ? likeCase(one, text) : lowerFirst(one) }));
}

/** What is written in a span. */
export function textOf(line: Line, span: Span): string {
  const { from, to } = placeOf(line, span);
  return line.text.slice(from - line.range.from, to - line.range.from);
}
