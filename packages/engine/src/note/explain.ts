import { diagnostic, type Diagnostic, type Facts, type Range } from '../base/diagnostic.ts';
import { printPile } from '../phrases/blanks/pile.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';
import { distance } from 'fastest-levenshtein';
import { BLOCKS, readHead } from './blocks.ts';
import { ClauseReader, MOVE_LEXICON, type Context } from './clause.ts';
import { SentenceReader } from './joined.ts';
import { lineOf, placeOf, wordsOf } from './line.ts';
import { asCommand, peelings } from './manner.ts';
import { replacements, rewritten, textOf } from './explain-text.ts';
import { missingName } from './explain-names.ts';
import { isClean, type Unread } from './outcome.ts';
import { expectedIn, nearestIn, smallBudget, type Expected } from './suggest.ts';
import { Vocabulary } from './vocabulary.ts';

const WORDS = new Vocabulary(MOVE_LEXICON.words);

/** Why a sentence of the working was not understood, and what would be. `near` is whether near sentences are looked for. */
export function explain(unread: Unread, near: boolean, namedLater: ReadonlySet<string>): Diagnostic {
  const { line, span, context } = unread;
  const range = placeOf(line, span);
  const tokens = wordsOf(line, span);
  const text = textOf(line, span);
  const special =
    unclear(unread, text, range) ?? unnamed(unread, (name) => name.length === 1 || namedLater.has(name));
  if (special !== null) return special;
  return unread.of === 'block' ? block(text, tokens, range, context, near) : sentence(unread, near);
}

/** One of so many sentences not understood that only their number is told. */
export function unexplained({ line, span }: Unread): Diagnostic {
  return diagnostic('sentence-not-understood', placeOf(line, span), {
    sentence: textOf(line, span),
    nearest: [],
  });
}

/** `it` where nothing says what it is, or `that pile` outside the block that goes through the piles. */
function unclear({ context }: Unread, text: string, range: Range): Diagnostic | null {
  const { names } = context;
  const said = /\b(it|them|that (\p{L}+))\b/iu.exec(text);
  if (said === null || (context.it !== null && said[2] === undefined)) return null;
  const [word, , stem] = said;
  const piles =
    stem === undefined
      ? names.piles
      : names.piles.filter((pile) => pile.startsWith(`${stem.toLowerCase()} `));
  const reads = (pile: string): boolean =>
    understood(text.replace(word, printPile(pile)), { names, it: pile });
  const fits = piles.slice(0, 3).filter(reads);
  if (fits.length === 0) return null;
  const at = { from: range.from + said.index, to: range.from + said.index + word.length };
  const fixes = fits.map((pile) => ({ label: printPile(pile), range: at, text: printPile(pile) }));
  return diagnostic('it-unclear', at, { word: word.toLowerCase() }, { fixes });
}

/** A number or a mark that is named nowhere, or only later. */
function unnamed(unread: Unread, isSuspect: (name: string) => boolean): Diagnostic | null {
  const { line, span, context, of } = unread;
  const tokens = wordsOf(line, span);
  const reads = (names: Names): boolean =>
    of === 'block'
      ? readHead(tokens, names, smallBudget()) !== null
      : understood(textOf(line, span), { ...context, names });
  return missingName(tokens, context.names, isSuspect, reads);
}

function understood(text: string, context: Context): boolean {
  const reader = new SentenceReader(new ClauseReader(smallBudget()));
  const line = lineOf({ text, range: { from: 0, to: text.length } });
  const { outcome, open } = reader.paragraph(line, context, 0);
  return open === null && outcome.steps.length > 0 && isClean(outcome);
}

function sentence(unread: Unread, near: boolean): Diagnostic {
  const { line, span, context } = unread;
  const { names } = context;
  const range = placeOf(line, span);
  const tokens = wordsOf(line, span);
  const text = textOf(line, span);
  const reads = (one: string): boolean => understood(one, context);
  const corrected = near
    ? WORDS.corrected(tokens, names)
        .map((words) => rewritten(line, tokens, words, range))
        .filter(reads)
    : [];
  const missing = near && corrected.length === 0 ? unnamed(unread, (name) => !WORDS.has(name)) : null;
  if (missing !== null) return missing;
  const nearest = near
    ? [...new Set([...corrected, ...nearestIn(MOVE_LEXICON, tokens, names, reads)])].slice(0, 3)
    : [];
  const { at, expected } = farthest(tokens, names);
  const place = at > 0 && at < tokens.length ? { from: tokens[at].from, to: range.to } : range;
  const facts: Record<string, Facts[string]> = { sentence: text, nearest };
  if (at > 0) facts.expected = [...expected];
  if (at > 0 && at < tokens.length) facts.word = tokens[at].text;
  const code = at > 0 && at === tokens.length ? 'sentence-ends-early' : 'sentence-not-understood';
  return diagnostic(code, place, facts, { fixes: replacements(nearest, text, range) });
}

/** The farthest any way of taking the sentence apart leads; places are counted in the whole sentence. */
function farthest(tokens: readonly Token[], names: Names): Expected {
  let best: Expected = { at: 0, expected: [] };
  const ways = peelings(tokens).map(({ tokens: words }) => words);
  const commands = ways
    .map((words) => asCommand(words, MOVE_LEXICON.words))
    .filter((words) => words !== null);
  for (const words of [...ways, ...commands]) {
    const { at, expected } = expectedIn(MOVE_LEXICON, words, names);
    const skipped = words.length === 0 ? 0 : tokens.findIndex((token) => token.from === words[0].from);
    if (at > 0 && at + skipped >= best.at) best = { at: at + skipped, expected };
  }
  return best;
}

function block(
  text: string,
  tokens: readonly Token[],
  range: Range,
  context: Context,
  near: boolean,
): Diagnostic {
  const { names } = context;
  const reads = (one: string): boolean => readHead(headTokens(one), names, smallBudget()) !== null;
  const plain = tokens.map((token) => token.text).join(' ');
  const heads = BLOCKS.map(({ example }) => example.replace(/:$/, ''));
  const limit = Math.max(3, plain.length / 3);
  const nearest = near
    ? heads
        .map((head) => ({ head, off: distance(plain, head.toLowerCase()) }))
        .filter(({ head, off }) => off <= limit && reads(head))
        .sort((a, b) => a.off - b.off)
        .slice(0, 3)
        .map(({ head }) => head)
    : [];
  return diagnostic(
    'block-not-understood',
    range,
    { sentence: text, nearest },
    { fixes: replacements(nearest, text, range) },
  );
}

function headTokens(text: string): readonly Token[] {
  return lineOf({ text, range: { from: 0, to: text.length } }).tokens;
}
