import type { Exit } from '../src/claims/claim.ts';
import type {
  Amount,
  Args,
  Groups,
  Kind,
  KindTest,
  NumberRef,
  PileRef,
  PlaceRef,
  Tally,
} from '../src/phrases/values.ts';
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

type Cards = readonly LaidCard[];

class Look {
  readonly piles: ReadonlyMap<string, Cards>;
  private readonly numbers: Readonly<Record<string, number>>;

  constructor({ piles, numbers }: Table) {
    this.piles = new Map(
      [...piles].filter(([, cards]) => cards.length > 0).sort(([a], [b]) => (a < b ? -1 : 1)),
    );
    this.numbers = numbers;
  }

  n(ref: NumberRef): number {
    return typeof ref === 'number' ? ref : this.numbers[ref.var];
  }

  nameOf(ref: PileRef): string {
    return typeof ref === 'string' ? ref : `${ref.stem} ${this.n(ref.n)}`;
  }

  pile(ref: PileRef | undefined): Cards {
    if (ref === undefined) return this.all();
    const found = this.piles.get(this.nameOf(ref));
    if (found !== undefined) return found;
    return this.nameOf(ref) === 'packet' ? this.all() : [];
  }

  all(): Cards {
    return [...this.piles.values()].flat();
  }

  at({ end, n }: PlaceRef, cards: Cards): LaidCard | undefined {
    return end === 'top' ? cards[this.n(n) - 1] : cards[cards.length - this.n(n)];
  }

  numbered(stem: string): Cards[] {
    const names = [...this.piles.keys()].filter((name) => new RegExp(`^${stem} \\d+$`).test(name));
    return names.length > 0 ? names.map((name) => this.pile(name)) : [...this.piles.values()];
  }

  tally({ kind, pile }: Tally): number {
    return how(this.pile(pile), kind);
  }

  /** Null when something named is not there. */
  groups(groups: Groups): Cards[] | null {
    switch (groups.groups) {
      case 'piles':
        return this.numbered(groups.stem);
      case 'ends':
        return [this.numbered(groups.stem).map((pile) => pile.at(groups.end === 'top' ? 0 : -1) as LaidCard)];
      case 'spots': {
        const found = groups.spots.map(({ place, pile }) => this.at(place, this.pile(pile)));
        return found.includes(undefined) ? null : [found as LaidCard[]];
      }
      case 'end': {
        const [cards, size] = [this.pile(groups.pile), this.n(groups.size)];
        if (size < 1 || size > cards.length) return null;
        return [groups.end === 'top' ? cards.slice(0, size) : cards.slice(-size)];
      }
      case 'across': {
        const [one, two] = [this.pile(groups.pile), this.pile(groups.other)];
        const other = groups.opposite ? two.toReversed() : two;
        const pairs = one.slice(0, other.length).map((card, i) => [card, other[i]]);
        return one.length === 0 || two.length === 0 ? null : pairs;
      }
      case 'blocks': {
        const cards = this.pile(groups.pile);
        return cards.length === 0 ? null : cut(cards, this.n(groups.size), groups.from);
      }
      case 'parts': {
        const cards = this.pile(groups.pile);
        return cards.length === 0 || cards.length % groups.parts > 0
          ? null
          : cut(cards, cards.length / groups.parts, 'top');
      }
      case 'mirror': {
        const cards = this.pile(groups.pile);
        const pairs = cards.map((card, i) => [card, cards[cards.length - 1 - i]]);
        return cards.length === 0 ? null : pairs.slice(0, cards.length >> 1);
      }
      case 'halfway': {
        const cards = this.pile(groups.pile);
        const half = cards.length / 2;
        return cards.length === 0 || cards.length % 2 > 0
          ? null
          : cards.slice(0, half).map((card, i) => [card, cards[i + half]]);
      }
      case 'neighbours': {
        const cards = this.pile(groups.pile);
        const ring = groups.round ? [...cards, cards[0]] : cards;
        return cards.length === 0
          ? null
          : cards.length === 1
            ? []
            : ring.slice(1).map((card, i) => [ring[i], card]);
      }
    }
  }

  every(
    args: { groups?: Groups; places?: Groups; pile?: PileRef },
    judge: (cards: Cards) => boolean,
  ): boolean {
    const groups = args.groups ?? args.places;
    if (groups !== undefined) return this.groups(groups)?.every(judge) ?? false;
    const cards = this.pile(args.pile);
    return cards.length > 0 && judge(cards);
  }
}

function cut(cards: Cards, size: number, from: 'top' | 'bottom'): Cards[] | null {
  if (size < 1) return null;
  const found: Cards[] = [];
  const rest = [...cards];
  while (rest.length >= size) {
    if (from === 'top') found.push(rest.splice(0, size));
    else found.unshift(rest.splice(rest.length - size, size));
  }
  return found;
}

function passes({ card, bits }: LaidCard, test: KindTest): boolean {
  const plain =
    test.test === 'bit'
      ? bits.has(test.bit)
      : test.test === 'card'
        ? card.name === test.name
        : test.values.includes(card.attributes[test.attribute]);
  return test.not === true ? !plain : plain;
}

function is(card: LaidCard | undefined, kind: Kind | undefined): boolean {
  return card !== undefined && (kind?.tests ?? []).every((test) => passes(card, test));
}

function how(cards: Cards, kind: Kind): number {
  return cards.filter((card) => is(card, kind)).length;
}

function fits(amount: Amount, count: number, whole: number, look: Look): boolean {
  switch (amount.of) {
    case 'any':
      return true;
    case 'exactly':
      return count === look.n(amount.n);
    case 'range':
      return count >= look.n(amount.from) && count <= look.n(amount.to);
    case 'at least':
      return count >= look.n(amount.n);
    case 'at most':
      return count <= look.n(amount.n);
    case 'multiple':
      return count % amount.k === amount.plus;
    case 'half':
      return count * 2 === whole;
  }
}

function trait(relation: string, { card, bits }: LaidCard): string {
  if (relation === 'facing') return String(bits.has('up'));
  if (relation === 'orientation') return String(bits.has('end'));
  if (relation === 'mates') return `${card.attributes.value} ${card.attributes.colour}`;
  return String(card.attributes[relation]);
}

function values(relation: string, cards: Cards): Set<string> {
  return new Set(cards.map((card) => trait(relation, card)));
}

function sum(attribute: string, cards: Cards): number {
  return cards.reduce((total, { card }) => total + Number(card.attributes[attribute]), 0);
}

function valueOf(attribute: string, { card }: LaidCard): number {
  return Number(card.attributes[attribute]);
}

function allSame(list: readonly (string | number | boolean)[]): boolean {
  return new Set(list).size < 2;
}

function one(look: Look, kind: Kind): LaidCard | undefined {
  const found = look.all().filter((card) => is(card, kind));
  return found.length === 1 ? found[0] : undefined;
}

function where(look: Look, kind: Kind, pile: PileRef): number | undefined {
  const card = one(look, kind);
  const place = card === undefined ? -1 : look.pile(pile).indexOf(card);
  return place < 0 ? undefined : place;
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
  'one-of-each': (said, look) => {
    const all =
      said.relation === 'facing' || said.relation === 'orientation'
        ? 2
        : values(said.relation, look.all()).size;
    return look.every(said, (cards) => values(said.relation, cards).size === all && cards.length === all);
  },
  'group-count': (said, look) =>
    look.every(said, (cards) => fits(said.n, how(cards, said.kind), cards.length, look)),
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
