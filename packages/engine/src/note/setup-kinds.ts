import type { AttributeValue } from '../cards/card.ts';
import { parseSuit, RANK_WORDS, RANKS, type Rank } from '../cards/names.ts';
import type { Reader } from './setup-reader.ts';
import type { Test } from './setup-syntax.ts';
import { countAt } from './setup-tokens.ts';
import { plural } from './setup-words.ts';

export interface KindReading {
  readonly tests: readonly Test[];
  /** True when its last word is a plural, or `cards`. */
  readonly plural: boolean;
}

/**
 * Reads words about one card, such as `red court cards`, as far as they do not say two things of one attribute: in `red
 * black` there are two kinds. Null, and nothing passed over, when no such word stands here.
 */
export function readKind(r: Reader): KindReading | null {
  const tests: Test[] = [];
  let isPlural = false;
  let words = 0;
  for (;;) {
    const found = kindWordAt(r, words === 0);
    if (
      found === null ||
      found.tests.some((test) => tests.some(({ attribute }) => attribute === test.attribute))
    )
      break;
    tests.push(...found.tests);
    r.at += found.length;
    words++;
    isPlural = found.plural;
    // The noun ends the kind; only a suit may follow it, as in `courts of spades`.
    if (found.noun || found.plural) {
      const suit = r.word() === 'of' ? suitAt(r, r.word(1) === 'the' ? 2 : 1) : null;
      if (suit !== null && !tests.some(({ attribute }) => attribute === 'suit')) {
        tests.push({ attribute: 'suit', value: suit });
        r.at += r.word(1) === 'the' ? 3 : 2;
      } else if (!found.noun && /^cards?$/.test(r.word())) r.at++;
      break;
    }
  }
  return words === 0 ? null : { tests: sorted(tests), plural: isPlural };
}

function suitAt(r: Reader, k: number): string | null {
  const word = r.word(k);
  return word.length < 4 ? null : parseSuit(word);
}

// `a black 7`, where no number of cards can be meant.
const DIGIT_RANKS: ReadonlyMap<string, Rank> = new Map(
  RANKS.filter((rank) => /\d/.test(rank)).map((rank) => [rank, rank]),
);

interface Found {
  readonly tests: readonly Test[];
  readonly plural: boolean;
  readonly noun: boolean;
  readonly length: number;
}

function kindWordAt(r: Reader, isFirst: boolean): Found | null {
  const word = r.word();
  if (word === 'face' && /^cards?$/.test(r.word(1)))
    return {
      tests: [{ attribute: 'court', value: 'court' }],
      plural: r.word(1) === 'cards',
      noun: true,
      length: 2,
    };
  // `seven red cards` begins with a number, not with a seven.
  if (isFirst && countAt(r.tokens, r.at) !== null && r.shared.words.has(r.word(1))) return null;
  const digits = isFirst ? undefined : DIGIT_RANKS.get(word);
  if (digits !== undefined && !/^(times|cards?|in|of)$/.test(r.word(1)) && !r.shared.words.has(r.word(1)))
    return { tests: [{ attribute: 'rank', value: digits }], plural: false, noun: false, length: 1 };
  const denied = word === 'non' || word === 'not' ? 1 + (r.word(1) === '-' ? 1 : 0) : 0;
  const known = r.token?.is === 'word' ? r.shared.words.get(r.word(denied)) : undefined;
  if (known === undefined) return null;
  if (denied === 0) return { ...known, noun: /^cards?$/.test(word), length: 1 };
  const [test] = known.tests;
  if (test?.value !== 'yes') return null;
  return { tests: [{ ...test, value: 'no' }], plural: false, noun: false, length: denied + 1 };
}

// The order in which English puts such words: a warm odd red court heart, never a heart red odd one.
const ORDER = ['parity', 'colour', 'court', 'suit', 'rank'];

export function sorted(tests: readonly Test[]): Test[] {
  const place = ({ attribute }: Test): number => ORDER.indexOf(attribute);
  return [...tests].sort(
    (a, b) => place(a) - place(b) || (a.attribute < b.attribute ? -1 : a.attribute > b.attribute ? 1 : 0),
  );
}

export function sameTests(a: readonly Test[], b: readonly Test[]): boolean {
  return (
    a.length === b.length &&
    a.every((test, i) => test.attribute === b[i].attribute && test.value === b[i].value)
  );
}

/** `red`, `court`, `heart`, `ace`, `warm`, `non-warm`: a test as a word before a noun. */
export function testWord({ attribute, value }: Test): string {
  if (attribute === 'rank') return RANK_WORDS[value as Rank];
  if (attribute === 'suit') return String(value).slice(0, -1);
  if (value === 'yes') return attribute;
  return value === 'no' ? `non-${attribute}` : String(value);
}

/** `red card`, `black queens`, `hearts`. */
export function printKind(tests: readonly Test[], number: 'one' | 'many' | 'adjective'): string {
  const words = tests.map(testWord);
  const last = tests.at(-1)?.attribute;
  if (number === 'adjective' && words.length > 0) return words.join(' ');
  if (last !== 'rank' && last !== 'suit') words.push('card');
  if (number === 'many') words.push(plural(words.pop() ?? ''));
  return words.join(' ');
}

/** What a card of which only this is known is called: `a red card`, `an ace`. */
export function kindName(tests: readonly Test[]): string {
  const kind = printKind(tests, 'one');
  return `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}

/** The values of one attribute as choices: `red or black`, `an ace or a king`. */
export function printChoices(attribute: string, values: readonly AttributeValue[]): string {
  return values
    .map((value) => {
      const word = testWord({ attribute, value });
      if (attribute !== 'rank' && attribute !== 'suit') return word;
      return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
    })
    .join(' or ');
}
