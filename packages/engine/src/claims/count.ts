import { phrase } from '../phrases/phrase.ts';
import type { Amount, Kind, PileRef } from '../phrases/values.ts';
import { exactly, stated } from './amounts.ts';
import { defineClaim, means } from './claim.ts';
import { and } from './formula.ts';
import { ANY, attributesOf, both, count as countOf, isNobody } from './kinds.ts';
import { slotsIn } from './piles.ts';
import { equals } from './sums.ts';

// One card `is`, more `are`.
const AT_LEAST_1: Amount = { of: 'at least', n: 1 };
const AT_MOST_1: Amount = { of: 'at most', n: 1 };

type CountArgs = { n: Amount; kind: Kind; state?: Kind; pile?: PileRef };

/** C4, C20: how many cards are something or lie somewhere. */
export const count = defineClaim<CountArgs>({
  id: 'count',
  endings: ['C4', 'C20'],
  title: 'so many cards',
  phrases: [
    phrase('no {kind:onekind} [in {pile:pile}] is {state:onestate}', { n: exactly(0) }),
    phrase('[exactly] (1|one) {kind:onekind} [in {pile:pile}] is {state:onestate}', { n: exactly(1) }),
    phrase('at least (1|one) {kind:onekind} [in {pile:pile}] is {state:onestate}', { n: AT_LEAST_1 }),
    phrase('at most (1|one) {kind:onekind} [in {pile:pile}] is {state:onestate}', { n: AT_MOST_1 }),
    phrase('{n:howmany} {kind:kind} [in {pile:pile}] are {state:state}'),
    phrase('no {kind:kind} [in {pile:pile}] are {state:state}', { n: exactly(0) }),
    phrase('no {kind:onekind} is in {pile:pile}', { n: exactly(0) }),
    phrase('[exactly] (1|one) {kind:onekind} is [left] in {pile:pile}', { n: exactly(1) }),
    phrase('at least (1|one) {kind:onekind} is [left] in {pile:pile}', { n: AT_LEAST_1 }),
    phrase('at most (1|one) {kind:onekind} is [left] in {pile:pile}', { n: AT_MOST_1 }),
    phrase('{n:howmany} {kind:kind} are [left] in {pile:pile}'),
    phrase('{pile:pile} (has|holds|contains) [exactly] (1|one) {kind:onekind}', { n: exactly(1) }),
    phrase('{pile:pile} (has|holds|contains) at least (1|one) {kind:onekind}', { n: AT_LEAST_1 }),
    phrase('{pile:pile} (has|holds|contains) at most (1|one) {kind:onekind}', { n: AT_MOST_1 }),
    phrase('{pile:pile} (has|holds|contains) {n:howmany} {kind:kind}'),
    phrase('there is [exactly] (1|one) {kind:onekind} [in {pile:pile}]', { n: exactly(1) }),
    phrase('there is at least (1|one) {kind:onekind} [in {pile:pile}]', { n: AT_LEAST_1 }),
    phrase('there is at most (1|one) {kind:onekind} [in {pile:pile}]', { n: AT_MOST_1 }),
    phrase('there are {n:howmany} {kind:kind} [in {pile:pile}]'),
    phrase('the number of {kind:kind} [in {pile:pile}] is even', { n: { of: 'multiple', k: 2, plus: 0 } }),
    phrase('the number of {kind:kind} [in {pile:pile}] is odd', { n: { of: 'multiple', k: 2, plus: 1 } }),
    phrase('{n:howmany} {kind:kind} are left', { pile: 'packet' }),
  ],
  defaults: {},
  help: 'So many cards are of a kind, lie a certain way, or lie in a pile. Cards of the whole table are counted unless a pile is named.',
  caution: 'A number alone means exactly that many. A pile that is not there has no cards.',
  synonyms: ['left', 'holds', 'contains'],
  attributes: ({ kind, state }) => attributesOf(kind, state),
  meaning({ n, kind, state, pile }, exit) {
    const slots = slotsIn(pile, exit);
    if (!slots.ok) return slots;
    const all = both(kind, state ?? ANY);
    const sum = countOf(all, slots.value, exit);
    const isNone = n.of === 'exactly' && n.n === 0 && sum.terms.length > 0;
    const formula = isNone
      ? and(slots.value.map((slot) => equals(countOf(all, [slot], exit), 0, 2)))
      : stated(n, sum, () => countOf(kind, slots.value, exit), exit);
    return means(formula, isNobody(kind, exit.cards));
  },
  examples: [
    { table: 'r^ b^ r b^', sentence: 'Exactly 3 cards are face up.', holds: true },
    { table: 'r^ b^ r b', sentence: 'Exactly half of the red cards are face up.', holds: true },
    { table: 'r b^ r b', sentence: 'At least 1 card is face up.', holds: true },
    { table: 'r b^ r b^', sentence: 'At most one card is face up.', holds: false },
    { table: 'pile 1: r b; pile 2: b', sentence: 'Pile 1 holds at least one red card.', holds: true },
    { table: 'r^ b^ r b', sentence: 'No red card is face up.', holds: false },
    { table: 'packet: r b; pile 1: r r b', sentence: 'Pile 1 has at least 2 red cards.', holds: true },
    { table: 'packet: r b; pile 1: r r b', sentence: 'An even number of cards are in pile 1.', holds: false },
    { table: 'packet: r; pile 1: b', sentence: 'Exactly 1 card is left in the packet.', holds: true },
  ],
});
