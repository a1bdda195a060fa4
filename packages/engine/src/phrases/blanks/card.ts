import { RANKS, rankWord, parseRank } from '../../cards/names.ts';
import { defineBlank, type BlankReading } from '../blank.ts';
import { printCard, readCard, wordAt } from './card-words.ts';

/** Cards by name, first to last: `AS 2S "lamp"`. */
export const cardList = defineBlank<readonly string[]>({
  type: 'cardlist',
  what: 'cards by name, such as AS 2S 3S',
  read: (tokens, at, names) => {
    const list: string[] = [];
    const readings: BlankReading<readonly string[]>[] = [];
    let trouble: BlankReading['trouble'];
    for (let next = at; ;) {
      if (list.length > 0 && wordAt(tokens, next) === 'and') next++;
      const found = readCard(tokens, next, names);
      const [test] = found?.tests ?? [];
      if (found === null || test?.test !== 'card') return readings;
      list.push(test.name);
      trouble ??= found.trouble;
      next = found.next;
      readings.unshift({ value: [...list], next, ...(trouble === undefined ? {} : { trouble }) });
    }
  },
  print: (list) => list.map(printCard).join(' '),
  samples: [['10C'], ['lamp', '10C'], ['10C', 'lamp', '10C']],
});

/** A rank by its value: `ace` is 1, `king` 13. */
export const rank = defineBlank<number>({
  type: 'rank',
  what: 'a rank: "ace", "7", "ten", "king"',
  read: (tokens, at) => {
    const parsed = parseRank(wordAt(tokens, at));
    return parsed === null ? [] : [{ value: RANKS.indexOf(parsed) + 1, next: at + 1 }];
  },
  print: (value) => (value > 1 && value < 11 ? String(value) : rankWord(RANKS[value - 1])),
  samples: [1, 2, 7, 10, 11, 12, 13],
});
