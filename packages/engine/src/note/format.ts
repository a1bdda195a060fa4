import type { Range } from '../base/diagnostic.ts';
import { compileInside, type CompiledInside } from './compile.ts';
import { lowerFirst, upperFirst } from './print-clause.ts';
import { read } from './read.ts';
import { printSetUp } from './setup.ts';

interface Edit {
  readonly range: Range;
  readonly text: string;
}

/**
 * The same note with its sentences as their moves and claims print them. Only sentences that are understood are touched, never
 * prose, patter, remarks or the head, and never what the note means.
 */
export function format(text: string): string {
  const before = compileInside(read(text), false);
  const meaning = meaningOf(before);
  const keeps = (edits: readonly Edit[]): boolean =>
    meaningOf(compileInside(read(applied(text, edits)), false)) === meaning;
  return applied(text, sound(editsOf(text, before), keeps));
}

/** Those edits that leave the meaning alone. All of them do, unless a phrase of ours prints what it does not read. */
function sound(edits: readonly Edit[], keeps: (edits: readonly Edit[]) => boolean): readonly Edit[] {
  if (edits.length === 0 || keeps(edits)) return edits;
  if (edits.length === 1) return [];
  const half = edits.length >> 1;
  const kept = [...sound(edits.slice(0, half), keeps), ...sound(edits.slice(half), keeps)];
  return keeps(kept) ? kept : [];
}

/** Everything that a change of wording must leave as it is, as text. */
function meaningOf({ compiled, steps, endings, setUp }: CompiledInside): string {
  const codes = compiled.diagnostics.filter(({ severity }) => severity !== 'reading').map(({ code }) => code);
  const parts = {
    steps,
    endings: endings.map(({ sentence }) => sentence),
    cards: setUp?.cards,
    setUp: setUp?.setUp,
    codes,
  };
  return JSON.stringify(parts, (key, value: unknown) => (key === 'range' ? undefined : value));
}

// Emphasis, links and the like are the author's; so is a sentence that has any.
const MARKUP = /[*_`<>[\]\\&~|#]/;

function editsOf(text: string, { prints, setUp, lines, compiled }: CompiledInside): Edit[] {
  const edits: Edit[] = [];
  // Line ends of one kind, every place as it was.
  const plain = text.replaceAll('\r\n', ' \n').replaceAll('\r', '\n');
  const isWrong = ({ from, to }: Range): boolean =>
    compiled.diagnostics.some(
      ({ severity, range }) => severity === 'error' && range.from < to && range.to > from,
    );
  const add = (range: Range, wanted: string): void => {
    const written = text.slice(range.from, range.to);
    if (written !== wanted && !MARKUP.test(written)) edits.push({ range, text: wanted });
  };
  for (const { range, say } of prints) {
    const said = isWrong(range) ? null : say();
    if (said === null) continue;
    const cased = startsSentence(plain, range.from) ? upperFirst(said) : lowerFirst(said);
    add(range, endsParagraph(plain, range.to) && !cased.endsWith(':') ? `${cased}.` : cased);
  }
  if (setUp !== null && setUp.lines.length === lines.length)
    printSetUp(setUp).forEach((line, i) => isWrong(lines[i]) || add(lines[i], line));
  return edits.sort((a, b) => a.range.from - b.range.from);
}

/** After a stop, a list mark or an empty line. */
function startsSentence(text: string, at: number): boolean {
  const before = text.slice(Math.max(0, at - 60), at);
  return /[.!?]["”'’)]*\s*$|(?:^|\n)\s*[-*+]\s+$|\n\s*\n\s*$/.test(before);
}

/** A sentence at the end of its paragraph without a stop. */
function endsParagraph(text: string, at: number): boolean {
  return /^[ \t]*(?:\n[ \t]*(?:\n|\d+[.)]|[-*+>]|#)|\n?$)/.test(text.slice(at, at + 200));
}

function applied(text: string, edits: readonly Edit[]): string {
  let result = '';
  let at = 0;
  for (const { range, text: wanted } of edits) {
    if (range.from < at) continue;
    result += text.slice(at, range.from) + wanted;
    at = range.to;
  }
  return result + text.slice(at);
}
