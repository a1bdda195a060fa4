import type { Range } from '../base/diagnostic.ts';
import type { ClauseReader, Context } from './clause.ts';
import { SentenceReader } from './joined.ts';
import { MOST_NESTING, MOST_SENTENCE, MOST_STEPS } from './limits.ts';
import { lineOf } from './line.ts';
import type { Block, Item, Piece, Section } from './note.ts';
import { followed, nothing, settled, withTrouble, type Outcome } from './outcome.ts';
import { numbered, type OutlineItem } from './outline.ts';
import type { Open } from './paragraph.ts';
import { beginsOtherwise } from './split.ts';

export interface ReadWorking {
  readonly outcome: Outcome;
  readonly outline: readonly OutlineItem[];
}

/** Reads the steps of the working. */
export function readWorking(section: Section, context: Context, clauses: ClauseReader): ReadWorking {
  return new WorkingReader(clauses).section(section, context);
}

interface List {
  readonly outcome: Outcome;
  readonly outline: readonly OutlineItem[];
}

class WorkingReader {
  private readonly sentences: SentenceReader;
  private count = 0;
  /** Said once that nothing more is read. */
  private isOver = false;

  constructor(clauses: ClauseReader) {
    this.sentences = new SentenceReader(clauses);
  }

  section(section: Section, context: Context): ReadWorking {
    const parts: Outcome[] = [nothing(context)];
    const outline: OutlineItem[] = [];
    for (const block of section.blocks) {
      if (block.is === 'bullets')
        parts.push(withTrouble(nothing(context), 'steps-are-bullets', firstLine(block.range, block.items)));
      if (block.is !== 'steps') continue;
      const list = this.list(block.items, lastContext(parts), 0, '', outline.length);
      parts.push(list.outcome);
      for (const item of list.outline) outline.push(item);
    }
    const outcome = settled(joinAll(parts));
    if (this.count === 0 && parts.every((part) => part.diagnostics.length === 0))
      return { outcome: withTrouble(outcome, 'no-steps', section.heading.range), outline };
    return { outcome, outline };
  }

  /** Items of one list, one after another; `from` of them stand before it under the same number. */
  private list(
    items: readonly Item[],
    context: Context,
    depth: number,
    prefix: string,
    from: number,
    isBranch = false,
  ): List {
    const parts: Outcome[] = [];
    const outline: OutlineItem[] = [];
    let before = nothing(context);
    for (const item of items) {
      if (this.isOver) break;
      if (this.sentences.clauses.work.stopped) {
        this.isOver = true;
        parts.push(withTrouble(nothing(before.context), 'reading-stopped', firstWords(item)));
        break;
      }
      if (++this.count > MOST_STEPS) {
        // Said once, at the first step that is not read.
        if (this.count === MOST_STEPS + 1)
          parts.push(
            withTrouble(nothing(before.context), 'too-many-steps', firstWords(item), { most: MOST_STEPS }),
          );
        break;
      }
      const number = `${prefix}${from + outline.length + 1}`;
      const read = this.item(item, before, depth, number, isBranch);
      parts.push(read.outcome);
      outline.push(read.item);
      before =
        read.outcome.steps.length === 0 && read.outcome.otherwise === null
          ? { ...before, context: read.outcome.context }
          : read.outcome;
    }
    return { outcome: joinAll([nothing(context), ...parts]), outline };
  }

  private item(
    item: Item,
    before: Outcome,
    depth: number,
    number: string,
    isBranch: boolean,
  ): { outcome: Outcome; item: OutlineItem } {
    const patter: string[] = [];
    const remarks: string[] = [];
    const inner: OutlineItem[] = [];
    let outcome = nothing(before.context);
    let open: Open | null = null;
    const grouped = isBranch && item.blocks[0]?.is === 'steps';
    if (item.sentence === null && grouped) open = groupOf(before.context, firstWords(item));
    else if (item.sentence === null) outcome = withTrouble(outcome, 'step-empty', firstWords(item));
    else ({ outcome, open } = this.paragraph(item.sentence, before, depth));

    const bodies: Outcome[] = [];
    const close = (): void => {
      if (open === null) return;
      const { head, range, close: shut } = open;
      if (bodies.length === 0 && head !== null) outcome = withTrouble(outcome, 'block-without-steps', range);
      else if (head?.is === 'either' && bodies.length === 1)
        outcome = withTrouble(outcome, 'one-branch', range);
      outcome = followed(outcome, shut(bodies.splice(0)));
      open = null;
    };
    for (const block of item.blocks) {
      if (block.is === 'patter') patter.push(block.text);
      else if (block.is === 'prose') {
        const otherwise =
          open !== null || outcome.fork !== null ? this.otherwise(block, item, outcome, depth) : null;
        if (otherwise === null) remarks.push(block.text);
        else {
          close();
          const again = this.otherwise(block, item, outcome, depth) ?? otherwise;
          outcome = followed(outcome, again.outcome);
          open = again.open;
        }
      } else if (open === null) {
        // Steps under a step that is no block belong nowhere; bullets may be notes, but never silently.
        const place = firstLine(block.range, block.items);
        if (block.is === 'steps') outcome = withTrouble(outcome, 'steps-without-block', place);
        else outcome = withTrouble(outcome, 'bullets-not-read', place, {}, 'warning');
      } else {
        const list = this.body(block, open, bodies, depth + 1, `${number}.`, inner.length);
        if (list.outcome !== null) bodies.push(...list.outcome);
        for (const one of list.outline) inner.push(one);
      }
    }
    close();
    const steps = numbered(outcome.steps, number);
    const attached =
      outcome.otherwise === null
        ? null
        : { ...outcome.otherwise, body: numbered(outcome.otherwise.body, number) };
    return {
      outcome: { ...outcome, steps, otherwise: attached },
      item: { number, sentence: item.sentence, steps, patter, remarks, items: inner },
    };
  }

