import type {
  Amount,
  Groups,
  Kind,
  KindTest,
  NumberRef,
  PileRef,
  PlaceRef,
  Tally,
} from '../src/phrases/values.ts';
import type { LaidCard, Table } from './packets.ts';

/** Looking at the cards of a table one after the other, as a spectator would; shares nothing with the engine's formulas. */
export type Cards = readonly LaidCard[];

export class Look {
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

export function is(card: LaidCard | undefined, kind: Kind | undefined): boolean {
  return card !== undefined && (kind?.tests ?? []).every((test) => passes(card, test));
}

export function how(cards: Cards, kind: Kind): number {
  return cards.filter((card) => is(card, kind)).length;
}

export function fits(amount: Amount, count: number, whole: number, look: Look): boolean {
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

export function trait(relation: string, { card, bits }: LaidCard): string {
  if (relation === 'facing') return String(bits.has('up'));
  if (relation === 'orientation') return String(bits.has('end'));
  if (relation === 'mates') return `${card.attributes.value} ${card.attributes.colour}`;
  if (relation === 'halves') return `${card.attributes.rank} ${card.attributes.suit}`;
  return String(card.attributes[relation]);
}

export function values(relation: string, cards: Cards): Set<string> {
  return new Set(cards.map((card) => trait(relation, card)));
}

export function sum(attribute: string, cards: Cards): number {
  return cards.reduce((total, { card }) => total + Number(card.attributes[attribute]), 0);
}

export function valueOf(attribute: string, { card }: LaidCard): number {
  return Number(card.attributes[attribute]);
}

export function allSame(list: readonly (string | number | boolean)[]): boolean {
  return new Set(list).size < 2;
}

export function one(look: Look, kind: Kind): LaidCard | undefined {
  const found = look.all().filter((card) => is(card, kind));
  return found.length === 1 ? found[0] : undefined;
}

export function where(look: Look, kind: Kind, pile: PileRef): number | undefined {
  const card = one(look, kind);
  const place = card === undefined ? -1 : look.pile(pile).indexOf(card);
  return place < 0 ? undefined : place;
}
