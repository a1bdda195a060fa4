import { defineBlank } from '../blank.ts';
import { lettersIn } from './spot.ts';

/** Some words, one of which is meant: `"lamp", "tea" or "harbour"`. */
export const words = defineBlank<readonly string[]>({
  type: 'words',
  what: 'words in quotes, such as "lamp", "tea" or "harbour"',
  read: (tokens, at) => {
    const list: string[] = [];
    let next = at;
    for (;;) {
      const joined = list.length > 0 && tokens[next]?.text === 'or' && !tokens[next].quoted ? next + 1 : next;
      const token = tokens[joined];
      if (token?.quoted !== true || lettersIn(token.text) === 0) break;
      list.push(token.text);
      next = joined + 1;
    }
    return list.length < 2 ? [] : [{ value: list, next }];
  },
  print: (list) =>
    `${list
      .slice(0, -1)
      .map((text) => `"${text}"`)
      .join(', ')} or "${list[list.length - 1]}"`,
  samples: [
    ['lamp', 'tea'],
    ['tea', 'harbour', 'sea wind'],
  ],
});
