import { diagnostic, type Diagnostic, type Range } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Names } from '../phrases/values.ts';
import type { SetUp } from '../routine/routine.ts';
import { checkAttributes, checkNames, valuesOf } from './setup-checks.ts';
import { lookOf, readAttributeLine } from './setup-attributes.ts';
import { knowledge } from './setup-knowledge.ts';
import { layOut } from './setup-lay.ts';
import { MOST_PILES } from './limits.ts';
import { cardsNamed, ownNames, targetKeys } from './setup-named.ts';
import { readPileLine } from './setup-piles.ts';
import { printLine } from './setup-print.ts';
import { Reader, sharing, type Shared } from './setup-reader.ts';
import type { AttributeLine, PileLine, SetUpLine } from './setup-syntax.ts';
import { countAt, MOST_LINE, setUpTokens, type SetUpToken } from './setup-tokens.ts';
import { KIND_WORDS, PAIR, type KindWord } from './setup-words.ts';

/** A set-up as far as it was understood. What stands in the way is in `diagnostics`. */
export interface SetUpReading {
  readonly cards: readonly Card[];
  readonly setUp: SetUp;
  /** Every pile the set-up names, empty ones too, in the order of its lines. */
  readonly piles: readonly string[];
  /** The note's own attributes and their values. */
  readonly attributes: Names['attributes'];
  /** In the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  /** The lines as they were understood, one for each line read, for printing. */
  readonly lines: readonly SetUpLine[];
}

/** Attributes of one's own in one set-up. */
const MOST_ATTRIBUTES = 20;

/** A line cut at its colon; what kind of line it is shows later. */
interface Split {
  readonly text: string;
  readonly range: Range;
  readonly name: string;
  readonly nameRange: Range;
  readonly tokens: readonly SetUpToken[];
}

/**
 * Reads the list items of a set-up: `packet: 2S 9H 4C, face down`, `table: empty`, `warm: hearts, "lamp"`.
 *
 * @param lines the text of each item and its place in the note, in UTF-16 code units
 */
export function readSetUp(lines: readonly { readonly text: string; readonly from: number }[]): SetUpReading {
  const reading = new Reading();
  return reading.read(lines);
}

/** One line of canonical text for each line read; lines that were not understood keep their words. */
export function printSetUp(reading: Pick<SetUpReading, 'lines'>): string[] {
  return reading.lines.map(printLine);
}

class Reading {
  private readonly diagnostics: Diagnostic[] = [];
  private readonly piles: PileLine[] = [];
  private readonly attributes: AttributeLine[] = [];

  read(lines: readonly { readonly text: string; readonly from: number }[]): SetUpReading {
    const found: (SetUpLine | null)[] = lines.map(() => null);
    const splits = lines.map((line) => this.split(line));
    const bare = sharing(KIND_WORDS);
    const looks = splits.map((split) =>
      split === null ? null : lookOf(new Reader(split.tokens, bare, split.range.to), split.name),
    );
    // Attributes first, for a pile may hold `4 warm cards`.
    splits.forEach((split, i) => {
      if (split !== null && looks[i] === 'attribute') found[i] = this.attribute(split, bare);
    });
    const shared = sharing(this.words());
    splits.forEach((split, i) => {
      if (split !== null && looks[i] === 'pile') found[i] = this.pile(split, shared);
    });
    const named = cardsNamed(this.piles);
    splits.forEach((split, i) => {
      if (split !== null && looks[i] === 'either') found[i] = this.either(split, shared, named);
    });
    return this.finish(lines.map(({ text, from }, i) => found[i] ?? unread(text, from)));
  }

  private finish(lines: readonly SetUpLine[]): SetUpReading {
    const known = knowledge(this.attributes, ownNames(this.piles));
    const { cards, setUp, diagnostics, pairs } = layOut(this.piles, known);
    this.diagnostics.push(
      ...diagnostics,
      ...checkAttributes(this.attributes, this.piles),
      ...checkNames(this.piles),
    );
    const last = lines.at(-1)?.range.to ?? 0;
    if (cards.length === 0 && this.diagnostics.every(({ severity }) => severity !== 'error'))
      this.diagnostics.push(diagnostic('set-up-empty', { from: lines[0]?.range.from ?? last, to: last }));
    const own = Object.fromEntries(valuesOf(this.attributes, cards));
    return {
      cards,
      setUp,
      piles: [...new Set(this.piles.map(({ pile }) => pile))],
      attributes: pairs.length === 0 ? own : { ...own, [PAIR]: pairs },
      diagnostics: this.diagnostics.sort((a, b) => a.range.from - b.range.from || a.range.to - b.range.to),
      lines,
    };
  }

