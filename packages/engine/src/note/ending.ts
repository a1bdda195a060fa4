import type { Budget } from '../base/budget.ts';
import { diagnostic, type Diagnostic, type Range } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Claim } from '../claims/claim.ts';
import { CLAIMS } from '../claims/index.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { matchPhrase, phrase } from '../phrases/phrase.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Args, Names } from '../phrases/values.ts';
import type { Sentence } from '../routine/routine.ts';
import { blanksOfType, Lexicon } from './lexicon.ts';
import { placeOf, saysAt, wordsOf, type Line, type Span } from './line.ts';

export const CLAIM_LEXICON = new Lexicon<Claim>(CLAIMS);

/** A sentence of the ending, or the part of it that was not understood. */
export type EndingReading =
  | { readonly sentence: Sentence; readonly diagnostics: readonly Diagnostic[] }
  | { readonly sentence: null; readonly unread: Span };

// Joints a person can still follow; more are not read, so that no sentence takes long.
const MOST_JOINTS = 12;
const MOST_DEPTH = 12;

const UP_TO = [
  {
    by: 'cut' as const,
    phrases: [phrase('up to a cut [of {pile:pile}]'), phrase('up to cutting [{pile:pile}]')],
  },
  {
    by: 'turn' as const,
    phrases: [
      phrase('up to turning {pile:pile} over'),
      phrase('up to turning over {pile:pile}'),
      phrase('up to turning it over'),
      phrase('up to a turn [of {pile:pile}]'),
    ],
  },
];

const EXACTLY = ['exactly when', 'if and only if', 'just when', 'precisely when'].map((words) =>
  words.split(' '),
);
const DENIALS = ['it is not true that', 'it is not case that', 'it is false that'].map((words) =>
  words.split(' '),
);

/** Reads sentences of the ending: whole claims first, then what joins them. */
export class EndingReader {
  private readonly names: Names;
  private readonly cards: readonly Card[];
  private readonly work: Budget;

  constructor(names: Names, cards: readonly Card[], work: Budget) {
    this.names = names;
    this.cards = cards;
    this.work = work;
  }

  read(line: Line, span: Span, depth = 0): EndingReading {
    if (span.from >= span.to || depth > MOST_DEPTH) return unread(span);
    const whole = this.claim(line, span);
    if (whole !== null && isClean(whole)) return whole;
    const joined =
      this.bracketed(line, span, depth) ??
      this.chance(line, span, depth) ??
      this.upTo(line, span, depth) ??
      this.denied(line, span, depth) ??
      this.exactly(line, span, depth) ??
      this.conditional(line, span, depth) ??
      this.listed(line, span, depth, 'or') ??
      this.listed(line, span, depth, 'and');
    if (joined !== null && (whole === null || isClean(joined))) return joined;
    return whole ?? unread(span);
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
    return { sentence: { says: 'claim', claim: claim.id, args }, diagnostics };
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
    return args;
  }

  /** `(... or ...)`, the way to say which joins first. */
  private bracketed(line: Line, span: Span, depth: number): EndingReading | null {
    if (!saysAt(line.tokens, span.from, ['(']) || closing(line, span) !== span.to - 1) return null;
    return this.read(line, { from: span.from + 1, to: span.to - 1 }, depth + 1);
  }

