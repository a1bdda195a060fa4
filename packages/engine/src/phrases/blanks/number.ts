import { defineBlank, type BlankReading } from '../blank.ts';
import { numberIn, ordinalAt, printOrdinal, type Token } from '../tokens.ts';
import type { Names, NumberRef, PlaceRef } from '../values.ts';

/** A number in digits or words, or the name of one that was named before. */
export function readNumber(tokens: readonly Token[], at: number, names: Names): BlankReading<NumberRef>[] {
  const token = tokens[at];
  if (token === undefined || token.quoted) return [];
  const n = numberIn(token);
  if (n !== undefined) return [{ value: n, next: at + 1 }];
  return names.numbers.includes(token.text) ? [{ value: { var: token.text }, next: at + 1 }] : [];
}

export function printNumber(ref: NumberRef): string {
  return typeof ref === 'number' ? String(ref) : printName(ref.var);
}

/** One-letter names are printed as capitals, the custom for numbers. */
export function printName(name: string): string {
  return name.length === 1 ? name.toUpperCase() : name;
}

export const number = defineBlank<NumberRef>({
  type: 'number',
  what: 'a number, or the name of a number that was named',
  read: readNumber,
  print: printNumber,
  samples: [2, 3, 12, { var: 'n' }],
});

/** `3rd`, `third`, `Nth`: the number and the next token. */
export function readOrdinal(tokens: readonly Token[], at: number, names: Names): BlankReading<NumberRef>[] {
  const ordinal = ordinalAt(tokens, at);
  if (ordinal !== undefined) return [{ value: ordinal.n, next: at + ordinal.length }];
  const text = tokens[at]?.text ?? '';
  const name = names.numbers.find((known) => text === `${known}th`);
  return name === undefined ? [] : [{ value: { var: name }, next: at + 1 }];
}

export function printOrdinalRef(ref: NumberRef): string {
  return typeof ref === 'number' ? printOrdinal(ref) : `${printName(ref.var)}th`;
}

/** `top card`, `bottom card`, `3rd card`, `Nth card from the bottom`. */
function readPlace(tokens: readonly Token[], at: number, names: Names): BlankReading<PlaceRef>[] {
  const word = (i: number): string => tokens[i]?.text ?? '';
  const card = (i: number): number => (word(i) === 'card' ? i + 1 : i);
  if (word(at) === 'top' || word(at) === 'bottom')
    return [{ value: { end: word(at) as 'top' | 'bottom', n: 1 }, next: card(at + 1) }];
  // The card that is dealt or taken next is the one on top.
  if (word(at) === 'next' && word(at + 1) === 'card') return [{ value: { end: 'top', n: 1 }, next: at + 2 }];
  return readOrdinal(tokens, at, names).flatMap(({ value, next }) => {
    const after = card(next);
    const readings: BlankReading<PlaceRef>[] = [];
    for (const end of ['bottom', 'top'] as const)
      if (word(after) === 'from' && word(after + 1) === end)
        readings.push({ value: { end, n: value }, next: after + 2 });
    readings.push({ value: { end: 'top', n: value }, next: after });
    return readings;
  });
}

function printPlace(place: PlaceRef): string {
  if (place.n === 1) return `the ${place.end} card`;
  return `the ${printOrdinalRef(place.n)} card${place.end === 'bottom' ? ' from the bottom' : ''}`;
}

export const place = defineBlank<PlaceRef>({
  type: 'place',
  what: 'a place, such as "the top card" or "the 3rd card from the bottom"',
  read: readPlace,
  print: printPlace,
  samples: [
    { end: 'top', n: 1 },
    { end: 'bottom', n: 1 },
    { end: 'top', n: 5 },
    { end: 'bottom', n: 2 },
    { end: 'top', n: { var: 'n' } },
  ],
});

/** A name being given: one word. */
export const newName = defineBlank<string>({
  type: 'newname',
  what: 'a name of one word',
  read: (tokens, at) => {
    const token = tokens[at];
    if (token === undefined || !/^\p{L}/u.test(token.text)) return [];
    return [{ value: token.text, next: at + 1 }];
  },
  print: printName,
  samples: ['m', 'secret'],
});
