import { readCard } from './setup-cards.ts';
import { printKind, readKind, testWord } from './setup-kinds.ts';
import { mated } from './setup-mates.ts';
import { eatAlternately, readAlternating, withBase } from './setup-patterns.ts';
import type { Reader } from './setup-reader.ts';
import { readOrder, sizeOf } from './setup-sets.ts';
import { readFacingBefore } from './setup-settings.ts';
import type { CardRef, RunReading, Test, What } from './setup-syntax.ts';

/** Everything that begins with a number, or with `a`. */
export function readCounted(r: Reader, start: number, the: boolean): RunReading | null | 'nothing' {
  const first = r.eat('first');
  const any = r.eat('any');
  r.eat('exactly');
  const isArticle = /^an?$/.test(r.word()) && !/^(of|-|to)$/.test(r.word(1));
  const isOne = isArticle || (any && r.word() === 'one');
  if (isOne) r.at++;
  const n = isOne ? 1 : r.eatCount();
  if (n === null) {
    if (!any) {
      r.at = start + (the ? 1 : 0);
      return 'nothing';
    }
    // `any card` is one card.
    if (!r.shared.words.has(r.word())) {
      r.blame('set-up-any');
      return null;
    }
  }
  const count = n ?? 1;
  const bare = isOne && !r.shared.words.has(r.word());
  const facing = readFacingBefore(r);
  const before = r.at;
  const ref = readCopies(r);
  if (ref !== null) return { what: { is: 'copies', n: count, ref }, facing, mixed: false };
  r.at = before;
  const kind = readKind(r);
  const tests = kind?.tests ?? [];
  if (r.eat('in') || r.eat('of')) {
    const named = kind === null || tests.length === 0 ? readOrder(r, count) : null;
    if (named !== null) return { what: named, facing, mixed: false };
    r.at--;
  }
  if (first || (bare && kind === null)) {
    r.blame();
    return null;
  }
  const what = readPatterned(r, start, count, kind === null, tests);
  if (what !== 'nothing') return what === null ? null : { what, facing, mixed: false };
  if (kind === null) {
    r.blame('set-up-count-of-what', { count });
    return null;
  }
  if (n === null && kind.plural) {
    r.tell('set-up-kind-count', r.rangeFrom(start), { kind: printKind(tests, 'many') });
    return null;
  }
  if (the && tests.length > 0 && sizeOf(tests) === count)
    return { what: { is: 'set', tests }, facing, mixed: false };
  const plain: What = { is: 'count', n: count, any, tests };
  const each = readEach(r, plain);
  const final = each === undefined ? mated(r, plain) : each;
  return final === null ? null : { what: final, facing, mixed: false };
}

function readCopies(r: Reader): CardRef | null {
  const ref = readCard(r);
  if (ref !== null) {
    if (ref.is === 'pip') return null;
    if (!r.eat('cards')) r.eat('card');
    return ref;
  }
  const coloured = r.word() === 'red' || r.word() === 'black' ? 1 : 0;
  if (r.word(coloured) !== 'jokers') return null;
  const colour = coloured === 0 ? null : (r.word() as 'red' | 'black');
  r.at += coloured + 1;
  return { is: 'joker', colour };
}

/** `alternately red and black` after a number of cards, with or without a comma. */
function readPatterned(
  r: Reader,
  start: number,
  n: number,
  bare: boolean,
  base: readonly Test[],
): What | null | 'nothing' {
  const before = r.at;
  r.eat(',');
  if (!eatAlternately(r)) {
    r.at = before;
    return 'nothing';
  }
  const members = readAlternating(r);
  if (members === null) return null;
  if (withBase(members, base) === null) {
    r.tell('set-up-kinds-clash', r.rangeFrom(start), { kind: printKind(base, 'many') });
    return null;
  }
  const after = r.at;
  if (r.eat(',')) {
    const again = r.eatCount();
    const isTotal = again !== null && (r.eat('in', 'all') || (bare && r.eat('cards')));
    if (!isTotal) r.at = after;
    else if (again !== n) r.tell('set-up-counts-disagree', r.rangeFrom(start), { first: n, second: again });
  }
  return { is: 'pattern', style: 'alternately', n, tests: base, elements: members };
}

/** `, each red or black`. Undefined when nothing of the kind stands here. */
function readEach(r: Reader, plain: Extract<What, { is: 'count' }>): What | null | undefined {
  const before = r.at;
  r.eat(',');
  if (
    !r.eat('each') ||
    r.word() === 'face' ||
    r.word() === 'either' ||
    r.word() === 'followed' ||
    r.word() === 'beside'
  ) {
    r.at = before;
    return undefined;
  }
  r.eat('of', 'them');
  const choices: Test[] = [];
  const start = r.at;
  do {
    if (!r.eat('a')) r.eat('an');
    const kind = readKind(r);
    if (kind === null) {
      r.blame('set-up-each');
      return null;
    }
    if (kind.tests.length !== 1 || (choices.length > 0 && kind.tests[0].attribute !== choices[0].attribute)) {
      r.tell('set-up-each-one', r.rangeFrom(start), { choices: [...choices, ...kind.tests].map(testWord) });
      return null;
    }
    choices.push(...kind.tests);
  } while (r.eat('or') || (r.word() === ',' && r.word(2) === 'or' && r.eat(',')));
  if (choices.length < 2) {
    r.blame('set-up-each');
    return null;
  }
  const { attribute } = choices[0];
  if (plain.tests.some((test) => test.attribute === attribute)) {
    r.tell('set-up-kinds-clash', r.rangeFrom(before), { kind: printKind(plain.tests, 'many') });
    return null;
  }
  const values = [...new Set(choices.map(({ value }) => value))];
  return { is: 'each', n: plain.n, any: plain.any, tests: plain.tests, attribute, values };
}
