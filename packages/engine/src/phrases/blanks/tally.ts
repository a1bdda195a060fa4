import { defineBlank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Kind, Names, PileRef, Tally } from '../values.ts';
import { asBlankReading, KIND_SAMPLES, printKind, readKind } from './kind.ts';
import { pile, printPile } from './pile.ts';
import { readPredicate } from './predicate.ts';
import { inOrder, readAdjective, wordAt } from './card-words.ts';

type Place = { readonly pile: PileRef; readonly next: number; readonly trouble?: BlankReading['trouble'] };

/** `in pile 1`, `left in the packet`. */
export function readIn(tokens: readonly Token[], at: number, names: Names): Place[] {
  const start = wordAt(tokens, at) === 'left' && wordAt(tokens, at + 1) === 'in' ? at + 1 : at;
  const word = wordAt(tokens, start);
  if (word !== 'in' && word !== 'of') return [];
  // A pile blank only ever reads a pile.
  return pile
    .read(tokens, start + 1, names)
    .map(({ value, ...rest }) => ({ ...rest, pile: value as PileRef }));
}

/** `are face up`, `face down`, `that are chosen`: more said of cards already named. */
function readMore(tokens: readonly Token[], at: number, names: Names): BlankReading<Kind>[] {
  const word = wordAt(tokens, at);
  const that = word === 'that' || word === 'which' ? at + 1 : at;
  if (wordAt(tokens, that) === 'are') return readPredicate(tokens, that + 1, names).map(asBlankReading);
  const adjective = readAdjective(tokens, at, names);
  return adjective === null ? [] : [asBlankReading(adjective)];
}

/** `red cards`, `red cards in pile 1`, `cards in pile 1 face up`, `face down`; longest first. */
function readTally(tokens: readonly Token[], at: number, names: Names): BlankReading<Tally>[] {
  const kinds = readKind(tokens, at, names);
  const adjective = readAdjective(tokens, at, names);
  if (adjective !== null) kinds.push(asBlankReading(adjective));
  const readings: BlankReading<Tally>[] = [];
  const add = (
    kind: Kind,
    place: Place | undefined,
    next: number,
    troubles: readonly BlankReading['trouble'][],
  ): void => {
    const found = troubles.find((trouble) => trouble !== undefined);
    readings.push({
      value: place === undefined ? { kind } : { kind, pile: place.pile },
      next,
      ...(found === undefined ? {} : { trouble: found }),
    });
  };
  for (const said of kinds) {
    const wholes = [said];
    for (const more of readMore(tokens, said.next, names)) wholes.push(joined(said, more));
    for (const whole of wholes) {
      add(whole.value, undefined, whole.next, [whole.trouble]);
      for (const place of readIn(tokens, whole.next, names)) {
        add(whole.value, place, place.next, [whole.trouble, place.trouble]);
        for (const more of readMore(tokens, place.next, names)) {
          const last = joined(whole, more);
          add(last.value, place, last.next, [last.trouble, place.trouble]);
        }
      }
    }
  }
  return readings.sort((a, b) => b.next - a.next);
}

function joined(a: BlankReading<Kind>, b: BlankReading<Kind>): BlankReading<Kind> {
  return { ...a, ...b, value: { tests: inOrder([...a.value.tests, ...b.value.tests]) } };
}

export function printTally({ kind, pile: where }: Tally): string {
  return printKind(kind, 'many') + (where === undefined ? '' : ` in ${printPile(where)}`);
}

/** Cards to be counted: `red cards in pile 1`, `face-up cards`. */
export const tally = defineBlank<Tally>({
  type: 'tally',
  what: 'cards to be counted: "face-up cards", "red cards in pile 1"',
  read: readTally,
  print: printTally,
  samples: [
    ...KIND_SAMPLES.map((kind): Tally => ({ kind })),
    ...KIND_SAMPLES.slice(0, 6).map((kind): Tally => ({ kind, pile: 'pile 1' })),
    { kind: { tests: [] }, pile: 'left' },
    { kind: { tests: [] }, pile: { stem: 'pile', n: { var: 'n' } } },
  ],
});
