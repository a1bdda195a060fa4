import { markdown } from '@codemirror/lang-markdown';
import { yamlFrontmatter } from '@codemirror/lang-yaml';

/** The language of a note: Markdown with a head. */
export const noteLanguage = yamlFrontmatter({ content: markdown() });

const parser = noteLanguage.language.parser;

/** One numbered step of the working as it stands in the text. */
export interface StepPlace {
  /** Counted through: `2`, `2.1`. */
  readonly number: string;
  readonly depth: number;
  /** The whole item with everything in it, without the line's end. */
  readonly from: number;
  readonly to: number;
  /** Its first line without the number. */
  readonly sentence: string;
  /** Where the sentence begins. */
  readonly at: number;
}

/** A change of the text, with where the caret goes. */
export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
  readonly caret: number;
}

interface Found {
  readonly node: Node;
  readonly place: StepPlace;
}
type Tree = ReturnType<typeof parser.parse>;
type Node = Tree['topNode'];

/** Every numbered step of the section called Working. */
export function stepsIn(text: string): StepPlace[] {
  return found(text).map(({ place }) => place);
}

/**
 * The innermost step at a place of the text.
 *
 * @param tree of this text, where somebody has it already
 */
export function stepAt(text: string, at: number, tree?: Tree | null): StepPlace | undefined {
  const line = lineEnd(text, at);
  const steps =
    tree === null || tree === undefined
      ? stepsIn(text)
      : findIn(text, tree.topNode).map(({ place }) => place);
  return steps.findLast(({ from, to }) => from <= line && at <= to);
}

// One text is asked about many times over.
let last: { readonly text: string; readonly steps: Found[] } | undefined;

function found(text: string): Found[] {
  if (last?.text !== text) last = { text, steps: findIn(text, parser.parse(text).topNode) };
  return last.steps;
}

function findIn(text: string, root: Node): Found[] {
  const { from, to } = sectionIn(text, 'working') ?? { from: 0, to: 0 };
  const all: Found[] = [];
  const list = (node: Node, prefix: string, depth: number, start: number): number => {
    let count = start;
    for (const item of node.getChildren('ListItem')) {
      count += 1;
      const number = `${prefix}${count}`;
      all.push({ node: item, place: placeOf(text, item, number, depth) });
      let inner = 0;
      for (const sub of item.getChildren('OrderedList')) inner = list(sub, `${number}.`, depth + 1, inner);
      for (const bullets of item.getChildren('BulletList')) {
        for (const branch of bullets.getChildren('ListItem')) {
          for (const sub of branch.getChildren('OrderedList'))
            inner = list(sub, `${number}.`, depth + 1, inner);
        }
      }
    }
    return count;
  };
  let count = 0;
  const outer = (node: Node) => {
    for (let child = node.firstChild; child !== null; child = child.nextSibling) {
      if (child.name === 'OrderedList' && child.from >= from && child.to <= to)
        count = list(child, '', 0, count);
      else if (child.name === 'Document' || child.name === 'Body') outer(child);
    }
  };
  outer(root);
  return all;
}

function placeOf(text: string, item: Node, number: string, depth: number): StepPlace {
  const mark = item.getChild('ListMark');
  const first = item.getChild('Paragraph') ?? item.getChild('Task');
  const at = first?.from ?? Math.min(item.to, (mark?.to ?? item.from) + 1);
  const sentence = text.slice(at, Math.min(first?.to ?? at, lineEnd(text, at)));
  return { number, depth, from: item.from, to: item.to, sentence, at };
}

