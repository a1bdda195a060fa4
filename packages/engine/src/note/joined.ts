import { diagnostic } from '../base/diagnostic.ts';
import type { Chooser } from '../routine/routine.ts';
import { printHead, readHead, type HeadReading } from './blocks.ts';
import type { ClauseReader, Context } from './clause.ts';
import { chooserOf, clauseOutcome, unreadOutcome } from './clause-outcome.ts';
import { branched, enclosed, innerContext } from './enclose.ts';
import { MOST_NESTING } from './limits.ts';
import { placeOf, saysAt, splitAt, wordsOf, type Line, type Span } from './line.ts';
import { followed, isClean, nothing, withTrouble, type Outcome } from './outcome.ts';
import type { Open, Paragraph } from './paragraph.ts';
import { printRepeated } from './print-clause.ts';
import { beginsOtherwise, between, colonIn, greedy, isNothing, pieceOtherwise } from './split.ts';

/** Which ways of joining are still allowed inside; each is used once, so that reading stays quick whatever is written. */
interface Joins {
  readonly or: boolean;
  readonly then: boolean;
}

const ALL_JOINS: Joins = { or: true, then: true };
// Longer than any "as often as the spectator likes".
const LONGEST_TIMES = 8;
// Longer than any head of a block.
const LONGEST_HEAD = 16;

/** Reads the sentences of a paragraph: joined, repeated, alternatives, and blocks on one line. */
export class SentenceReader {
  readonly clauses: ClauseReader;

  constructor(clauses: ClauseReader) {
    this.clauses = clauses;
  }

  /** All sentences of one paragraph. `depth` counts the blocks around it. */
  paragraph(line: Line, context: Context, depth: number): Paragraph {
    let outcome = nothing(context);
    let open: Open | null = null;
    for (const span of splitAt(line, { from: 0, to: line.tokens.length }, '.')) {
      if (open !== null) outcome = withTrouble(outcome, 'block-without-steps', open.range);
      const before = beginsOtherwise(line.tokens, span.from)
        ? (outcome.fork?.before ?? outcome.context)
        : outcome.context;
      const part = this.sentence(line, span, before, depth);
      outcome = followed(outcome, part.outcome);
      open = part.open;
    }
    return { outcome, open };
  }

  /** Pieces joined by `;`; one of them may be a block, whose body is the rest of the sentence. */
  private sentence(line: Line, span: Span, context: Context, depth: number): Paragraph {
    let outcome = nothing(context);
    for (const piece of splitAt(line, span, ';')) {
      const colon = colonIn(line, piece);
      const headSpan = { from: piece.from, to: colon ?? piece.to };
      const whole =
        colon === null || colon < piece.to
          ? this.chained(line, piece, outcome.context, 'spectator', depth, ALL_JOINS)
          : null;
      const last = piece.to === span.to;
      if (whole !== null && (isClean(whole) || (colon === null && !last))) {
        outcome = followed(outcome, whole);
        continue;
      }
      const head = readHead(wordsOf(line, headSpan), outcome.context.names, this.clauses.work);
      if (head !== null)
        return this.block(line, head, headSpan, { from: headSpan.to, to: span.to }, outcome, depth);
      if (colon !== null)
        return this.unknownBlock(line, headSpan, { from: colon, to: span.to }, outcome, depth);
      outcome = followed(outcome, whole ?? nothing(outcome.context));
    }
    return { outcome, open: null };
  }

