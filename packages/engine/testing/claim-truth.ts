import type { Exit } from '../src/claims/claim.ts';
import type {
  Amount,
  Args,
  Groups,
  Kind,
  NumberRef,
  PileRef,
  PlaceRef,
  Tally,
} from '../src/phrases/values.ts';
import {
  allSame,
  fits,
  how,
  is,
  Look,
  one,
  sum,
  trait,
  valueOf,
  values,
  where,
  type Cards,
} from './claim-look.ts';
import { beats } from './hand-truth.ts';
import type { LaidCard, Table } from './packets.ts';

/**
 * Whether a claim is true of a table, found by looking at the cards one after the other, as a spectator would. Shares nothing
 * with the engine's formulas, so that the two can be held against each other.
 */
export function isTrue(claim: string, args: Args, table: Table, start: Exit['start']): boolean {
  const judge = TRUTHS[claim];
  if (judge === undefined) throw new Error(`no plain truth for ${claim}`);
  // Args come from the phrases of this very claim.
  return judge(args as never, new Look(table), start);
}

const UP: Kind = { tests: [{ test: 'bit', bit: 'up' }] };
const CARDS: Kind = { tests: [] };

interface Said {
  n: Amount & NumberRef;
  t: number;
  d: NumberRef;
  k: NumberRef;
  times: NumberRef;
  step: NumberRef;
  round: NumberRef & boolean;
  kind: Kind;
  other?: Kind;
  m?: Amount;
  state: Kind;
  card: Kind;
  pile: PileRef;
  of?: PileRef;
  p: PileRef;
  q: PileRef;
  a: Tally & Kind;
  b: Tally & Kind;
  c: Kind;
  close: boolean;
  groups?: Groups;
  places?: Groups;
  place: PlaceRef;
  relation: string;
  attribute: string;
  bit: string;
  way: string;
  how: string;
  stem: string;
  end: string;
  list: readonly string[];
  from: string & number;
  to: number;
}

function oneWay(cards: Cards, bit: string): boolean {
  return allSame(cards.map(({ bits }) => bits.has(bit)));
}

function onlyOdd(card: LaidCard | undefined, cards: Cards, bit: string): boolean {
  if (card === undefined || !cards.includes(card)) return false;
  return cards.every((other) => other === card || other.bits.has(bit) !== card.bits.has(bit));
}

