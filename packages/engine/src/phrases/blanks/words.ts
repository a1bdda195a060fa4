import { defineBlank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import { lettersIn } from './spot.ts';

/** Some words, one of which is meant: `"lamp", "tea" or "harbour"`. */
export const words = defineBlank<readonly string[]>({
  type: 'words',
  what: 'words in quotes, such as "lamp", "tea" or "harbour"',
  read: (tokens, at) => readWords(tokens, at, 'or'),
  print: (list) => printWords(list, 'or'),
  samples: [
    ['lamp', 'tea'],
    ['tea', 'harbour', 'sea wind'],
  ],
});

/** Words that belong together, in this order: `"eel" and "loo"`. */
export const allWords = defineBlank<readonly string[]>({
  type: 'allwords',
  what: 'words in quotes, such as "eel" and "loo"',
  read: (tokens, at) => readWords(tokens, at, 'and'),
  print: (list) => printWords(list, 'and'),
  samples: [
    ['eel', 'loo'],
    ['mutus', 'nomen', 'dedit', 'cocis'],
  ],
});

function readWords(tokens: readonly Token[], at: number, joint: string): BlankReading<readonly string[]>[] {
  const list: string[] = [];
  let next = at;
  for (;;) {
    const joined = list.length > 0 && tokens[next]?.text === joint && !tokens[next].quoted ? next + 1 : next;
    const token = tokens[joined];
    if (token?.quoted !== true || lettersIn(token.text) === 0) break;
    list.push(token.text);
    next = joined + 1;
  }
  return list.length < 2 ? [] : [{ value: list, next }];
}

function printWords(list: readonly string[], joint: string): string {
  const quoted = list.map((text) => `"${text}"`);
  return `${quoted.slice(0, -1).join(', ')} ${joint} ${quoted[list.length - 1]}`;
}
