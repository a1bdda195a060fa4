import { readCard } from './setup-cards.ts';
import { readKind, sorted } from './setup-kinds.ts';
import type { Reader } from './setup-reader.ts';
import { readFacingAfter } from './setup-settings.ts';
import type { Element, Test, What } from './setup-syntax.ts';

type Pattern = Extract<What, { readonly is: 'pattern' }>;

// Tokens that are looked through for the `and` of a list.
const MOST_AHEAD = 20;
const IN_TURN = [['repeated'], ['over', 'and', 'over'], ['in', 'turn'], ['in', 'rotation']];
const ALTERNATELY = [['alternately'], ['alternating']];

/** `alternately`, where it speaks of kinds and not of faces. */
export function eatAlternately(r: Reader): boolean {
  return r.word(1) !== 'face' && r.eatAny(ALTERNATELY);
}

/** Whether words follow that make the cards before them a pattern. */
export function goesInTurn(r: Reader): boolean {
  const start = r.at;
  const found = r.eatAny(IN_TURN) || eatAlternately(r);
  r.at = start;
  return found;
}

/** `red and black` after `alternately`: at least two members; how the last lies is not its own when no other lies so. */
export function readAlternating(r: Reader): Element[] | null {
  const elements: Element[] = [];
  let isClosed = false;
  for (;;) {
    const element = readElement(r);
    if (element === null) break;
    const before = r.at;
    const facing = readFacingAfter(r);
    const isLast = !goesOn(r, isClosed);
    const isOfAll = isLast && elements.every((e) => e.facing === null);
    if (isOfAll) r.at = before;
    elements.push({ ...element, facing: isOfAll ? null : facing });
    if (isLast) break;
    if (r.eat('and')) isClosed = true;
    else r.eat(',');
  }
  if (elements.length >= 2) return elements;
  r.blame('set-up-alternately');
  return null;
}

// Commas lead to a member only in a list that an `and` will close; after that they go on to another run.
function goesOn(r: Reader, isClosed: boolean): boolean {
  if (r.word() === 'and') return isElement(r, 1);
  if (r.word() !== ',' || isClosed || !isElement(r, 1)) return false;
  for (let k = 1; k < MOST_AHEAD; k++) {
    const word = r.word(k);
    if (word === 'and') return true;
    if (word === 'then' || word === ';' || word === 'in' || /^\d/.test(word)) return false;
  }
  return false;
}

function isElement(r: Reader, k: number): boolean {
  const start = r.at;
  r.at += k;
  const found = readElement(r) !== null;
  r.at = start;
  return found;
}

function readElement(r: Reader): Element | null {
  const start = r.at;
  r.eat('a');
  r.eat('an');
  const ref = readCard(r);
  if (ref !== null) return { tests: [], ref, facing: null };
  const kind = readKind(r);
  if (kind !== null) return { tests: kind.tests, ref: null, facing: null };
  r.at = start;
  return null;
}

/**
 * `clubs hearts spades diamonds repeated, 52 cards`, or `red black black` once. The members have been read up to the
 * word that says how they go on. A count may have been given before them: `52 cards, red black repeated`.
 */
export function readRepeated(r: Reader, start: number): Pattern | null {
  const elements = readMembers(r);
  const end = r.at;
  const plain = (elements: readonly Element[]): Pattern => ({
    is: 'pattern',
    style: 'once',
    n: elements.length,
    tests: [],
    elements,
  });
  const style = r.eatAny(IN_TURN) ? 'repeated' : eatAlternately(r) ? 'alternately' : 'once';
  if (style !== 'once') {
    const n = readTotal(r, elements.length);
    if (n !== null) return { ...plain(elements), style, n };
    const facts = { length: elements.length };
    const range = r.rangeFrom(start);
    const text = `, ${elements.length} cards`;
    r.tell('set-up-pattern-count', range, facts, {
      fixes: [{ label: `Add ${text.slice(2)}`, range: { from: range.to, to: range.to }, text }],
    });
    return null;
  }
  const times = timesHere(r);
  if (times !== null) return { ...plain(elements), style: 'repeated', n: times * elements.length };
  // In a row that stands once, words after the last card alone are said of the whole row.
  const last = elements.length - 1;
  if (elements.every(({ facing }, k) => (k === last) === (facing !== null))) {
    r.at = end - 2 - (r.word(-2) === '-' ? 1 : 0);
    return plain(elements.map((element) => ({ ...element, facing: null })));
  }
  return plain(elements);
}

/** Members in a row, or all of them with a comma or `and` between; a comma after a row goes on to another run. */
function readMembers(r: Reader): Element[] {
  const elements: Element[] = [];
  let isList = false;
  for (;;) {
    const element = readElement(r);
    const facing = readFacingAfter(r);
    if (element === null && facing === null) return elements;
    elements.push({ ...(element ?? { tests: [], ref: null }), facing });
    const isSeparated = (r.word() === ',' || r.word() === 'and') && isMember(r, 1);
    if (elements.length === 1) isList = isSeparated;
    else if (isSeparated !== isList) return elements;
    if (isSeparated) r.at++;
  }
}

function isMember(r: Reader, k: number): boolean {
  return r.span(['face', 'up'], k) + r.span(['face', 'down'], k) === 0 && isElement(r, k);
}

/** `, 52 cards`, `, 52 in all`, `13 times`. */
function readTotal(r: Reader, length: number): number | null {
  const times = timesHere(r);
  if (times !== null) return times * length;
  const start = r.at;
  r.eat(',');
  r.eat('to');
  const n = r.eatCount();
  const isTotal =
    n !== null && (r.eat('in', 'all') || r.eat('cards', 'in', 'all') || r.eat('cards') || r.eat('card'));
  if (isTotal) return n;
  r.at = start;
  const open = r.open;
  r.open = null;
  return open;
}

function timesHere(r: Reader): number | null {
  const start = r.at;
  const n = r.eatCount();
  if (n !== null && r.eat('times')) return n;
  r.at = start;
  return r.eat('twice') ? 2 : null;
}

/** Members of a pattern with what is said of all its cards: `10 red cards alternately odd and even`. */
export function withBase(elements: readonly Element[], base: readonly Test[]): Element[] | null {
  const attributes = new Set(base.map(({ attribute }) => attribute));
  if (elements.some((e) => e.tests.some(({ attribute }) => attributes.has(attribute)))) return null;
  return elements.map((e) => (e.ref === null ? { ...e, tests: sorted([...base, ...e.tests]) } : e));
}
