import { trouble } from '../../base/diagnostic.ts';
import { defineBlank, type BlankReading } from '../blank.ts';
import { printName } from './number.ts';

/** A mark that was put on a card before: `chosen`, `the chosen card`. */
export const mark = defineBlank<string>({
  type: 'mark',
  what: 'the name a card was given, such as "chosen"',
  read: (tokens, at, names) => {
    const token = tokens[at];
    if (token === undefined || token.quoted || !/^\p{L}/u.test(token.text)) return [];
    const wrong = names.marks.includes(token.text)
      ? {}
      : { trouble: trouble('unknown-mark', { mark: token.text, known: [...names.marks] }) };
    const readings: BlankReading<string>[] = [{ value: token.text, next: at + 1, ...wrong }];
    if (tokens[at + 1]?.text === 'card') readings.unshift({ value: token.text, next: at + 2, ...wrong });
    return readings;
  },
  print: printName,
  samples: ['chosen'],
});
