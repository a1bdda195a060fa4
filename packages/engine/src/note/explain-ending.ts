import { diagnostic, type Diagnostic, type Facts } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Names } from '../phrases/values.ts';
import { CLAIM_LEXICON, EndingReader } from './ending.ts';
import { lineOf, placeOf, wordsOf, type Line, type Span } from './line.ts';
import { missingName } from './explain-names.ts';
import { replacements, rewritten, textOf } from './explain-text.ts';
import { expectedIn, nearestIn, smallBudget } from './suggest.ts';
import { Vocabulary } from './vocabulary.ts';

const WORDS = new Vocabulary(CLAIM_LEXICON.words);

/** Why a sentence of the ending, or a part of it, was not understood. */
export function explainEnding(
  line: Line,
  span: Span,
  names: Names,
  cards: readonly Card[],
  near: boolean,
): Diagnostic {
  const range = placeOf(line, span);
  const tokens = wordsOf(line, span);
  const text = textOf(line, span);
  const reads = (one: string): boolean => understood(one, names, cards);
  const corrected = near
    ? WORDS.corrected(tokens, names)
        .map((words) => rewritten(line, tokens, words, range))
        .filter(reads)
    : [];
  const missing =
    corrected.length > 0
      ? null
      : missingName(
          tokens,
          names,
          (name) => name.length === 1 || !WORDS.has(name),
          (more) => understood(text, more, cards),
        );
  if (missing !== null) return missing;
  const nearest = near
    ? [...new Set([...corrected, ...nearestIn(CLAIM_LEXICON, tokens, names, reads)])].slice(0, 3)
    : [];
  const { at, expected } = expectedIn(CLAIM_LEXICON, tokens, names);
  const place = at > 0 && at < tokens.length ? { from: tokens[at].from, to: range.to } : range;
  const facts: Record<string, Facts[string]> = { sentence: text, nearest };
  if (at > 0) facts.expected = [...expected];
  if (at > 0 && at < tokens.length) facts.word = tokens[at].text;
  const code = at > 0 && at === tokens.length ? 'sentence-ends-early' : 'sentence-not-understood';
  return diagnostic(code, place, facts, { fixes: replacements(nearest, text, range) });
}

function understood(text: string, names: Names, cards: readonly Card[]): boolean {
  const line = lineOf({ text, range: { from: 0, to: text.length } });
  const read = new EndingReader(names, cards, smallBudget()).read(line, { from: 0, to: line.tokens.length });
  return read.sentence !== null && read.diagnostics.length === 0;
}
