import type { SyntaxNode } from '@lezer/common';
import { parser as commonMark } from '@lezer/markdown';
import type { Range } from '../base/diagnostic.ts';
import { MOST_CONTAINERS } from './limits.ts';
import type { Block, Item, Piece } from './note.ts';

// Sentences are read by our own phrases, so nothing inside a paragraph needs a tree; this also keeps hostile text cheap.
const parser = commonMark.configure({
  remove: [
    'Escape',
    'Entity',
    'InlineCode',
    'HTMLTag',
    'Emphasis',
    'HardBreak',
    'Link',
    'Image',
    'LinkEnd',
    'LinkReference',
  ],
});

export type TopBlock =
  Block | { readonly is: 'heading'; readonly range: Range; readonly level: number; readonly text: Piece };

export interface Structure {
  readonly blocks: readonly TopBlock[];
  /** The first place where quotes and lists are too deep in one another to be told apart. */
  readonly tooDeep: Range | null;
}

/** The blocks of the Markdown from `from` on, all ranges in the whole text. */
export function readStructure(text: string, from: number): Structure {
  const { source, tooDeep } = tamed(text.slice(from));
  const tree = parser.parse(source);
  const blocks: TopBlock[] = [];
  for (let node = tree.topNode.firstChild; node !== null; node = node.nextSibling) {
    const level = /^(?:ATX|Setext)Heading(\d)$/.exec(node.name);
    if (level === null) blocks.push(blockOf(node, text, from));
    else
      blocks.push({
        is: 'heading',
        level: Number(level[1]),
        range: placed(node, from),
        text: headingText(node, text, from),
      });
  }
  return { blocks, tooDeep: tooDeep === null ? null : { from: from + tooDeep.from, to: from + tooDeep.to } };
}

/**
 * The same text, character for character as long, with the line ends the parser knows and without towers of quote and list
 * marks, which no person writes and which would cost time in every later line.
 */
function tamed(body: string): { source: string; tooDeep: Range | null } {
  let tooDeep: Range | null = null;
  const plain = body.replaceAll('\r\n', ' \n').replaceAll('\r', '\n').replaceAll('\0', '\uFFFD');
  const source = plain.replace(
    /^[ \t]*(?:(?:>|[-*+]|\d{1,9}[.)])[ \t]*){8,}/gm,
    (marks: string, at: number) => {
      if ((marks.match(/>|[-*+]|\d+[.)]/g) ?? []).length <= MOST_CONTAINERS) return marks;
      tooDeep ??= { from: at, to: at + marks.length };
      return marks.replace(/[^\n]/g, ' ').slice(1) + 'x';
    },
  );
  return { source, tooDeep };
}

function placed(node: SyntaxNode, base: number): Range {
  return { from: base + node.from, to: base + node.to };
}

function pieceOf(range: Range, text: string): Piece {
  let { from, to } = range;
  while (from < to && /\s/.test(text[from])) from++;
  while (to > from && /\s/.test(text[to - 1])) to--;
  return { text: text.slice(from, to), range: { from, to } };
}

function headingText(node: SyntaxNode, text: string, base: number): Piece {
  let { from, to } = node;
  for (const mark of node.getChildren('HeaderMark')) {
    if (mark.from === node.from) from = mark.to;
    else to = mark.from;
  }
  return pieceOf({ from: base + from, to: base + to }, text);
}

function blockOf(node: SyntaxNode, text: string, base: number): Block {
  const range = placed(node, base);
  switch (node.name) {
    case 'OrderedList':
      return { is: 'steps', range, items: itemsOf(node, text, base) };
    case 'BulletList':
      return { is: 'bullets', range, items: itemsOf(node, text, base) };
    case 'Blockquote':
      return { is: 'patter', range, text: unquoted(text.slice(range.from, range.to)) };
    default:
      return { is: 'prose', range, text: dedented(text.slice(range.from, range.to)) };
  }
}

function itemsOf(list: SyntaxNode, text: string, base: number): Item[] {
  const items: Item[] = [];
  for (let node = list.firstChild; node !== null; node = node.nextSibling) {
    if (node.name !== 'ListItem') continue;
    let sentence: Piece | null = null;
    const blocks: Block[] = [];
    let first = true;
    for (let child = node.firstChild; child !== null; child = child.nextSibling) {
      if (child.name === 'ListMark') continue;
      if (first && child.name === 'Paragraph') sentence = pieceOf(placed(child, base), text);
      else blocks.push(blockOf(child, text, base));
      first = false;
    }
    items.push({ range: placed(node, base), sentence, blocks });
  }
  return items;
}

function lines(text: string): string[] {
  return text.split(/\r\n|\r|\n/);
}

function unquoted(text: string): string {
  return lines(text)
    .map((line) => line.replace(/^\s*>[ \t]?/, '').trimEnd())
    .join('\n')
    .trim();
}

function dedented(text: string): string {
  return lines(text)
    .map((line) => line.trim())
    .join('\n')
    .trim();
}