  /** The list under a block: its steps or, under an `Either:`, a bullet for each way. */
  private body(
    block: Extract<Block, { is: 'steps' | 'bullets' }>,
    open: Open,
    before: readonly Outcome[],
    depth: number,
    prefix: string,
    from: number,
  ): { outcome: Outcome[]; outline: readonly OutlineItem[] } {
    const place = firstLine(block.range, block.items);
    const either = open.head?.is === 'either';
    if (depth > MOST_NESTING)
      return {
        outcome: [withTrouble(nothing(open.inner), 'too-deep', place, { most: MOST_NESTING })],
        outline: [],
      };
    if (either && block.is === 'bullets') {
      const lists = block.items.map((item, i) =>
        this.list([item], open.inner, depth, prefix, from + i, true),
      );
      return { outcome: lists.map((list) => list.outcome), outline: lists.flatMap((list) => list.outline) };
    }
    const context = before.at(-1)?.context ?? open.inner;
    const list = this.list(block.items, either ? open.inner : context, depth, prefix, from);
    const wrong = either ? 'branches-are-steps' : 'steps-are-bullets';
    const isRight = open.head === null || (either ? false : block.is === 'steps');
    return {
      outcome: [isRight ? list.outcome : withTrouble(list.outcome, wrong, place)],
      outline: list.outline,
    };
  }

  private paragraph(
    sentence: Piece,
    before: Outcome,
    depth: number,
  ): { outcome: Outcome; open: Open | null } {
    if (sentence.text.length > MOST_SENTENCE)
      return {
        outcome: withTrouble(nothing(before.context), 'sentence-too-long', headOf(sentence.range), {
          most: MOST_SENTENCE,
        }),
        open: null,
      };
    const line = lineOf(sentence);
    const start = beginsOtherwise(line.tokens, 0) ? (before.fork?.before ?? before.context) : before.context;
    if (line.tokens.length === 0)
      return { outcome: withTrouble(nothing(start), 'step-empty', sentence.range), open: null };
    const read = this.sentences.paragraph(line, start, depth);
    if (line.stray === null) return read;
    return {
      ...read,
      outcome: withTrouble(read.outcome, 'stray-sign', line.stray.range, { sign: line.stray.text }),
    };
  }

  /** A paragraph `Otherwise:` between two lists of one item. */
  private otherwise(
    block: Extract<Block, { is: 'prose' }>,
    item: Item,
    before: Outcome,
    depth: number,
  ): { outcome: Outcome; open: Open | null } | null {
    if (
      !/^(otherwise|else)\b/i.test(block.text) ||
      item.sentence === null ||
      block.text.length > MOST_SENTENCE
    )
      return null;
    // Its range is that of the paragraph; a text cut at its own line ends keeps every place only while it is one line.
    if (block.text.length !== block.range.to - block.range.from) return null;
    return this.paragraph({ text: block.text, range: block.range }, before, depth);
  }
}

/** A bullet that begins with a list of its own: its steps are one way of the `Either`. */
function groupOf(context: Context, range: Range): Open {
  return { head: null, range, inner: context, close: (bodies) => bodies.reduce(followed, nothing(context)) };
}

function lastContext(parts: readonly Outcome[]): Context {
  return (parts.at(-1) as Outcome).context;
}

/** Joined in one go: ten thousand steps joined one by one would be copied ten thousand times. */
function joinAll(parts: readonly Outcome[]): Outcome {
  if (parts.length <= 4) return parts.reduce(followed);
  const half = parts.length >> 1;
  return followed(joinAll(parts.slice(0, half)), joinAll(parts.slice(half)));
}

/** The first line of a list, to be underlined. */
function firstLine(range: Range, items: readonly Item[]): Range {
  const sentence = items[0]?.sentence;
  return sentence === null || sentence === undefined ? headOf(range) : headOf(sentence.range);
}

function firstWords(item: Item): Range {
  return headOf(item.sentence?.range ?? item.range);
}

function headOf({ from, to }: Range): Range {
  return { from, to: Math.min(to, from + 60) };
}