/** From the line after a section's heading to the next heading of any section, or the end. */
export function sectionIn(
  text: string,
  name: 'set-up' | 'working' | 'ending',
): { from: number; to: number } | undefined {
  const heads = [...text.matchAll(/^#{1,6}[ \t]+(.*?)[ \t#]*$/gm)];
  const index = heads.findIndex(
    ([, words = '']) => words.toLowerCase().replace(/\W/g, '') === name.replace('-', ''),
  );
  const head = heads[index];
  if (head === undefined) return undefined;
  return { from: head.index + head[0].length, to: heads[index + 1]?.index ?? text.length };
}

/** The section a place of the text stands in. */
export function sectionAt(text: string, at: number): 'set-up' | 'working' | 'ending' | undefined {
  return (['set-up', 'working', 'ending'] as const).find((name) => {
    const place = sectionIn(text, name);
    return place !== undefined && place.from < at && at <= place.to;
  });
}

/** Changes places with the step before or after it in the same list; undefined at either end of the list. */
export function moveStep(text: string, number: string, by: -1 | 1): TextChange | undefined {
  const all = found(text);
  const own = all.find(({ place }) => place.number === number);
  if (own === undefined) return undefined;
  const sibling = by === -1 ? previousItem(own.node) : nextItem(own.node);
  if (sibling === undefined) return undefined;
  const [first, second] = by === -1 ? [sibling, own.node] : [own.node, sibling];
  const between = text.slice(first.to, second.from);
  const [a, b] = [text.slice(first.from, first.to), text.slice(second.from, second.to)];
  // The numbers stay where they are: only what they number changes places.
  const [marked, moved] = [withMark(b, markOf(a)), withMark(a, markOf(b))];
  const insert = marked + between + moved;
  const caret = by === -1 ? first.from : first.from + marked.length + between.length;
  return { from: first.from, to: second.to, insert, caret: caret + markOf(by === -1 ? a : b).length + 1 };
}

/** Takes a step out, with all that belongs to it; those after it are numbered anew. */
export function removeStep(text: string, number: string): TextChange | undefined {
  const all = found(text);
  const own = all.find(({ place }) => place.number === number);
  if (own === undefined) return undefined;
  const next = nextItem(own.node);
  const from = lineStart(text, own.node.from);
  const previous = previousItem(own.node);
  const end =
    next === undefined ? Math.min(text.length, lineEnd(text, own.node.to) + 1) : lineStart(text, next.from);
  const begin = next === undefined && previous !== undefined ? lineEnd(text, previous.to) + 1 : from;
  const listEnd = lastItem(own.node).to;
  const after = renumbered(text.slice(end, Math.max(end, listEnd)), -1, markIndent(text, own.node.from));
  return { from: begin, to: Math.max(end, listEnd), insert: after, caret: begin };
}

/**
 * Puts a sentence in as a step of its own: before a step, or at the end of the working. Steps after it are numbered anew.
 *
 * @param before the step's number; undefined for the end
 */
export function insertStep(
  text: string,
  sentence: string,
  before: string | undefined,
): TextChange | undefined {
  const all = found(text);
  const own = all.find(({ place }) => place.number === before);
  if (own !== undefined) {
    const { node } = own;
    const indent = markIndent(text, node.from);
    const mark = markOf(text.slice(node.from, node.to));
    const to = lastItem(node).to;
    const rest = renumbered(indent + text.slice(node.from, to), 1, indent);
    const from = lineStart(text, node.from);
    const lead = text.slice(from, node.from);
    const line = `${lead}${mark} ${sentence}\n`;
    return { from, to, insert: line + lead + rest.slice(indent.length), caret: from + line.length - 1 };
  }
  const last = all.findLast(({ place }) => place.depth === 0);
  if (last !== undefined) {
    const mark = nextMark(markOf(text.slice(last.node.from, last.node.to)), 1);
    const at = trimmedEnd(text, last.node.from, last.node.to);
    const insert = `\n${mark} ${sentence}`;
    return { from: at, to: at, insert, caret: at + insert.length };
  }
  const section = sectionIn(text, 'working');
  if (section === undefined) {
    const insert = `${text.endsWith('\n') || text === '' ? '' : '\n'}\n## Working\n\n1. ${sentence}\n`;
    return { from: text.length, to: text.length, insert, caret: text.length + insert.length - 1 };
  }
  const insert = `\n\n1. ${sentence}${text[section.from] === undefined ? '\n' : ''}`;
  return { from: section.from, to: section.from, insert, caret: section.from + insert.length };
}

/** Puts a sentence in at the end of the ending. */
export function insertEnding(text: string, sentence: string): TextChange {
  const section = sectionIn(text, 'ending');
  if (section === undefined) {
    const insert = `${text.endsWith('\n') || text === '' ? '' : '\n'}\n## Ending\n\n- ${sentence}\n`;
    return { from: text.length, to: text.length, insert, caret: text.length + insert.length - 1 };
  }
  const at = trimmedEnd(text, section.from, section.to);
  const insert = `${at === section.from ? '\n' : ''}\n- ${sentence}${text[at] === undefined ? '\n' : ''}`;
  return { from: at, to: at, insert, caret: at + insert.trimEnd().length };
}

/** One sentence of the ending as it stands in the text. */
export interface EndingPlace {
  readonly sentence: string;
  readonly from: number;
  readonly to: number;
}

export function endingsIn(text: string): EndingPlace[] {
  const section = sectionIn(text, 'ending');
  if (section === undefined) return [];
  return [...text.slice(section.from, section.to).matchAll(/^([ \t]*[-*+][ \t]+)(.*\S)[ \t]*$/gm)].map(
    ({ index, 1: mark = '', 2: sentence = '' }) => {
      const from = section.from + index + mark.length;
      return { sentence, from, to: from + sentence.length };
    },
  );
}

export function replaceEnding({ from, to }: EndingPlace, sentence: string): TextChange {
  return { from, to, insert: sentence, caret: from + sentence.length };
}

export function removeEnding(text: string, { from, to }: EndingPlace): TextChange {
  const begin = lineStart(text, from);
  return { from: begin, to: Math.min(text.length, lineEnd(text, to) + 1), insert: '', caret: begin };
}

/** Puts a line into the set-up: in the place of the packet's, or before the others. */
export function setPacket(text: string, line: string): TextChange {
  const section = sectionIn(text, 'set-up');
  if (section === undefined) {
    const at = text.search(/^## Working/m);
    const from = at === -1 ? text.length : at;
    const lead = from === 0 || text.slice(0, from).endsWith('\n') ? '' : '\n';
    const insert = `${lead}## Set-up\n\n- ${line}\n\n`;
    return { from, to: from, insert, caret: from + insert.trimEnd().length };
  }
  const lines = text.slice(section.from, section.to);
  const found = /^[ \t]*[-*+][ \t]+(packet:.*)$/im.exec(lines);
  if (found !== null) {
    const from = section.from + found.index + found[0].length - (found[1]?.length ?? 0);
    return {
      from,
      to: section.from + found.index + found[0].length,
      insert: line,
      caret: from + line.length,
    };
  }
  const insert = `\n\n- ${line}`;
  return { from: section.from, to: section.from, insert, caret: section.from + insert.length };
}

/** Puts another sentence in the place of a step's own; what belongs to the step stays. */
export function replaceSentence(text: string, number: string, sentence: string): TextChange | undefined {
  const own = stepsIn(text).find((place) => place.number === number);
  if (own === undefined) return undefined;
  const to = own.at + own.sentence.length;
  return { from: own.at, to, insert: sentence, caret: own.at + sentence.length };
}

export function applied(
  text: string,
  { from, to, insert }: Pick<TextChange, 'from' | 'to' | 'insert'>,
): string {
  return text.slice(0, from) + insert + text.slice(to);
}

function trimmedEnd(text: string, from: number, to: number): number {
  return from + text.slice(from, to).trimEnd().length;
}

function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end;
}

function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

function markOf(item: string): string {
  return /^\d+[.)]/.exec(item)?.[0] ?? '1.';
}

function withMark(item: string, mark: string): string {
  return item.replace(/^\d+[.)]/, mark);
}

function nextMark(mark: string, by: number): string {
  return `${Math.max(0, Number.parseInt(mark, 10) + by)}${mark.slice(-1)}`;
}

function markIndent(text: string, at: number): string {
  return text.slice(lineStart(text, at), at).replace(/[^\s>]/g, ' ');
}

/** Numbers of the items of one list, told by how far they are indented, changed by so much. */
function renumbered(items: string, by: number, indent: string): string {
  return items
    .split('\n')
    .map((line) => {
      const [, space = '', mark = ''] = /^([\s>]*)(\d+[.)])\s/.exec(line) ?? [];
      return mark === '' || space !== indent
        ? line
        : space + nextMark(mark, by) + line.slice(space.length + mark.length);
    })
    .join('\n');
}

function nextItem(node: Node): Node | undefined {
  const { nextSibling: next } = node;
  return next?.name === 'ListItem' ? next : undefined;
}

function previousItem(node: Node): Node | undefined {
  const { prevSibling: previous } = node;
  return previous?.name === 'ListItem' ? previous : undefined;
}

function lastItem(node: Node): Node {
  let last = node;
  for (let next = nextItem(node); next !== undefined; next = nextItem(next)) last = next;
  return last;
}
