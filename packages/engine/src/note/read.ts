import { distance } from 'fastest-levenshtein';
import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import { readHead } from './head.ts';
import { MOST_LINES, MOST_TEXT } from './limits.ts';
import { readStructure, type TopBlock } from './markdown.ts';
import type { Block, Note, Piece, Section } from './note.ts';

type SectionName = 'setUp' | 'working' | 'ending' | 'prediction';

const SECTIONS: readonly {
  readonly name: SectionName;
  readonly printed: string;
  readonly words: readonly string[];
}[] = [
  { name: 'setUp', printed: 'Set-up', words: ['setup'] },
  { name: 'working', printed: 'Working', words: ['working'] },
  { name: 'ending', printed: 'Ending', words: ['ending', 'endings'] },
  { name: 'prediction', printed: 'Prediction', words: ['prediction', 'predictions'] },
];

/** Letters only, lower case: `Set-up`, `Set up` and `**SETUP**:` are one heading. */
function plain(heading: string): string {
  return heading
    .slice(0, 60)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

/**
 * Reads a note into its parts. Never fails: what cannot be read is kept with its place, and said.
 */
export function read(text: string): Note {
  if (text.length > MOST_TEXT) {
    const range = { from: 0, to: Math.min(text.length, 1) };
    return emptyNote(text, [diagnostic('note-too-long', range, { length: text.length, most: MOST_TEXT })]);
  }
  const lines = linesIn(text);
  if (lines > MOST_LINES)
    return emptyNote(text, [
      diagnostic('note-too-many-lines', { from: 0, to: 1 }, { lines, most: MOST_LINES }),
    ]);
  const { head, bodyFrom, diagnostics: headTroubles } = readHead(text);
  const diagnostics = [...headTroubles];
  const { blocks, tooDeep } = readStructure(text, bodyFrom);
  if (tooDeep !== null) diagnostics.push(diagnostic('too-deep-in-lists', tooDeep));

  const known: Partial<Record<SectionName, Section>> = {};
  const others: Section[] = [];
  const opening: Block[] = [];
  let title = head.title;
  for (const { heading, level, from, to } of cut(blocks)) {
    const body = blocks.slice(from, to);
    if (heading === null) {
      append(opening, withoutHeadings(body));
      continue;
    }
    const range = { from: heading.range.from, to: body.at(-1)?.range.to ?? heading.range.to };
    const section: Section = { heading, range, blocks: withoutHeadings(body) };
    const word = plain(heading.text);
    const name = SECTIONS.find(({ words }) => words.includes(word))?.name;
    if (name === undefined) {
      diagnostics.push(...nearSection(heading, word));
      if (title === null && level === 1) {
        title = heading.text;
        append(opening, section.blocks);
      } else others.push(section);
    } else if (known[name] === undefined) known[name] = section;
    else diagnostics.push(diagnostic('section-twice', heading.range, { section: heading.text }));
  }
  return {
    text,
    head,
    title: title ?? '',
    setUp: known.setUp ?? null,
    working: known.working ?? null,
    ending: known.ending ?? null,
    prediction: known.prediction ?? null,
    opening,
    others,
    diagnostics,
  };
}

// A note may have more blocks than a call may have arguments.
function append<T>(list: T[], more: readonly T[]): void {
  for (const one of more) list.push(one);
}

interface Stretch {
  readonly heading: Piece | null;
  readonly level: number;
  /** Indices of the blocks under the heading. */
  readonly from: number;
  readonly to: number;
}

/** Cuts at every heading, except at deeper ones inside a section that is read: those only divide it for people. */
function cut(blocks: readonly TopBlock[]): Stretch[] {
  const stretches: Stretch[] = [];
  let now: { heading: Piece | null; level: number; from: number; read: boolean } = {
    heading: null,
    level: 0,
    from: 0,
    read: false,
  };
  blocks.forEach((block, i) => {
    if (block.is !== 'heading') return;
    const read = SECTIONS.some(({ words }) => words.includes(plain(block.text.text)));
    if (now.read && !read && block.level > now.level) return;
    stretches.push({ ...now, to: i });
    now = { heading: block.text, level: block.level, from: i + 1, read };
  });
  stretches.push({ ...now, to: blocks.length });
  return stretches;
}

function withoutHeadings(blocks: readonly TopBlock[]): Block[] {
  return blocks.map((block) =>
    block.is === 'heading' ? { is: 'prose', range: block.range, text: block.text.text } : block,
  );
}

/** A heading that is nearly one of ours is more likely a slip than a section of the author's own. */
function nearSection(heading: Piece, word: string): Diagnostic[] {
  const near = SECTIONS.find(({ words }) => words.some((known) => word !== '' && distance(word, known) <= 1));
  if (near === undefined) return [];
  const fixes = [{ label: near.printed, range: heading.range, text: near.printed }];
  const facts = { heading: heading.text, near: near.printed };
  return [diagnostic('section-near', heading.range, facts, { severity: 'warning', fixes })];
}

function linesIn(text: string): number {
  let lines = 1;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || (c === 13 && text.charCodeAt(i + 1) !== 10)) lines++;
  }
  return lines;
}

function emptyNote(text: string, diagnostics: readonly Diagnostic[]): Note {
  const head = { range: null, title: null, minutes: null, credits: [], readings: [], place: null };
  return {
    text,
    head,
    title: '',
    setUp: null,
    working: null,
    ending: null,
    prediction: null,
    opening: [],
    others: [],
    diagnostics,
  };
}
