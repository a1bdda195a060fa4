import { defineBlank } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Names } from '../values.ts';
import { nameLength, wordAt } from './card-words.ts';

// What two cards may have in common, with its plural and other words for either.
const COMMON: readonly {
  readonly name: string;
  readonly plural: string;
  readonly also: readonly string[];
}[] = [
  { name: 'colour', plural: 'colours', also: ['color', 'colors'] },
  { name: 'suit', plural: 'suits', also: [] },
  { name: 'value', plural: 'values', also: [] },
  { name: 'rank', plural: 'ranks', also: [] },
  { name: 'parity', plural: 'parities', also: [] },
  { name: 'facing', plural: 'facings', also: ['faces'] },
  { name: 'orientation', plural: 'orientations', also: [] },
];

function readRelation(tokens: readonly Token[], at: number, names: Names): { value: string; next: number }[] {
  const word = wordAt(tokens, at);
  const common = COMMON.find(
    ({ name, plural, also }) => word === name || word === plural || also.includes(word),
  );
  if (common !== undefined) return [{ value: common.name, next: at + 1 }];
  for (const name of Object.keys(names.attributes)) {
    const length = nameLength(tokens, at, name) || nameLength(tokens, at, `${name}s`);
    if (length > 0) return [{ value: name, next: at + length }];
  }
  return [];
}

const SAMPLES = ['colour', 'suit', 'value', 'rank', 'parity', 'facing', 'orientation', 'season'];

/** What cards agree or differ in: `colour`, `suit`, `facing`, an attribute of one's own. */
export const relation = defineBlank<string>({
  type: 'relation',
  what: 'in what: "colour", "suit", "value", "rank", "parity", "facing", "orientation", or an attribute of your own',
  read: readRelation,
  print: (name) => name,
  samples: SAMPLES,
});

/** The same in the plural: `the colours`. */
export const relations = defineBlank<string>({
  type: 'relations',
  what: 'what: "colours", "suits", "values", "ranks", "parities", "facings", "orientations", or an attribute of your own',
  read: readRelation,
  print: (name) => COMMON.find((known) => known.name === name)?.plural ?? `${name}s`,
  samples: SAMPLES,
});

/** An attribute that is a number: `value`, or one of one's own. */
export const numeric = defineBlank<string>({
  type: 'numeric',
  what: 'an attribute that is a number, such as "value"',
  read: (tokens, at, names) => {
    if (/^values?$/.test(wordAt(tokens, at))) return [{ value: 'value', next: at + 1 }];
    const own = Object.entries(names.attributes).find(
      ([name, values]) =>
        values.every((value) => typeof value === 'number') && nameLength(tokens, at, name) > 0,
    );
    return own === undefined ? [] : [{ value: own[0], next: at + nameLength(tokens, at, own[0]) }];
  },
  print: (name) => name,
  samples: ['value', 'weight'],
});