  /** A block; its steps stand on the same line or, where `body` is empty, below it. */
  private block(
    line: Line,
    reading: HeadReading,
    headSpan: Span,
    body: Span,
    before: Outcome,
    depth: number,
  ): Paragraph {
    const { head } = reading;
    const range = placeOf(line, headSpan);
    if (depth >= MOST_NESTING)
      return { outcome: withTrouble(before, 'too-deep', range, { most: MOST_NESTING }), open: null };
    const missing = line.before[headSpan.to].includes(':') || body.from < body.to ? '' : ':';
    const headed: Outcome = {
      ...before,
      diagnostics: [
        ...before.diagnostics,
        ...reading.troubles.map(({ code, facts }) => diagnostic(code, range, facts)),
      ],
      prints: [...before.prints, { range, say: () => printHead(head) + missing }],
    };
    const inner = innerContext(head, before.context);
    const wrap = (bodies: readonly Outcome[]): Outcome =>
      head.is === 'either'
        ? branched(head.who, range, bodies, before.context)
        : enclosed(head, range, bodies.reduce(followed, nothing(inner)), before.context);
    if (body.from === body.to) return { outcome: headed, open: { head, range, inner, close: wrap } };
    if (head.is === 'either') {
      const ways = this.branches(line, body, inner, head.who, depth + 1);
      const step = branched(head.who, range, ways.branches, before.context);
      const outcome = followed(
        headed,
        ways.branches.length > 1 ? step : withTrouble(step, 'one-branch', range),
      );
      return { outcome, open: null };
    }
    const otherwise = head.is === 'if' ? pieceOtherwise(line, body) : null;
    const then = this.sentence(line, { from: body.from, to: otherwise ?? body.to }, inner, depth + 1);
    if (then.open !== null && otherwise === null) {
      const { open } = then;
      const close = (bodies: readonly Outcome[]): Outcome => wrap([then.outcome, open.close(bodies)]);
      return { outcome: headed, open: { ...open, close } };
    }
    const closed =
      then.open === null ? then.outcome : withTrouble(then.outcome, 'block-without-steps', then.open.range);
    const outcome = followed(headed, wrap([closed]));
    if (otherwise === null) return { outcome, open: null };
    const rest = this.sentence(line, { from: otherwise, to: body.to }, before.context, depth);
    return { outcome: followed(outcome, rest.outcome), open: rest.open };
  }

  /** The steps of a block that is not understood are read all the same, for what is wrong in them. */
  private unknownBlock(line: Line, headSpan: Span, body: Span, before: Outcome, depth: number): Paragraph {
    const unread = { of: 'block' as const, line, span: headSpan, context: before.context };
    const outcome = { ...before, unread: [...before.unread, unread] };
    const range = placeOf(line, headSpan);
    const { context } = before;
    if (body.from === body.to || depth >= MOST_NESTING) {
      const close = (bodies: readonly Outcome[]): Outcome => bodies.reduce(followed, nothing(context));
      return { outcome, open: { head: null, range, inner: context, close } };
    }
    const rest = this.sentence(line, body, context, depth + 1);
    return { outcome: followed(outcome, rest.outcome), open: rest.open };
  }

  /** One piece: a move, a move repeated, alternatives, or several joined by `then` or `and`. */
  private chained(
    line: Line,
    span: Span,
    context: Context,
    who: Chooser,
    depth: number,
    joins: Joins,
  ): Outcome {
    const words = wordsOf(line, span);
    if (words.length === 0 || isNothing(words) || this.clauses.work.stopped) return nothing(context);
    const range = placeOf(line, span);
    const clause = this.clauses.read(words, context, who);
    const whole = clause === null ? null : clauseOutcome(clause, range, context, who);
    if (whole !== null && isClean(whole)) return whole;
    const other =
      this.headed(line, span, context, depth) ??
      this.repeated(line, span, context, who) ??
      (joins.or ? this.either(line, span, context, who, depth) : null) ??
      (joins.then ? this.thenSplit(line, span, context, who, depth, joins) : null) ??
      this.andSplit(line, span, context, who) ??
      (joins.or ? this.alternatives(line, span, context, who, depth) : null);
    if (other !== null && (whole === null || isClean(other))) return other;
    return whole ?? unreadOutcome(line, span, context);
  }

  /** `If N is even, cut the packet. Otherwise turn it over.`: a block with a comma, or `then`, or nothing, for its colon. */
  private headed(line: Line, span: Span, context: Context, depth: number): Outcome | null {
    const otherwise = beginsOtherwise(line.tokens, span.from);
    for (let k = span.from + 1; k < Math.min(span.to, span.from + LONGEST_HEAD); k++) {
      const then = saysAt(line.tokens, k, ['then']);
      const bare = (otherwise && k === span.from + 1) || (then && saysAt(line.tokens, span.from, ['if']));
      if (!line.before[k].includes(',') && !bare) continue;
      const headSpan = { from: span.from, to: k };
      const head = readHead(wordsOf(line, headSpan), context.names, this.clauses.work);
      const body = { from: then ? k + 1 : k, to: span.to };
      if (head === null || body.from === body.to) continue;
      return this.block(line, head, headSpan, body, nothing(context), depth).outcome;
    }
    return null;
  }

