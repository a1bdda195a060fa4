import { wordingOf } from '../packages/engine/src/report/wording.ts';
import type { Phrase } from '../packages/engine/src/phrases/phrase.ts';

/** Bits of Markdown that the pages of the reference share. */

/** Told at the head of every page, so that nobody mends the wrong file. */
export const MADE_BY =
  '<!-- Made by `npm run docs` from the modules themselves; change those, not this page. -->';

export const HOW_TO_READ_WORDINGS =
  'In a wording, `[...]` may be left out, `(a | b)` is one of these, and `<pile>` is a blank to fill. Articles, commas and capitals do not matter. The first wording is how `foregone format` prints it.';

export const HOW_TO_READ_TABLES =
  "Cards are drawn from the top of their pile, which is on the left. `[3]` lies face up, `3'` is turned end for end, `3(chosen)` carries a mark.";

/** All wordings of a module, the printed one first. */
export function wordings(phrases: readonly Phrase[]): string {
  return phrases.map((phrase) => `- ${code(wordingOf(phrase))}`).join('\n');
}

export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

export function code(text: string): string {
  const fence = text.includes('`') ? '``' : '`';
  return `${fence}${text}${fence}`;
}

/** A block of text as it stands, whatever it holds. */
export function block(text: string, kind = 'text'): string {
  const ticks = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length)) + 1;
  const fence = '`'.repeat(ticks);
  return `${fence}${kind}\n${text}\n${fence}`;
}

/** Signs that Markdown would take for its own are kept as they are. */
export function plain(text: string): string {
  return text.replace(/[\\`*_<>|[\]]/g, (sign) => `\\${sign}`);
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** The address of a heading within its page. */
export function anchor(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replace(/ /g, '-');
}

/** One page from its parts, an empty line between any two. */
export function page(parts: readonly string[]): string {
  return `${[MADE_BY, ...parts].filter((part) => part !== '').join('\n\n')}\n`;
}
