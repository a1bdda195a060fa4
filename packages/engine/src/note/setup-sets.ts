import { attributesOf, PACK } from '../cards/pack.ts';
import { NAMED_ORDERS, type NamedOrder } from '../cards/stacks.ts';
import { readPip } from './setup-cards.ts';
import { printKind, readKind } from './setup-kinds.ts';
import type { Reader } from './setup-reader.ts';
import type { RunReading, Test, What } from './setup-syntax.ts';

const PACKS = [['pack'], ['deck'], ['pack', 'of', 'cards'], ['deck', 'of', 'cards']];
const FULL = [['full'], ['whole'], ['complete'], ['entire']];
const MIXED = [['shuffled'], ['mixed']];
const ORDER_WORDS: readonly { readonly id: NamedOrder['id']; readonly words: string[][] }[] =
  NAMED_ORDERS.map(({ id }) => ({
    id,
    words: [
      [...id.toLowerCase().split(' '), 'order'],
      [...id.toLowerCase().split(' '), 'stack'],
    ],
  })).map((entry) =>
    entry.id === 'new pack' ? { ...entry, words: [...entry.words, ['new', 'deck', 'order']] } : entry,
  );

/** `full pack`, `shuffled pack`, `full pack in new pack order`, `all spades`, `rest of the pack`. */
export function readSet(r: Reader): RunReading | null {
  const start = r.at;
  r.eat('a');
  const mixedFirst = r.eatAny(MIXED);
  const full = r.eatAny(FULL);
  if (r.eatAny([...PACKS].reverse())) {
    const after = r.at;
    r.eat(',');
    const order = r.eat('in') ? readOrder(r, 52) : null;
    if (order !== null) return { what: order, facing: null, mixed: false };
    r.at = after;
    return { what: { is: 'set', tests: [] }, facing: null, mixed: mixedFirst };
  }
  r.at = start;
  if (full) return null;
  const mixed = r.eatAny(MIXED);
  const isRest = r.eat('rest') || r.eat('others') || r.eat('remainder');
  if (isRest || r.eat('remaining') || r.eat('other')) {
    if (isRest && !r.eat('of')) return { what: { is: 'rest', tests: [] }, facing: null, mixed };
    r.eat('the');
    const tests = r.eatAny(PACKS) ? [] : (readKind(r)?.tests ?? null);
    if (tests !== null) return { what: { is: 'rest', tests }, facing: null, mixed };
    r.at = start;
    return null;
  }
  if (r.eat('all')) {
    r.eat('of');
    r.eat('the');
    const counted = r.at;
    const n = r.eatCount();
    const kind = readKind(r);
    if (kind !== null) {
      if (n !== null && sizeOf(kind.tests) !== n)
        r.tell('set-up-all', r.rangeFrom(counted), {
          kind: printKind(kind.tests, 'many'),
          count: n,
          size: sizeOf(kind.tests),
        });
      return { what: { is: 'set', tests: kind.tests }, facing: null, mixed };
    }
  }
  r.at = start;
  return null;
}

/** How many cards of one pack pass, by what every card of a pack is. */
export function sizeOf(tests: readonly Test[]): number {
  return PACK.filter((card) => tests.every(({ attribute, value }) => attributesOf(card)[attribute] === value))
    .length;
}

/** `new pack order`, `Si Stebbins order from 4H`. */
export function readOrder(r: Reader, n: number): What | null {
  for (const { id, words } of ORDER_WORDS)
    if (r.eatAny(words)) {
      const start = r.at;
      r.eat(',');
      const from =
        r.eat('starting', 'with') || r.eat('starting', 'at') || r.eat('starting', 'from') || r.eat('from');
      r.eat('the');
      const card = from ? readPip(r) : null;
      if (card === null) r.at = start;
      return { is: 'order', order: id, n, start: card };
    }
  return null;
}
