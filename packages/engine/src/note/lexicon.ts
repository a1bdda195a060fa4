import type { Budget } from '../base/budget.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { asOfOne, matchPhrase, type Match, type Phrase } from '../phrases/phrase.ts';
import type { Part } from '../phrases/template.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';

interface Spoken {
  readonly phrases: readonly Phrase[];
}

/** A sentence as one owner of phrases, a move or a claim, understands it. */
export interface Found<T> {
  readonly owner: T;
  readonly match: Match;
}

/** A phrase, its owner, and the words no sentence of it can lack. */
export interface Candidate<T> {
  readonly owner: T;
  readonly phrase: Phrase;
  readonly needs: readonly string[];
}

/**
 * Owners of phrases, found by the word a sentence begins with. In a note of ten thousand steps only the phrases that can
 * begin so are tried.
 */
export class Lexicon<T extends Spoken> {
  readonly owners: readonly T[];
  /** Words a sentence may begin with. */
  readonly firstWords: ReadonlySet<string>;
  /** All words of all phrases. */
  readonly words: ReadonlySet<string>;
  private readonly byFirst = new Map<string, Candidate<T>[]>();
  private readonly anyFirst: readonly Candidate<T>[];

  constructor(owners: readonly T[]) {
    this.owners = owners;
    const all: Candidate<T>[] = owners.flatMap((owner) =>
      owner.phrases.map((phrase) => ({ owner, phrase, needs: needsOf(phrase) })),
    );
    const first = new Set(all.flatMap(({ phrase }) => [...(phrase.first ?? [])]));
    // Phrases that may begin with anything are tried beside those of every word, in the order of the list.
    for (const word of first)
      this.byFirst.set(
        word,
        all.filter(({ phrase }) => phrase.first === null || phrase.first.has(word)),
      );
    this.anyFirst = all.filter(({ phrase }) => phrase.first === null);
    this.firstWords = first;
    this.words = new Set(all.flatMap(({ phrase }) => wordsIn(phrase.parts)));
  }

  /** Every owner that can read the whole sentence, each by its phrase with the fewest troubles. */
  find(tokens: readonly Token[], names: Names, work: Budget): Found<T>[] {
    const found = new Map<T, Match>();
    const words = new Set(tokens.map(({ text }) => asOfOne(text)));
    for (const { owner, phrase, needs } of this.candidates(tokens)) {
      if (!work.spend()) break;
      if (!needs.every((word) => words.has(word))) continue;
      // Reading the name of a pile looks through all of them.
      if (!work.spend(tokens.length + (names.piles.length >> 3))) break;
      const before = found.get(owner);
      if (before !== undefined && before.troubles.length === 0) continue;
      const match = matchPhrase(phrase, tokens, names, BLANKS);
      if (match !== null && (before === undefined || match.troubles.length < before.troubles.length))
        found.set(owner, match);
    }
    return [...found].map(([owner, match]) => ({ owner, match }));
  }

  candidates(tokens: readonly Token[]): readonly Candidate<T>[] {
    return this.byFirst.get(tokens[0]?.text ?? '') ?? this.anyFirst;
  }
}

function needsOf(phrase: Phrase): readonly string[] {
  return phrase.parts.flatMap((part) => (part.part === 'words' ? part.words.map(asOfOne) : []));
}

function wordsIn(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => {
    switch (part.part) {
      case 'words':
        return [...part.words];
      case 'choice':
        return part.values.flatMap(({ forms }) => forms.flat());
      case 'blank':
        return [];
      case 'either':
      case 'optional':
        return part.ways.flatMap(wordsIn);
    }
  });
}

const BLANKS_OF = new WeakMap<readonly Phrase[], Map<string, ReadonlySet<string>>>();

/** Names of the blanks of one type in any of the phrases. */
export function blanksOfType(phrases: readonly Phrase[], type: string): ReadonlySet<string> {
  let known = BLANKS_OF.get(phrases);
  if (known === undefined) BLANKS_OF.set(phrases, (known = new Map()));
  let names = known.get(type);
  if (names === undefined)
    known.set(type, (names = new Set(phrases.flatMap(({ parts }) => blanksIn(parts, type)))));
  return names;
}

function blanksIn(parts: readonly Part[], type: string): string[] {
  return parts.flatMap((part) => {
    if (part.part === 'blank') return part.type === type ? [part.name] : [];
    return part.part === 'either' || part.part === 'optional'
      ? part.ways.flatMap((way) => blanksIn(way, type))
      : [];
  });
}
