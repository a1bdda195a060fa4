import { defineBlank } from '../blank.ts';
import { printCard, readCard } from './card-words.ts';

/** A card of a common pack by its name, `10C` or `the ten of clubs`; a card of one's own is a word in quotes. */
export const pipCard = defineBlank<string>({
  type: 'pipcard',
  what: 'a card by its name, such as 10C or the ten of clubs',
  read: (tokens, at, names) => {
    const found = tokens[at]?.quoted === true ? null : readCard(tokens, at, names);
    const [test] = found?.tests ?? [];
    if (found === null || test?.test !== 'card') return [];
    return [
      {
        value: test.name,
        next: found.next,
        ...(found.trouble === undefined ? {} : { trouble: found.trouble }),
      },
    ];
  },
  print: printCard,
  samples: ['10C'],
});
