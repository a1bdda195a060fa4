import { defineBlank } from '../blank.ts';
import type { Kind } from '../values.ts';
import { bitTest, nameLength } from './card-words.ts';
import { CLASS_SAMPLES, printKind, readKind } from './kind.ts';

/** One card with its article, or called by its mark alone: `the AS`, `the chosen card`, `chosen`. */
export const thisCard = defineBlank<Kind>({
  type: 'thiscard',
  what: 'which card: "the 10C", "the chosen card", "chosen"',
  read: (tokens, at, names) => [
    ...readKind(tokens, at, names).filter(({ value }) => value.tests.length > 0),
    ...names.marks.flatMap((mark) => {
      const length = nameLength(tokens, at, mark);
      return length === 0 ? [] : [{ value: { tests: [bitTest(mark)] }, next: at + length }];
    }),
  ],
  print: (value) => `the ${printKind(value, 'one')}`,
  samples: CLASS_SAMPLES,
});
