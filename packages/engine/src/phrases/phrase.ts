import type { Range, Trouble } from '../base/diagnostic.ts';
import type { Blank } from './blank.ts';
import { blankNames, firstWords, parseTemplate, type Part } from './template.ts';
import type { Token } from './tokens.ts';
import type { Args, ArgValue, Names } from './values.ts';

/** A phrasing with typed blanks, read once from its template (see template.ts for how it is written). */
export interface Phrase {
  readonly template: string;
  readonly parts: readonly Part[];
  readonly blanks: readonly string[];
  readonly first: ReadonlySet<string> | null;
  /** Blanks fixed by the choice of this phrasing itself. */
  readonly fixed: Args;
}

export function phrase(template: string, fixed: Args = {}): Phrase {
  const parts = parseTemplate(template);
  return { template, parts, blanks: blankNames(parts), first: firstWords(parts), fixed };
}

/** One reading of a whole sentence by one phrase. */
export interface Match {
  readonly args: Args;
  readonly troubles: readonly { readonly trouble: Trouble; readonly range: Range }[];
}

export type BlankTypes = Readonly<Record<string, Blank>>;

// More partial readings than any sentence of the trade needs; keeps hostile text from costing time.
const MOST_STEPS = 4000;

/**
 * Told of every part that was looked for at a token, null when the phrase was over there, and of how many troubles were on the
 * way. For saying what was expected.
 */
export type Tried = (part: Part | null, at: number, troubles: number) => void;

/**
 * Reads a whole sentence by a phrase: the reading with the fewest troubles, preferring readings found first; or null.
 */
export function matchPhrase(
  phrase: Phrase,
  tokens: readonly Token[],
  names: Names,
  types: BlankTypes,
  tried?: Tried,
): Match | null {
  if (tokens.length === 0 || (phrase.first !== null && !phrase.first.has(tokens[0].text))) return null;
  let best: Match | null = null;
  let steps = 0;
  const args: Record<string, ArgValue> = {};
  const troubles: { trouble: Trouble; range: Range }[] = [];

  // Tries the parts from `k` on at token `at`; `then` goes on after them. True means: stop searching.
  function sequence(parts: readonly Part[], k: number, at: number, then: (at: number) => boolean): boolean {
    if (++steps > MOST_STEPS) return true;
    if (k === parts.length) return then(at);
    const part = parts[k];
    tried?.(part, at, troubles.length);
    const rest = (next: number): boolean => sequence(parts, k + 1, next, then);
    switch (part.part) {
      case 'words':
        return startsWith(tokens, at, part.words) && rest(at + part.words.length);
      case 'either':
        return part.ways.some((way) => sequence(way, 0, at, rest));
      case 'optional':
        return part.ways.some((way) => sequence(way, 0, at, rest)) || rest(at);
      case 'choice':
        return part.values.some(({ value, forms }) =>
          forms.some(
            (form) => startsWith(tokens, at, form) && given(part.name, value, () => rest(at + form.length)),
          ),
        );
      case 'blank': {
        const type = types[part.type];
        if (type === undefined)
          throw new Error(`phrase "${phrase.template}" has an unknown blank type ${part.type}`);
        return type.read(tokens, at, names).some((reading) => {
          if (reading.trouble === undefined) return given(part.name, reading.value, () => rest(reading.next));
          const range = { from: tokens[at].from, to: tokens[Math.max(at, reading.next - 1)].to };
          troubles.push({ trouble: reading.trouble, range });
          const done = given(part.name, reading.value, () => rest(reading.next));
          troubles.pop();
          return done;
        });
      }
    }
  }
  function given(name: string, value: ArgValue, go: () => boolean): boolean {
    const before = args[name];
    if (before !== undefined && !same(before, value)) return false;
    args[name] = value;
    const done = go();
    args[name] = before;
    return done;
  }
  sequence(phrase.parts, 0, 0, (at) => {
    tried?.(null, at, troubles.length);
    if (at !== tokens.length) return false;
    if (best === null || troubles.length < best.troubles.length) {
      const found = Object.entries(args).filter(([, value]) => value !== undefined);
      best = { args: { ...Object.fromEntries(found), ...phrase.fixed }, troubles: [...troubles] };
    }
    return troubles.length === 0;
  });
  return best;
}

function startsWith(tokens: readonly Token[], at: number, words: readonly string[]): boolean {
  for (let i = 0; i < words.length; i++) {
    const token = tokens[at + i];
    if (token === undefined || token.quoted) return false;
    if (token.text !== words[i] && asOfOne(token.text) !== asOfOne(words[i])) return false;
  }
  return true;
}

// Verbs that agree with their subject: a sentence may speak of `every four cards` as one or as many.
const ONE_FOR_MANY = new Map(
  'have has|contain contains|show shows|agree agrees|differ differs|total totals|alternate alternates'
    .split('|')
    .map((pair) => pair.split(' ') as [string, string]),
);

/** The form of a verb for one subject, of any other word the word itself. */
export function asOfOne(word: string): string {
  return ONE_FOR_MANY.get(word) ?? word;
}

export function same(a: ArgValue, b: ArgValue): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/**
 * Prints args by the first phrase that can say them all: a part in brackets is printed when a blank in it differs from
 * its default. Null when no phrase can.
 */
export function printPhrases(
  phrases: readonly Phrase[],
  args: Args,
  defaults: Args,
  types: BlankTypes,
): string | null {
  const needed = Object.keys(args).filter(
    (name) => args[name] !== undefined && !same(args[name], defaults[name]),
  );
  for (const phrase of phrases) {
    if (needed.some((name) => !phrase.blanks.includes(name) && !same(phrase.fixed[name], args[name])))
      continue;
    const fixed = Object.keys(phrase.fixed);
    if (fixed.some((name) => !same(phrase.fixed[name], args[name] ?? defaults[name]))) continue;
    const text = printParts(phrase.parts, { ...defaults, ...args }, needed, types);
    if (text !== null) return text[0].toUpperCase() + text.slice(1);
  }
  return null;
}

function printParts(
  parts: readonly Part[],
  args: Args,
  needed: readonly string[],
  types: BlankTypes,
): string | null {
  const words: string[] = [];
  for (const part of parts) {
    let text: string | null = '';
    switch (part.part) {
      case 'words':
        text = part.printed;
        break;
      case 'blank': {
        const value = args[part.name];
        text = value === undefined ? null : types[part.type].print(value);
        break;
      }
      case 'choice': {
        const value = args[part.name];
        text = part.values.find((v) => v.value === value)?.value ?? null;
        break;
      }
      case 'either':
        text = firstPrintable(part.ways, args, needed, types);
        break;
      case 'optional': {
        const ways = part.ways.filter((way) => blankNames(way).some((name) => needed.includes(name)));
        text = ways.length === 0 ? '' : firstPrintable(ways, args, needed, types);
        break;
      }
    }
    if (text === null) return null;
    if (text !== '') words.push(text);
  }
  return words.join(' ').replace(/ ,/g, ',');
}

function firstPrintable(
  ways: readonly (readonly Part[])[],
  args: Args,
  needed: readonly string[],
  types: BlankTypes,
): string | null {
  for (const way of ways) {
    const text = printParts(way, args, needed, types);
    if (text !== null) return text;
  }
  return null;
}
