import { defineBlank, type Blank } from '../blank.ts';
import type { Kind } from '../values.ts';
import { asBlankReading, CLASS_SAMPLES } from './kind.ts';
import { printPredicate, readPredicate, type Number } from './predicate.ts';
import { attributeTest, bitTest, denied } from './card-words.ts';

const SAMPLES: readonly Kind[] = [
  ...CLASS_SAMPLES,
  { tests: [denied(bitTest('up'))] },
  { tests: [denied(attributeTest('colour', 'red'))] },
  { tests: [denied(attributeTest('suit', 'hearts'))] },
  { tests: [denied({ test: 'card', name: '10C' })] },
];

function stateBlank(type: string, what: string, number: Number): Blank {
  return defineBlank<Kind>({
    type,
    what,
    read: (tokens, at, names) => readPredicate(tokens, at, names).map(asBlankReading),
    print: ({ tests }) => printPredicate(tests, number),
    samples: SAMPLES,
  });
}

/** What several cards are: `face up`, `red`, `hearts`, `not chosen`. */
export const state = stateBlank('state', 'what cards are: "face up", "red", "hearts", "not chosen"', 'many');

/** What one card is: `face up`, `a heart`, `the 10C`, `not an ace`. */
export const oneState = stateBlank(
  'onestate',
  'what a card is: "face up", "a heart", "the 10C", "not an ace"',
  'one',
);