  /** `With probability at least 0.8, ...`: read to the end, but nothing here decides it. */
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
    return { ...part, diagnostics: [...part.diagnostics, diagnostic('chance-not-decided', range)] };
  }

  private upTo(line: Line, span: Span, depth: number): EndingReading | null {
    const { tokens } = line;
    for (let k = span.from; k < span.to - 2; k++) {
      if (!saysAt(tokens, k, ['up', 'to']) || insideBrackets(line, span, k)) continue;
      const ends = k === span.from ? [...Array(span.to - k).keys()].map((i) => k + i + 1) : [span.to];
      for (const end of ends) {
        const found = this.upToWhat(wordsOf(line, { from: k, to: end }));
        if (found === null) continue;
        const part = this.read(
          line,
          k === span.from ? { from: end, to: span.to } : { from: span.from, to: k },
          depth + 1,
        );
        if (part.sentence === null) continue;
        const { by, pile, troubles } = found;
        const diagnostics = troubles.map((t) => diagnostic(t.trouble.code, t.range, t.trouble.facts));
        const sentence: Sentence = { says: 'up to', by, pile, part: part.sentence };
        return { sentence, diagnostics: [...part.diagnostics, ...diagnostics] };
      }
    }
    return null;
  }

  private upToWhat(
    tokens: readonly Token[],
  ): { by: 'cut' | 'turn'; pile: string; troubles: Troubles } | null {
    const usual =
      this.names.piles.includes('packet') || this.names.piles.length !== 1 ? 'packet' : this.names.piles[0];
    for (const { by, phrases } of UP_TO)
      for (const one of phrases) {
        const match = matchPhrase(one, tokens, this.names, BLANKS);
        const pile = match?.args.pile ?? usual;
        if (match !== null && typeof pile === 'string') return { by, pile, troubles: match.troubles };
      }
    return null;
  }

  private denied(line: Line, span: Span, depth: number): EndingReading | null {
    const words = DENIALS.find((one) => saysAt(line.tokens, span.from, one));
    if (words === undefined) return null;
    const part = this.read(line, { from: span.from + words.length, to: span.to }, depth + 1);
    return part.sentence === null ? part : { ...part, sentence: { says: 'not', part: part.sentence } };
  }

  private exactly(line: Line, span: Span, depth: number): EndingReading | null {
    for (const k of this.joints(line, span, EXACTLY)) {
      const left = this.read(line, { from: span.from, to: k.at }, depth + 1);
      const right = this.read(line, { from: k.at + k.length, to: span.to }, depth + 1);
      if (left.sentence === null || right.sentence === null) continue;
      const sentence: Sentence = { says: 'exactly when', left: left.sentence, right: right.sentence };
      return { sentence, diagnostics: [...left.diagnostics, ...right.diagnostics] };
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
        return { sentence, diagnostics: [...when.diagnostics, ...then.diagnostics] };
      }
      // With `if` at its head the sentence can be nothing else, so the part that fails is the trouble.
      if (first) missed ??= when.sentence === null ? when : then;
    }
    return missed;
  }

  /** Parts joined by one word; as many of them as make one claim are taken together. */
  private listed(line: Line, span: Span, depth: number, says: 'and' | 'or'): EndingReading | null {
    const word = says === 'or' ? 'either' : 'both';
    const from = saysAt(line.tokens, span.from, [word]) ? span.from + 1 : span.from;
    const joints = this.joints(line, { from, to: span.to }, says === 'and' ? [['and'], ['but']] : [['or']]);
    if (joints.length === 0) return null;
    const parts: Span[] = [];
    let start = from;
    for (const { at, length } of [...joints, { at: span.to, length: 0 }]) {
      parts.push({ from: start, to: at });
      start = at + length;
    }
    const sentences: Sentence[] = [];
    const diagnostics: Diagnostic[] = [];
    for (let i = 0; i < parts.length;) {
      let width = Math.min(3, parts.length - i, parts.length - 1);
      let one = this.part(line, parts, i, width, depth);
      while (width > 1 && one.sentence === null) one = this.part(line, parts, i, --width, depth);
      // Where nothing joined is understood, the sentence as a whole is the trouble.
      if (one.sentence === null) return i === 0 ? null : one;
      sentences.push(one.sentence);
      diagnostics.push(...one.diagnostics);
      i += width;
    }
    return { sentence: { says, parts: sentences }, diagnostics };
  }

  private part(line: Line, parts: readonly Span[], i: number, width: number, depth: number): EndingReading {
    const span = { from: parts[i].from, to: parts[i + width - 1].to };
    if (width === 1) return this.read(line, span, depth + 1);
    const claim = this.claim(line, span);
    return claim !== null && isClean(claim) ? claim : unread(span);
  }

  private joints(
    line: Line,
    span: Span,
    words: readonly (readonly string[])[],
  ): { at: number; length: number }[] {
    const found: { at: number; length: number }[] = [];
    let open = 0;
    for (let k = span.from; k < span.to; k++) {
      if (saysAt(line.tokens, k, ['('])) open++;
      else if (saysAt(line.tokens, k, [')'])) open--;
      const one = open === 0 && k > span.from ? words.find((w) => saysAt(line.tokens, k, w)) : undefined;
      if (one !== undefined && k + one.length < span.to) found.push({ at: k, length: one.length });
    }
    return found.length > MOST_JOINTS ? [] : found;
  }
}

type Troubles = readonly {
  readonly trouble: { readonly code: string; readonly facts: Diagnostic['facts'] };
  readonly range: Range;
}[];

function unread(span: Span): EndingReading {
  return { sentence: null, unread: span };
}

function isClean(reading: EndingReading): boolean {
  return reading.sentence !== null && reading.diagnostics.length === 0;
}

/** The bracket that closes the one at the start of the span. */
function closing(line: Line, span: Span): number {
  let open = 0;
  for (let k = span.from; k < span.to; k++) {
    if (saysAt(line.tokens, k, ['('])) open++;
    else if (saysAt(line.tokens, k, [')']) && --open === 0) return k;
  }
  return -1;
}

function insideBrackets(line: Line, span: Span, at: number): boolean {
  let open = 0;
  for (let k = span.from; k < at; k++) {
    if (saysAt(line.tokens, k, ['('])) open++;
    else if (saysAt(line.tokens, k, [')'])) open--;
  }
  return open > 0;
}
