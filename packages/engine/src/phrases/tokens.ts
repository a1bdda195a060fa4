/** A word, number, quoted name or mark of punctuation that matters, with its place in the text it was read from. */
export interface Token {
  /** Lower case, without quotes. */
  readonly text: string;
  readonly quoted: boolean;
  readonly from: number;
  readonly to: number;
}

const ARTICLES = new Set(['the', 'a', 'an']);
// The one article that may be a rank: `A♠`, `A of spades`.
const AFTER_ACE = /^(\s?[♠♥♦♣♤♡♢♧]|\s+of\s)/u;
const NUMBER_WORDS = new Map(
  (
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen ' +
    'seventeen eighteen nineteen twenty'
  )
    .split(' ')
    .map((word, n) => [word, n]),
);

// Quoted names, numbers, words (a hyphen or a stop ends a word, an inner apostrophe does not), and what is left that matters.
const TOKEN = /"([^"\n]*)"|“([^“”\n]*)”|\d+|\p{L}[\p{L}\p{M}'’]*|[♠♥♦♣♤♡♢♧]|[-–—](?=\s*\d)|[()^=+%]/gu;

/**
 * Cuts a sentence into tokens. Articles, commas and hyphens between letters carry no meaning and are left out;
 * `base` is the place of the sentence in the whole text.
 */
export function tokenize(sentence: string, base = 0): Token[] {
  const tokens: Token[] = [];
  for (const match of sentence.matchAll(TOKEN)) {
    const quoted = match[1] ?? match[2];
    const raw = match[0];
    const from = base + match.index;
    const to = from + raw.length;
    if (quoted !== undefined) tokens.push({ text: quoted.toLowerCase(), quoted: true, from, to });
    else {
      const text = raw.replaceAll('’', "'").replace(/[–—]/, '-').toLowerCase();
      const isAce = text === 'a' && AFTER_ACE.test(sentence.slice(match.index + raw.length));
      if (!ARTICLES.has(text) || isAce) tokens.push({ text, quoted: false, from, to });
    }
  }
  return tokens;
}

// Sentences without digits, quotes, marks or anything else that needs a closer look.
const PLAIN = /^[a-z ,]*$/;

/** The texts of a sentence's tokens. Thousands of phrases are read when a program starts, so plain words are only split. */
export function wordsOf(sentence: string): string[] {
  if (PLAIN.test(sentence))
    return sentence.split(/[ ,]+/).filter((word) => word !== '' && !ARTICLES.has(word));
  return tokenize(sentence).map(({ text }) => text);
}

/** The number a token writes in digits or in words, or undefined. Digits beyond a million are no number of cards. */
export function numberIn(token: Token | undefined): number | undefined {
  if (token === undefined || token.quoted) return undefined;
  if (/^\d{1,6}$/.test(token.text)) return Number(token.text);
  return NUMBER_WORDS.get(token.text);
}

const ORDINAL_WORDS = new Map(
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth'
    .split(' ')
    .map((word, n) => [word, n + 1]),
);

/** `3rd` arrives as the tokens `3` and `rd`; returns the number and how many tokens it took. */
export function ordinalAt(tokens: readonly Token[], at: number): { n: number; length: number } | undefined {
  const word = ORDINAL_WORDS.get(tokens[at]?.text ?? '');
  if (word !== undefined) return { n: word, length: 1 };
  const n = numberIn(tokens[at]);
  const suffix = tokens[at + 1];
  if (
    n !== undefined &&
    suffix !== undefined &&
    /^(st|nd|rd|th)$/.test(suffix.text) &&
    suffix.from === tokens[at].to
  )
    return { n, length: 2 };
  return undefined;
}

export function printOrdinal(n: number): string {
  const tens = n % 100;
  if (tens >= 11 && tens <= 13) return `${n}th`;
  return `${n}${['th', 'st', 'nd', 'rd'][n % 10] ?? 'th'}`;
}
