import { distance } from 'fastest-levenshtein';
import { SAMPLE_NAMES } from '../phrases/blank.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { numberIn, tokenize, type Token } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';
import { BLOCK_WORDS } from './blocks.ts';

// Words of manner and joining, which no phrase of a move has.
const MANNER =
  'spectator you they then and or either if otherwise may in secret out of your sight up to not exactly when true that nothing';

// Names in the samples are examples; no sentence has them of itself.
const SAMPLES: ReadonlySet<string> = new Set([
  ...SAMPLE_NAMES.marks,
  ...SAMPLE_NAMES.numbers,
  ...Object.entries(SAMPLE_NAMES.attributes).flatMap(([name, values]) => [name, ...values.map(String)]),
  ...SAMPLE_NAMES.cards,
]);

const FIXED: ReadonlySet<string> = new Set([
  ...BLOCK_WORDS,
  ...MANNER.split(' '),
  ...Object.values(BLANKS).flatMap((blank) =>
    blank.samples.flatMap((sample) =>
      tokenize(blank.print(sample)).flatMap(({ text }) => (SAMPLES.has(text) ? [] : [text])),
    ),
  ),
]);

/** Corrects words that no sentence has into the nearest ones that some have. */
export class Vocabulary {
  private readonly words: readonly string[];
  private readonly known: ReadonlySet<string>;

  constructor(words: Iterable<string>) {
    this.known = new Set([...FIXED, ...words].filter((word) => /^\p{L}/u.test(word)));
    this.words = [...this.known];
  }

  has(word: string): boolean {
    return this.known.has(word);
  }

  /** Words a person may have meant by this one, nearest first; empty where the word is a known one. */
  near(word: string, names: Names): string[] {
    const own = ownWords(names);
    if (this.known.has(word) || own.has(word)) return [];
    const most = Math.max(1, Math.floor(word.length / 3));
    return [...this.words, ...own]
      .filter((known) => Math.abs(known.length - word.length) <= most)
      .map((known) => ({ known, off: unlike(word, known) }))
      .filter(({ off }) => off <= most)
      .sort((a, b) => a.off - b.off)
      .slice(0, 2)
      .map(({ known }) => known);
  }

  /** The same words with those that are not known put right, nearest first; empty where there is nothing to put right. */
  corrected(tokens: readonly Token[], names: Names): (readonly Token[])[] {
    let versions: (readonly Token[])[] = [[]];
    let slips = 0;
    for (const token of tokens) {
      const isWord = !token.quoted && numberIn(token) === undefined && /^\p{L}{2,20}$/u.test(token.text);
      const near = isWord && slips < MOST_SLIPS ? this.near(token.text, names) : [];
      if (near.length > 0) slips++;
      const ways = near.length > 0 ? near : [token.text];
      versions = versions.flatMap((version) => ways.map((text) => [...version, { ...token, text }]));
    }
    return slips === 0 ? [] : versions;
  }
}

const MOST_SLIPS = 3;

/** Letters that differ; letters in the wrong order count as one slip. */
function unlike(a: string, b: string): number {
  const isMixedUp = a.length === b.length && [...a].sort().join('') === [...b].sort().join('');
  return isMixedUp ? Math.min(1, distance(a, b)) : distance(a, b);
}

function ownWords(names: Names): ReadonlySet<string> {
  const all = [...names.piles, ...names.numbers, ...names.marks, ...Object.keys(names.attributes)];
  return new Set(
    all.flatMap((name) => name.toLowerCase().split(' ')).filter((word) => /^\p{L}{2}/u.test(word)),
  );
}