  private split({ text, from }: { readonly text: string; readonly from: number }): Split | null {
    const range = { from, to: from + text.length };
    if (text.length > MOST_LINE) {
      this.tell('set-up-line-long', range, { length: text.length, most: MOST_LINE });
      return null;
    }
    const tokens = setUpTokens(text, from);
    const colon = tokens.findIndex((token) => token.is === 'sign' && token.text === ':');
    if (colon < 0) {
      const start = { from: tokens[0]?.from ?? from, to: tokens[0]?.from ?? from };
      const fixes = [{ label: 'Begin with packet:', range: start, text: 'packet: ' }];
      this.diagnostics.push(diagnostic('set-up-no-pile', range, {}, { fixes }));
      return null;
    }
    const name = nameIn(tokens.slice(0, colon));
    const nameRange = { from: tokens[0].from, to: tokens[colon].from };
    if (name === null) {
      this.tell('set-up-pile-name', nameRange);
      return null;
    }
    return { text, range, name, nameRange, tokens: tokens.slice(colon + 1) };
  }

  private words(): ReadonlyMap<string, KindWord> {
    const words = new Map(KIND_WORDS);
    const add = (word: string, attribute: string, value: string): void => {
      if (!words.has(word)) words.set(word, { tests: [{ attribute, value }], plural: false });
    };
    for (const { attribute, yesNo, entries } of this.attributes)
      if (yesNo) add(attribute, attribute, 'yes');
      else for (const { value } of entries) if (typeof value === 'string') add(value, attribute, value);
    return words;
  }

  private attribute(split: Split, shared: Shared): SetUpLine {
    const reader = new Reader(split.tokens, shared, split.range.to);
    const line = readAttributeLine(reader, split.name, split.nameRange, split.range);
    this.diagnostics.push(...reader.diagnostics);
    if (this.attributes.some(({ attribute }) => attribute === line.attribute))
      this.tell('set-up-attribute-twice', split.nameRange, { name: split.name });
    else if (this.attributes.length >= MOST_ATTRIBUTES)
      this.tell('set-up-many-attributes', split.nameRange, { most: MOST_ATTRIBUTES });
    else {
      this.attributes.push(line);
      if (!reader.failed) return line;
    }
    return unread(split.text, split.range.from);
  }

  private pile(split: Split, shared: Shared): SetUpLine {
    if (this.piles.length >= MOST_PILES) {
      this.tell('set-up-many-piles', split.nameRange, { most: MOST_PILES });
      return unread(split.text, split.range.from);
    }
    const reader = new Reader(split.tokens, shared, split.range.to);
    const line = readPileLine(reader, split.name, split.range);
    this.diagnostics.push(...reader.diagnostics);
    if (this.piles.some(({ pile }) => pile === split.name)) {
      this.tell('set-up-pile-twice', split.nameRange, { pile: split.name });
      return unread(split.text, split.range.from);
    }
    this.piles.push(line);
    return reader.failed ? unread(split.text, split.range.from) : line;
  }

  /** A list of nothing but cards: a pile, unless all of them lie in a pile already. */
  private either(split: Split, shared: Shared, named: Set<string>): SetUpLine {
    const draft = readAttributeLine(
      new Reader(split.tokens, shared, split.range.to),
      split.name,
      split.nameRange,
      split.range,
    );
    const keys = draft.entries.flatMap(({ target }) => targetKeys(target));
    if (keys.length > 0 && keys.every((key) => named.has(key))) {
      this.tell('set-up-taken-as-attribute', split.nameRange, { name: split.name }, 'reading');
      return this.attribute(split, shared);
    }
    for (const key of keys) named.add(key);
    return this.pile(split, shared);
  }

  private tell(
    code: string,
    range: Range,
    facts: Diagnostic['facts'] = {},
    severity: Diagnostic['severity'] = 'error',
  ): void {
    this.diagnostics.push(diagnostic(code, range, facts, { severity }));
  }
}

function unread(text: string, from: number): SetUpLine {
  return { is: 'unread', text: text.trim(), range: { from, to: from + text.length } };
}

/** `packet`, `pile 2`, `Anna's hand`: up to three words, as the sentences of the working write it. */
function nameIn(tokens: readonly SetUpToken[]): string | null {
  const words: string[] = [];
  tokens.forEach((token, i) => {
    if (token.text === '-' || (i === 0 && token.text === 'the')) return;
    const count = i > 0 && i === tokens.length - 1 ? countAt(tokens, i) : null;
    words.push(token.is !== 'word' ? '' : count === null ? token.text : String(count.n));
  });
  const isName =
    words.length > 0 && words.length <= 3 && words.every((word) => word !== '' && word.length <= 24);
  return isName && /^\p{L}/u.test(words[0]) ? words.join(' ') : null;
}