const TRUTHS: Readonly<Record<string, (said: Said, look: Look, start: Exit['start']) => boolean>> = {
  count: ({ n, kind, state, pile }, look) => {
    const cards = look.pile(pile).filter((card) => is(card, kind));
    return fits(n, cards.filter((card) => is(card, state)).length, cards.length, look);
  },
  'all-are': ({ kind, state, pile }, look) =>
    look.pile(pile).length > 0 && look.pile(pile).every((card) => !is(card, kind) || is(card, state)),
  'same-way': ({ kind, bit, pile }, look) =>
    look.pile(pile).length > 0 &&
    oneWay(
      look.pile(pile).filter((card) => is(card, kind)),
      bit,
    ),
  'only-other-way': ({ card, bit, pile }, look) => onlyOdd(one(look, card), look.pile(pile), bit),
  'all-but': ({ n, bit, pile }, look) => {
    const cards = look.pile(pile);
    const set = cards.filter(({ bits }) => bits.has(bit)).length;
    return cards.length > 0 && (set === look.n(n) || cards.length - set === look.n(n));
  },
  'all-but-are': ({ n, state, pile }, look) =>
    look.pile(pile).length > 0 && look.pile(pile).filter((card) => !is(card, state)).length === look.n(n),
  'two-ways': ({ kind, other, pile }, look) => {
    const cards = look.pile(pile);
    const rest = cards.filter((card) => (other === undefined ? !is(card, kind) : is(card, other)));
    return (
      cards.length > 0 &&
      [true, false].some(
        (up) =>
          cards.every((card) => !is(card, kind) || is(card, UP) === up) &&
          rest.every((card) => is(card, UP) !== up),
      )
    );
  },
  'exactly-those': ({ kind, state, pile }, look) =>
    look.pile(pile).length > 0 && look.pile(pile).every((card) => is(card, kind) === is(card, state)),
  'all-except': ({ kind, state, pile }, look) =>
    look.pile(pile).length > 0 && look.pile(pile).every((card) => is(card, kind) !== is(card, state)),
  'as-many': ({ a, b, times }, look) => look.tally(a) === look.n(times) * look.tally(b),
  'same-number': ({ kind, p, q, groups }, look) => {
    if (groups === undefined) return how(look.pile(p), kind) === how(look.pile(q), kind);
    const sets = look.groups(groups);
    return sets !== null && allSame(sets.map((cards) => how(cards, kind)));
  },
  difference: ({ a, b, d }, look) => look.tally(a) - look.tally(b) === look.n(d),
  'more-than': ({ a, b }, look) => look.tally(a) > look.tally(b),
  agree: (said, look) => look.every(said, (cards) => values(said.relation, cards).size < 2),
  differ: (said, look) => look.every(said, (cards) => values(said.relation, cards).size === cards.length),
  'faces-tell': (said, look) =>
    look.every(said, (cards) => {
      const kinds = values(said.relation, cards).size;
      return oneWay(cards, 'up') === (said.how === 'agrees' ? kinds < 2 : kinds === cards.length);
    }),
  'one-of-each': (said, look) => {
    const all =
      said.relation === 'facing' || said.relation === 'orientation'
        ? 2
        : values(said.relation, look.all()).size;
    return look.every(said, (cards) => values(said.relation, cards).size === all && cards.length === all);
  },
  'group-count': (said, look) =>
    look.every(
      said,
      (cards) =>
        fits(said.n, how(cards, said.kind), cards.length, look) &&
        (said.m === undefined || fits(said.m, how(cards, said.other ?? CARDS), cards.length, look)),
    ),
  'total-is': ({ kind, t, attribute, pile }, look) =>
    sum(
      attribute,
      look.pile(pile).filter((card) => is(card, kind)),
    ) === look.n(t),
  'group-total': (said, look) => look.every(said, (cards) => sum(said.attribute, cards) === look.n(said.t)),
  'same-total': ({ p, q, a, b, groups, attribute }, look) => {
    const told = (tally: Tally | undefined, pile: PileRef): number =>
      sum(
        attribute,
        look.pile(tally === undefined ? pile : tally.pile).filter((card) => is(card, tally?.kind ?? CARDS)),
      );
    if (groups === undefined) return told(a, p) === told(b, q);
    const sets = look.groups(groups);
    return sets !== null && allSame(sets.map((cards) => sum(attribute, cards)));
  },
  'better-hand': ({ p, q }, look) => beats(look.pile(p), look.pile(q)),
  'total-more': ({ p, q, attribute }, look) => sum(attribute, look.pile(p)) > sum(attribute, look.pile(q)),
  'place-is': ({ place, n, end, state, pile }, look) =>
    is(look.at(place ?? { end: end === 'bottom' ? 'bottom' : 'top', n }, look.pile(pile)), state),
  'card-is': ({ card, state }, look) => is(one(look, card), state),
  'card-in': ({ card, pile }, look) => where(look, card, pile) !== undefined,
  'all-in': ({ kind, pile }, look) => {
    const inside = look.pile(pile);
    return inside.length > 0 && look.all().every((card) => !is(card, kind) || inside.includes(card));
  },
  'card-among': ({ card, end, k, pile }, look) => {
    const [place, size, cards] = [where(look, card, pile), look.n(k), look.pile(pile)];
    if (place === undefined || size > cards.length) return false;
    return end === 'top' ? place < size : place >= cards.length - size;
  },
  'places-are': (said, look) => look.every(said, (cards) => cards.every((card) => is(card, said.state))),
  between: ({ a, b, c, close, pile }, look) => {
    const [x, y, z] = [where(look, a, pile), where(look, b, pile), where(look, c, pile)];
    if (x === undefined || y === undefined || z === undefined) return false;
    const inside = (y < x && x < z) || (z < x && x < y);
    return inside && (!close || Math.abs(y - z) === 2);
  },
  'only-card': ({ card, pile }, look) => look.pile(pile).length === 1 && where(look, card, pile) === 0,
  'each-end': ({ end, stem, state }, look) =>
    look.numbered(stem).every((pile) => is(pile.at(end === 'top' ? 0 : -1), state)),
  reads: ({ list, pile, from }, look) => {
    const names = look.pile(pile).map(({ card }) => card.name);
    return (from === 'top' ? names : names.toReversed()).join('|') === list.join('|');
  },
  'starting-order': ({ pile, of, how: way, round }, look, start) => {
    const ids = look.pile(pile).map(({ card }) => card.id);
    const order = way === 'same' ? ids : ids.toReversed();
    const cuts = round ? order.map((_, c) => [...order.slice(c), ...order.slice(0, c)]) : [order];
    return ids.length > 0 && cuts.some((list) => list.join() === start[look.nameOf(of ?? pile)].join());
  },
  alternate: ({ relation, pile }, look) => {
    const row = look.pile(pile).map((card) => trait(relation, card));
    return (
      row.length > 0 && row.every((value, i) => i === 0 || (value !== row[i - 1] && value === row[i % 2]))
    );
  },
  repeat: ({ relation, k, pile }, look) => {
    const row = look.pile(pile).map((card) => trait(relation, card));
    const period = look.n(k);
    return row.length > 0 && period > 0 && row.every((value, i) => value === row[i % period]);
  },
  steps: ({ step, way, round, attribute, pile }, look) => {
    const row = look.pile(pile).map((card) => valueOf(attribute, card));
    const modulus = look.n(round);
    const by = way === 'up' ? look.n(step) : -look.n(step);
    return (
      row.length > 0 &&
      modulus > 0 &&
      row.every((value, i) => i === 0 || (value - row[i - 1] - by) % modulus === 0)
    );
  },
  runs: ({ from, to, pile }, look) => {
    const row = look.pile(pile).map((card) => valueOf('value', card));
    const wanted: number[] = [];
    for (let value: number = from; to >= from ? value <= to : value >= to; value += to >= from ? 1 : -1)
      wanted.push(value);
    return row.join() === wanted.join();
  },
  sorted: ({ way, attribute, pile }, look) => {
    const row = look.pile(pile).map((card) => valueOf(attribute, card));
    const wanted = row.toSorted((a, b) => (way === 'ascend' ? a - b : b - a));
    return row.length > 0 && row.join() === wanted.join();
  },
  distance: ({ a, b, d, round, pile }, look) => {
    const [x, y, n] = [where(look, a, pile), where(look, b, pile), look.pile(pile).length];
    if (x === undefined || y === undefined) return false;
    return round ? (((x - y - look.n(d)) % n) + n) % n === 0 : x - y === look.n(d);
  },
  'next-to': ({ a, b, pile }, look) => {
    const [x, y] = [where(look, a, pile), where(look, b, pile)];
    return x !== undefined && y !== undefined && Math.abs(x - y) === 1;
  },
  'value-at': ({ place, n, attribute, pile }, look) => {
    const card = look.at(place, look.pile(pile));
    return card !== undefined && valueOf(attribute, card) === look.n(n);
  },
  'value-place': ({ card, pile }, look) => {
    const place = where(look, card, pile);
    return place !== undefined && valueOf('value', look.pile(pile)[place]) === place + 1;
  },
};
