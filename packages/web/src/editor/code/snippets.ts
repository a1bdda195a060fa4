import { MOVES } from '@foregone/engine';

export type Part = (typeof MOVES)[number]['phrases'][number]['parts'][number];

/** What stands in a blank of each type until the author fills it. */
export const SAMPLES: Readonly<Record<string, string>> = {
  amount: '4',
  blocks: 'pairs',
  block: 'the top 2 cards',
  cardlist: 'AS 2S 3S',
  cards: '3 cards',
  class: 'aces',
  groups: 'every pair',
  howmany: '4',
  kind: 'red cards',
  many: '2',
  mark: 'chosen',
  newname: 'n',
  newpile: 'the table',
  nth: '2nd',
  nthcard: 'the 2nd card',
  number: '2',
  numeric: 'value',
  onekind: 'red card',
  oneclass: 'ace of spades',
  oneofclass: 'red card',
  onestate: 'face up',
  order: '2 1',
  pile: 'the packet',
  pipcard: 'ace of spades',
  place: 'the top card',
  places: 'the top card and the bottom card',
  predicate: 'red',
  rank: 'ace',
  relation: 'colour',
  relations: 'colours',
  sequence: '2, 1',
  severalbottom: 'the bottom 3 cards',
  severaltop: 'the top 3 cards',
  spot: 'the bottom',
  stack: 'pile 1 on pile 2',
  state: 'face up',
  tally: 'red cards',
  those: 'the red cards',
  topcards: 'the top 3 cards',
  thiscard: 'the chosen card',
  allwords: '"eel" and "loo"',
  word: '"harbour"',
  words: '"tea", "rum"',
};

/** What stands in the second and third blank of a type, where one thing twice would make no sense. */
const LATER: Readonly<Record<string, readonly string[]>> = {
  onekind: ['ace of spades', 'king of hearts'],
  newpile: ['the tray', 'the box'],
  pile: ['pile 1', 'pile 2'],
  place: ['the bottom card'],
  tally: ['black cards'],
};

/** Cards that must be one card, by the names that phrases give such a blank. */
const ONE_CARD = new Set(['card', 'a', 'b', 'c']);

/** Sentences that speak of a number by its name have no use for a digit. */
const BY_NAME = new Set(
  MOVES.filter(({ id }) => id === 'say-number').flatMap(({ phrases }) => phrases.map(({ parts }) => parts)),
);

export type Sampler = (type: string, name: string) => string;

/** Samples for the blanks of one sentence, asked for in their order; the same blank gets the same sample. */
export function sampler(parts: readonly Part[]): Sampler {
  const isByName = BY_NAME.has(parts);
  const given = new Map<string, string>();
  const counts = new Map<string, number>();
  return (type, name) => {
    const known = given.get(name);
    if (known !== undefined) return known;
    const count = counts.get(type) ?? 0;
    counts.set(type, count + 1);
    const first = firstSample(type, name, isByName);
    const sample = LATER[type]?.[count - 1] ?? first;
    given.set(name, sample);
    return sample;
  };
}

function firstSample(type: string, name: string, isByName: boolean): string {
  if (type === 'number' && isByName) return 'M';
  if (type === 'number' && name === 'count') return '4';
  if (type === 'onekind' && ONE_CARD.has(name)) return 'chosen card';
  return SAMPLES[type] ?? type;
}

/** A plain sentence of a phrase: first wording of each part, nothing that may be left out, samples in the blanks. */
export function wordsOf(parts: readonly Part[]): string {
  return sentence(parts, sampler(parts), (text) => text);
}

/** The same with its blanks as fields that Tab goes through. */
export function snippetOf(parts: readonly Part[]): string {
  let field = 0;
  // Numbered, or fields with the same sample would be filled together.
  return `${sentence(parts, sampler(parts), (text) => `#{${++field}:${text}}`)}.`;
}

function sentence(parts: readonly Part[], sample: Sampler, field: (text: string) => string): string {
  const words = printed(parts, sample, field)
    .filter((word) => word !== '')
    .join(' ')
    .replace(/ ,/g, ',');
  return words.replace(
    /^((?:#\{\d+:)?)(\p{L})/u,
    (_, lead: string, letter: string) => lead + letter.toUpperCase(),
  );
}

function printed(parts: readonly Part[], sample: Sampler, field: (text: string) => string): string[] {
  return parts.flatMap((part) => {
    switch (part.part) {
      case 'words':
        return [part.printed];
      case 'optional':
        return [];
      case 'either':
        return printed(part.ways[0] ?? [], sample, field);
      case 'blank':
        return [field(sample(part.type, part.name))];
      case 'choice':
        return [field(part.values[0]?.value ?? '')];
    }
  });
}
