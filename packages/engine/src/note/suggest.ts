import { distance } from 'fastest-levenshtein';
import { Budget } from '../base/budget.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { matchPhrase, printPhrases, type Phrase } from '../phrases/phrase.ts';
import type { Part } from '../phrases/template.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Args, ArgValue, Names } from '../phrases/values.ts';
import type { Lexicon } from './lexicon.ts';

interface Spoken {
  readonly phrases: readonly Phrase[];
  readonly defaults: Args;
  readonly examples: readonly { readonly sentence: string }[];
}

/** The farthest a sentence was followed by any phrase, and what would have had to stand there. */
export interface Expected {
  /** Index of the first word that no phrase could go on with; the number of words where the sentence ends too soon. */
  readonly at: number;
  readonly expected: readonly string[];
}

const MOST_EXPECTED = 3;

/** What was expected where the phrases of a lexicon lost the sentence. */
export function expectedIn<T extends Spoken>(
  lexicon: Lexicon<T>,
  tokens: readonly Token[],
  names: Names,
): Expected {
  let at = 0;
  let expected = new Set<string>();
  for (const { phrase } of lexicon.candidates(tokens)) {
    matchPhrase(phrase, tokens, names, BLANKS, (part, place, troubles) => {
      // Any word may be read as the name of a pile that is not there; that leads nowhere.
      if (troubles > 0) return;
      const { reached, what } = wanted(part, place, tokens);
      if (reached < at || what === null) return;
      if (reached > at) expected = new Set();
      at = reached;
      if (expected.size < MOST_EXPECTED) expected.add(what);
    });
  }
  return { at, expected: [...expected] };
}

/** What a part looks for at a place; a part of several words may have found the first of them. */
function wanted(
  part: Part | null,
  at: number,
  tokens: readonly Token[],
): { reached: number; what: string | null } {
  if (part === null) return { reached: at, what: at < tokens.length ? 'the end of the sentence' : null };
  switch (part.part) {
    case 'words': {
      let k = 0;
      while (k < part.words.length && tokens[at + k]?.text === part.words[k]) k++;
      if (k === part.words.length) return { reached: at, what: null };
      return { reached: at + k, what: `"${part.words.slice(k).join(' ')}"` };
    }
    case 'blank':
      return { reached: at, what: BLANKS[part.type]?.what ?? null };
    case 'choice':
      return { reached: at, what: part.values.map(({ value }) => `"${value}"`).join(' or ') };
    case 'optional':
    case 'either':
      // Their parts are looked for one by one.
      return { reached: at, what: null };
  }
}

// How unlike, measured against the longer of the two, a sentence may be to be offered.
const MOST_UNLIKE = 0.5;
const MOST_OFFERED = 3;

/**
 * Sentences of a lexicon that are nearest to the one given, with its own numbers and piles where they fit; each passes
 * `reads`.
 */
export function nearestIn<T extends Spoken>(
  lexicon: Lexicon<T>,
  tokens: readonly Token[],
  names: Names,
  reads: (sentence: string) => boolean,
): string[] {
  const written = tokens.map(({ text }) => text).join(' ');
  const found = new Map<string, number>();
  const offer = (sentence: string | null): void => {
    if (sentence === null || found.has(sentence)) return;
    const plain = sentence
      .toLowerCase()
      .replace(/\b(the|a|an)\b|[.,]/g, '')
      .replace(/\s+/g, ' ')
      .trim();
    const off = distance(written, plain) / Math.max(written.length, plain.length, 1);
    if (off <= MOST_UNLIKE) found.set(sentence, off);
  };
  const words = new Set(tokens.map(({ text }) => text));
  const shares = (phrase: Phrase): boolean =>
    wordsOf(phrase.parts).some((word) => words.has(word) && word.length > 2);
  for (const owner of lexicon.owners) {
    for (const phrase of owner.phrases) {
      if (!shares(phrase)) continue;
      const args = { ...owner.defaults, ...filled(phrase.parts, tokens, names), ...phrase.fixed };
      offer(printPhrases([phrase], args, owner.defaults, BLANKS));
    }
    for (const { sentence } of owner.examples) offer(sentence.replace(/\.$/, ''));
  }
  const offered: string[] = [];
  for (const [sentence] of [...found].sort(([, a], [, b]) => a - b).slice(0, 4 * MOST_OFFERED)) {
    if (offered.length === MOST_OFFERED) break;
    if (reads(sentence)) offered.push(sentence);
  }
  return offered;
}

function wordsOf(parts: readonly Part[]): string[] {
  return parts.flatMap((part) =>
    part.part === 'words' ? part.words : part.part === 'either' ? part.ways.flatMap(wordsOf) : [],
  );
}

/** Blanks filled with what the sentence has for them, in order; the rest with what is there. */
function filled(parts: readonly Part[], tokens: readonly Token[], names: Names): Args {
  const args: Record<string, ArgValue> = {};
  let from = 0;
  const fill = (all: readonly Part[], optional: boolean): void => {
    for (const part of all) {
      if (part.part === 'choice' && !optional) args[part.name] = part.values[0].value;
      else if (part.part === 'either') fill(part.ways[0], optional);
      else if (part.part === 'optional') fill(part.ways[0], true);
      else if (part.part === 'blank') {
        const blank = BLANKS[part.type];
        // A name that is being given could be any word, so it is never guessed.
        const guess =
          part.type === 'newname' || part.type === 'newpile'
            ? undefined
            : found(part.type, tokens, from, names);
        if (guess !== undefined) {
          args[part.name] = guess.value;
          from = guess.next;
        } else if (!optional)
          args[part.name] = part.type === 'pile' ? (names.piles[0] ?? 'packet') : blank.samples[0];
      }
    }
  };
  fill(parts, false);
  return args;
}

function found(
  type: string,
  tokens: readonly Token[],
  from: number,
  names: Names,
): { value: ArgValue; next: number } | undefined {
  for (let at = from; at < tokens.length; at++) {
    const clean = BLANKS[type].read(tokens, at, names).find((reading) => reading.trouble === undefined);
    if (clean !== undefined) return clean;
  }
  return undefined;
}

/** Enough for a few sentences; what is tried for an explanation never uses up what the note may cost. */
export function smallBudget(): Budget {
  return new Budget(20_000);
}