  /** `Cut the packet any number of times`. */
  private repeated(line: Line, span: Span, context: Context, who: Chooser): Outcome | null {
    let troubled: Outcome | null = null;
    for (let k = Math.max(span.from + 1, span.to - LONGEST_TIMES); k < span.to; k++) {
      const tail = { from: k, to: span.to };
      const reading = readHead(wordsOf(line, tail), context.names, this.clauses.work);
      if (reading?.head.is !== 'repeat') continue;
      const clause = this.clauses.read(wordsOf(line, { from: span.from, to: k }), context, who);
      if (clause === null) continue;
      const range = placeOf(line, span);
      const one = clauseOutcome(clause, range, context, who);
      const { times } = reading.head;
      const chooser = times.of === 'exactly' ? 'spectator' : clause.who;
      const once = times.of === 'exactly' && times.n === 1;
      const whole = once ? one : enclosed({ is: 'repeat', times, who: chooser }, range, one, context);
      const place = placeOf(line, tail);
      const troubles = reading.troubles.map((t) => diagnostic(t.code, place, t.facts));
      const say = (): string | null => printRepeated(clause, times, who);
      const outcome = {
        ...whole,
        diagnostics: [...whole.diagnostics, ...troubles],
        prints: [{ range, say }],
      };
      if (isClean(outcome)) return outcome;
      troubled ??= outcome;
    }
    return troubled;
  }

  /** `Either cut the packet or turn it over`, also `You either ...`. */
  private either(line: Line, span: Span, context: Context, who: Chooser, depth: number): Outcome | null {
    const you = saysAt(line.tokens, span.from, ['you']);
    const they = saysAt(line.tokens, span.from, ['they']) || saysAt(line.tokens, span.from, ['spectator']);
    const at = you || they ? span.from + 1 : span.from;
    if (at >= span.to || !saysAt(line.tokens, at, ['either'])) return null;
    const chooser = you ? 'performer' : they ? 'spectator' : who;
    const range = placeOf(line, { from: span.from, to: at + 1 });
    const { branches } = this.branches(line, { from: at + 1, to: span.to }, context, chooser, depth);
    const step = branched(chooser, range, branches, context);
    return branches.length > 1 ? step : withTrouble(step, 'one-branch', range);
  }

  /** Alternatives without `either`, only where every one of them is understood. */
  private alternatives(
    line: Line,
    span: Span,
    context: Context,
    who: Chooser,
    depth: number,
  ): Outcome | null {
    const { branches, who: chooser } = this.branches(line, span, context, who, depth);
    if (branches.length < 2 || !branches.every(isClean)) return null;
    return branched(chooser, placeOf(line, span), branches, context);
  }

  /** The parts between `or`s. Who does the first does the others, unless they say. */
  private branches(
    line: Line,
    span: Span,
    context: Context,
    who: Chooser,
    depth: number,
  ): { branches: readonly Outcome[]; who: Chooser } {
    const branches: Outcome[] = [];
    const parts = between(line, span, 'or');
    let carried = who;
    let it = context.it;
    const read = (part: Span): Outcome => {
      // What the first branch spoke of is what `it` means in the next.
      const from: Context = { names: context.names, it };
      const words = wordsOf(line, part);
      if (words.length === 1 && saysAt(words, 0, ['not'])) return nothing(from);
      return this.chained(line, part, from, carried, depth, { or: false, then: true });
    };
    greedy(parts, read, isClean, (branch) => {
      branches.push(branch);
      carried = chooserOf(branch.steps[0]) ?? carried;
      it = branch.context.it ?? it;
      return true;
    });
    return { branches, who: carried };
  }

  private thenSplit(
    line: Line,
    span: Span,
    context: Context,
    who: Chooser,
    depth: number,
    joins: Joins,
  ): Outcome | null {
    const parts = between(line, span, 'then');
    if (parts.length < 2) return null;
    let outcome = nothing(context);
    let carried = who;
    const read = (part: Span): Outcome =>
      this.chained(line, part, outcome.context, carried, depth, { ...joins, then: false });
    greedy(parts, read, isClean, (one) => {
      carried = chooserOf(one.steps.at(-1)) ?? carried;
      outcome = followed(outcome, one);
      return true;
    });
    return outcome;
  }

  /** Moves joined by `and`, only where every one of them is understood. */
  private andSplit(line: Line, span: Span, context: Context, who: Chooser): Outcome | null {
    const parts = between(line, span, 'and');
    if (parts.length < 2) return null;
    let outcome = nothing(context);
    let carried = who;
    const read = (part: Span): Outcome => {
      const clause = this.clauses.read(wordsOf(line, part), outcome.context, carried);
      if (clause === null) return unreadOutcome(line, part, outcome.context);
      return clauseOutcome(clause, placeOf(line, part), outcome.context, carried);
    };
    const done = greedy(parts, read, isClean, (one) => {
      carried = chooserOf(one.steps.at(-1)) ?? carried;
      outcome = followed(outcome, one);
      return isClean(one);
    });
    return done ? outcome : null;
  }
}
