import type { Budget } from '../base/budget.ts';
import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Claim } from '../claims/claim.ts';
import { CLAIMS } from '../claims/index.ts';
import type { Args, Names } from '../phrases/values.ts';
import type { Sentence } from '../routine/routine.ts';
import { inOneOrder } from './clause.ts';
import {
  closing,
  DENIALS,
  NOT_ALL,
  EXACTLY,
  insideBrackets,
  jointsIn,
  MOST_JOINTS,
  upToWhat,
} from './ending-words.ts';
import { blanksOfType, Lexicon } from './lexicon.ts';
import { MOST_WORDS } from './limits.ts';
import { placeOf, saysAt, wordsOf, type Line, type Span } from './line.ts';

export const CLAIM_LEXICON = new Lexicon<Claim>(CLAIMS);

/** A sentence of the ending, or the part of it that was not understood. */
export type EndingReading = Understood | { readonly sentence: null; readonly unread: Span };

interface Understood {
  readonly sentence: Sentence;
  readonly diagnostics: readonly Diagnostic[];
  /** Words that were only understood in form, such as a pile that is not there; what is wrong in meaning does not count. */
  readonly doubts: number;
}

const MOST_DEPTH = 12;
// Parts that one claim may be made of.
const MOST_JOINED = 4;

// Longer than `up to turning pile 2 over`.
const LONGEST_UP_TO = 12;

const WAYS = ['bracketed', 'chance', 'upTo', 'denied', 'exactly', 'conditional', 'either', 'both'] as const;

/** Reads sentences of the ending: whole claims first, then what joins them. */
export class EndingReader {
  private readonly names: Names;
  private readonly cards: readonly Card[];
  private readonly work: Budget;
  private line: Line | null = null;
  private readonly known = new Map<string, EndingReading>();

  constructor(names: Names, cards: readonly Card[], work: Budget) {
    this.names = names;
    this.cards = cards;
    this.work = work;
  }

  /** Each part is read once, however many ways lead to it. */
  read(line: Line, span: Span, depth = 0): EndingReading {
    if (this.line !== line) {
      this.line = line;
      this.known.clear();
    }
    const key = `${span.from}-${span.to}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const read = this.search(line, span, depth);
    this.known.set(key, read);
    return read;
  }

  private search(line: Line, span: Span, depth: number): EndingReading {
    const words = span.to - span.from;
    if (words <= 0 || words > MOST_WORDS || depth > MOST_DEPTH || !this.work.spend()) return unread(span);
    const whole = this.claim(line, span);
    if (whole !== null && isClean(whole)) return whole;
    const joined = this.joined(line, span, depth);
    if (joined !== null && (whole === null || isClean(joined))) return joined;
    return whole ?? unread(span);
  }

  /** The first way of joining that is understood, else the first that fails: its part is the trouble. */
  private joined(line: Line, span: Span, depth: number): EndingReading | null {
    let missed: EndingReading | null = null;
    for (const way of WAYS) {
      const read = this[way](line, span, depth);
      if (read !== null && read.sentence !== null) return read;
      missed ??= read;
    }
    return missed;
  }

  private claim(line: Line, span: Span): EndingReading | null {
    const found = CLAIM_LEXICON.find(wordsOf(line, span), this.names, this.work);
    if (found.length === 0) return null;
    const least = Math.min(...found.map(({ match }) => match.troubles.length));
    const [best, ...rivals] = found.filter(({ match }) => match.troubles.length === least);
    const range = placeOf(line, span);
    const claim = best.owner;
    const args = this.withDefaults(claim, best.match.args);
    const diagnostics = best.match.troubles.map((t) => diagnostic(t.trouble.code, t.range, t.trouble.facts));
    for (const { code, facts } of claim.check?.(args, this.cards) ?? [])
      diagnostics.push(diagnostic(code, range, facts));
    if (least === 0 && rivals.length > 0) {
      const facts = { moves: [claim, ...rivals.map(({ owner }) => owner)].map(({ title }) => title) };
      diagnostics.push(diagnostic('read-two-ways', range, facts));
    }
    return { sentence: { says: 'claim', claim: claim.id, args }, diagnostics, doubts: least };
  }

  /** With one pile on the table, that pile is meant where none is named. */
  private withDefaults(claim: Claim, said: Args): Args {
    const args: Record<string, Args[string]> = { ...claim.defaults, ...said };
    const { piles } = this.names;
    for (const name of blanksOfType(claim.phrases, 'pile')) {
      const pile = args[name];
      if (!(name in said) && typeof pile === 'string' && !piles.includes(pile) && piles.length === 1)
        args[name] = piles[0];
    }
    return inOneOrder(args);
  }

  /** `(... or ...)`, the way to say which joins first. */
  private bracketed(line: Line, span: Span, depth: number): EndingReading | null {
    if (!saysAt(line.tokens, span.from, ['(']) || closing(line, span) !== span.to - 1) return null;
    return this.read(line, { from: span.from + 1, to: span.to - 1 }, depth + 1);
  }

  /** A chance in the middle of a sentence; it can be asked of a whole one only, which is seen to before. */
  private chance(line: Line, span: Span, depth: number): EndingReading | null {
    const { tokens } = line;
    const at = tokens.findIndex(
      (_, k) =>
        k >= span.from &&
        k < span.to &&
        (saysAt(tokens, k, ['with', 'probability']) || saysAt(tokens, k, ['with', 'chance'])),
    );
    if (at < 0) return null;
    let rest: Span = { from: span.from, to: at };
    let end = span.to;
    if (at === span.from) {
      end = at + 2;
      while (end < span.to && !line.before[end].includes(',') && end - at < 9) end++;
      rest = { from: end, to: span.to };
    }
    const part = this.read(line, rest, depth + 1);
    if (part.sentence === null) return part;
    const range = placeOf(line, { from: at, to: end });
    return { ...part, diagnostics: [...part.diagnostics, diagnostic('chance-nested', range)] };
  }

  /** `Up to a cut, A` or `A, up to a cut`. */
  private upTo(line: Line, span: Span, depth: number): EndingReading | null {
    const { from, to } = span;
    for (let k = from + 1; k < Math.min(to, from + LONGEST_UP_TO); k++) {
      const read = this.weakened(line, { from, to: k }, { from: k, to }, depth);
      if (read !== null) return read;
    }
    for (let k = Math.max(from + 1, to - LONGEST_UP_TO); k < to; k++) {
      if (insideBrackets(line, span, k)) continue;
      const read = this.weakened(line, { from: k, to }, { from, to: k }, depth);
      if (read !== null) return read;
    }
    return null;
  }

  private weakened(line: Line, by: Span, rest: Span, depth: number): EndingReading | null {
    const found = saysAt(line.tokens, by.from, ['up', 'to']) ? upToWhat(wordsOf(line, by), this.names) : null;
    if (found === null) return null;
    const part = this.read(line, rest, depth + 1);
    if (part.sentence === null) return null;
    const troubles = found.troubles.map((t) => diagnostic(t.trouble.code, t.range, t.trouble.facts));
    return {
      sentence: { says: 'up to', by: found.by, pile: found.pile, part: part.sentence },
      diagnostics: [...part.diagnostics, ...troubles],
      doubts: part.doubts + troubles.length,
    };
  }

  private denied(line: Line, span: Span, depth: number): EndingReading | null {
    const words = DENIALS.find((one) => saysAt(line.tokens, span.from, one));
    const length = words?.length ?? (NOT_ALL.some((one) => saysAt(line.tokens, span.from, one)) ? 1 : 0);
    if (length === 0) return null;
    const part = this.read(line, { from: span.from + length, to: span.to }, depth + 1);
    return part.sentence === null ? part : { ...part, sentence: { says: 'not', part: part.sentence } };
  }

  private exactly(line: Line, span: Span, depth: number): EndingReading | null {
    for (const k of jointsIn(line, span, EXACTLY)) {
      const left = this.read(line, { from: span.from, to: k.at }, depth + 1);
      const right = this.read(line, { from: k.at + k.length, to: span.to }, depth + 1);
      if (left.sentence === null || right.sentence === null) continue;
      const sentence: Sentence = { says: 'exactly when', left: left.sentence, right: right.sentence };
      return { sentence, ...together([left, right]) };
    }
    return null;
  }

  /** `If A, then B`, `If A, B`, `B if A`. */
  private conditional(line: Line, span: Span, depth: number): EndingReading | null {
    const first = saysAt(line.tokens, span.from, ['if']);
    const ways: { when: Span; then: Span }[] = [];
    for (let k = span.from + 1; k < span.to; k++) {
      if (insideBrackets(line, span, k)) continue;
      if (first && saysAt(line.tokens, k, ['then']))
        ways.unshift({ when: { from: span.from + 1, to: k }, then: { from: k + 1, to: span.to } });
      else if (first && line.before[k].includes(','))
        ways.push({ when: { from: span.from + 1, to: k }, then: { from: k, to: span.to } });
      else if (!first && saysAt(line.tokens, k, ['if']))
        ways.push({ when: { from: k + 1, to: span.to }, then: { from: span.from, to: k } });
    }
    let missed: EndingReading | null = null;
    for (const way of ways.slice(0, MOST_JOINTS)) {
      const when = this.read(line, way.when, depth + 1);
      const then = this.read(line, way.then, depth + 1);
      if (when.sentence !== null && then.sentence !== null) {
        const sentence: Sentence = { says: 'if', when: when.sentence, then: then.sentence };
        return { sentence, ...together([when, then]) };
      }
      // With `if` at its head the sentence can be nothing else, so the part that fails is the trouble.
      if (first) missed ??= when.sentence === null ? when : then;
    }
    return missed;
  }

  private either(line: Line, span: Span, depth: number): EndingReading | null {
    return this.listed(line, span, depth, 'or');
  }

  private both(line: Line, span: Span, depth: number): EndingReading | null {
    return this.listed(line, span, depth, 'and');
  }

  /** Parts joined by one word; as many of them as make one claim are taken together. */
  private listed(line: Line, span: Span, depth: number, says: 'and' | 'or'): EndingReading | null {
    const word = says === 'or' ? 'either' : 'both';
    const from = saysAt(line.tokens, span.from, [word]) ? span.from + 1 : span.from;
    const joints = jointsIn(line, { from, to: span.to }, says === 'and' ? [['and'], ['but']] : [['or']]);
    if (joints.length === 0) return null;
    const parts: Span[] = [];
    let start = from;
    for (const { at, length } of [...joints, { at: span.to, length: 0 }]) {
      parts.push({ from: start, to: at });
      start = at + length;
    }
    const read = this.parts(line, parts, 0, depth, new Set());
    if (Array.isArray(read)) {
      return { sentence: { says, parts: read.map(({ sentence }) => sentence) }, ...together(read) };
    }
    return read;
  }

  /**
   * The parts from the `i`th on, or where they fail; null where already the first does, for then the sentence as a whole is the
   * trouble. `failed` remembers from where on the rest cannot be read.
   */
  private parts(
    line: Line,
    parts: readonly Span[],
    i: number,
    depth: number,
    failed: Set<number>,
  ): Understood[] | EndingReading | null {
    if (i === parts.length) return [];
    if (failed.has(i)) return null;
    let missed: EndingReading | null = null;
    for (let width = Math.min(MOST_JOINED, parts.length - i, parts.length - 1); width > 0; width--) {
      const one = this.part(line, parts, i, width, depth);
      if (one.sentence === null) {
        if (width === 1 && i > 0) missed ??= one;
        continue;
      }
      const rest = this.parts(line, parts, i + width, depth, failed);
      if (Array.isArray(rest)) return [one, ...rest];
      missed ??= rest;
    }
    failed.add(i);
    return missed;
  }

  private part(line: Line, parts: readonly Span[], i: number, width: number, depth: number): EndingReading {
    const span = { from: parts[i].from, to: parts[i + width - 1].to };
    if (width === 1) return this.read(line, span, depth + 1);
    const claim = this.claim(line, span);
    return claim !== null && isClean(claim) ? claim : unread(span);
  }
}

function together(parts: readonly Understood[]): Pick<Understood, 'diagnostics' | 'doubts'> {
  return {
    diagnostics: parts.flatMap((one) => one.diagnostics),
    doubts: parts.reduce((sum, one) => sum + one.doubts, 0),
  };
}

function unread(span: Span): EndingReading {
  return { sentence: null, unread: span };
}

function isClean(reading: EndingReading): boolean {
  return reading.sentence !== null && reading.doubts === 0;
}
