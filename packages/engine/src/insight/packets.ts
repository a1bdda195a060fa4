import type { Card } from '../cards/card.ts';
import { constantOf, shareOf, slotsOf, type StartLine, type StartNeed } from './start-need.ts';

/** Cards that no equation tells apart. */
interface Class {
  readonly cards: readonly Card[];
  /** For each line, for each slot, what such a card there adds. */
  readonly shares: readonly (readonly number[])[];
}

/** Every way of laying out some cards so that the ending is certain, counted and found without listing them. */
export class Packets {
  private readonly classes: readonly Class[];
  private readonly lines: readonly StartLine[];
  private readonly slots: number;
  /** Lines with a slot before and a slot from here on: their sums so far matter. */
  private readonly open: readonly (readonly number[])[];
  /** Lines that end with this slot. */
  private readonly ending: readonly (readonly number[])[];
  private readonly constants: readonly number[];
  private readonly known = new Map<string, bigint>();
  private readonly most: number;

  /** @param most states to remember before giving up */
  constructor(need: Pick<StartNeed, 'lines' | 'bits'>, cards: readonly Card[], most: number) {
    const { lines, bits } = need;
    this.lines = lines;
    this.slots = bits.length;
    this.most = most;
    const groups = new Map<string, { cards: Card[]; shares: number[][] }>();
    for (const card of cards) {
      const shares = lines.map((line) => bits.map((word, slot) => shareOf(line, slot, card, word)));
      const key = shares.map((row) => row.join()).join('|');
      const known = groups.get(key);
      if (known === undefined) groups.set(key, { cards: [card], shares });
      else known.cards.push(card);
    }
    this.classes = [...groups.values()];
    this.constants = lines.map(constantOf);
    const spans = lines.map((line) => {
      const own = slotsOf(line);
      return { first: Math.min(...own), last: Math.max(...own) };
    });
    const at = (test: (span: { first: number; last: number }, slot: number) => boolean): number[][] =>
      Array.from({ length: this.slots }, (_, slot) =>
        spans.flatMap((span, i) => (test(span, slot) ? [i] : [])),
      );
    this.open = at(({ first, last }, slot) => first < slot && last >= slot);
    this.ending = at(({ last }, slot) => last === slot);
  }

  /** True when an equation without cards is false: no packet will do. */
  private get isHopeless(): boolean {
    return this.lines.some((line, i) => slotsOf(line).length === 0 && this.constants[i] !== 0);
  }

  /**
   * In how many ways the classes can be laid out, and in how many all the cards, each told apart; null where counting takes too much.
   * All cards are laid out when there are as many as places.
   */
  count(): { readonly patterns: bigint; readonly orders: bigint } | null {
    const patterns = this.patterns();
    if (patterns === null) return null;
    const total = this.classes.reduce((sum, { cards }) => sum + cards.length, 0);
    if (total !== this.slots) return { patterns, orders: 0n };
    const inside = this.classes.reduce((product, { cards }) => product * factorial(cards.length), 1n);
    return { patterns, orders: patterns * inside };
  }

  private patterns(): bigint | null {
    if (this.isHopeless) return 0n;
    const left = this.classes.map(({ cards }) => cards.length);
    try {
      return this.ways(0, left, [...this.constants]);
    } catch (error) {
      if (error instanceof TooMany) return null;
      throw error;
    }
  }

  private ways(slot: number, left: number[], sums: number[]): bigint {
    if (slot === this.slots) return 1n;
    const key = `${slot}/${left.join()}/${this.open[slot].map((i) => sums[i]).join()}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    if (this.known.size >= this.most) throw new TooMany();
    let total = 0n;
    for (const c of this.classes.keys())
      this.tryClass(slot, c, left, sums, () => {
        total += this.ways(slot + 1, left, sums);
      });
    this.known.set(key, total);
    return total;
  }

  /** Lays a card of a class, goes on if no equation is broken by it, and takes the card up again. */
  private tryClass(slot: number, c: number, left: number[], sums: number[], go: () => void): void {
    if (left[c] === 0) return;
    const { shares } = this.classes[c];
    left[c]--;
    this.lines.forEach(({ problem }, i) => (sums[i] = (sums[i] + shares[i][slot]) % problem.p));
    if (this.ending[slot].every((i) => sums[i] === 0)) go();
    this.lines.forEach(({ problem }, i) => (sums[i] = (sums[i] - shares[i][slot] + problem.p) % problem.p));
    left[c]++;
  }

  /**
   * One way of laying out cards from the top so that all equations hold, as innocent as can be: a card that differs from the one before
   * in colour and suit is taken where there is one. Null where there is none, or where it was not found within what may be spent.
   */
  find(): { readonly cards: readonly Card[] } | 'none' | 'not found' {
    const patterns = this.patterns();
    if (patterns === null) return 'not found';
    if (patterns === 0n) return 'none';
    const left = this.classes.map(({ cards }) => cards.length);
    const sums = [...this.constants];
    const supply = this.classes.map(({ cards }) => [...cards]);
    const laid: Card[] = [];
    for (let slot = 0; slot < this.slots; slot++) {
      const choices = [...this.classes.keys()].flatMap((c) => {
        let isOpen = false;
        this.tryClass(slot, c, left, sums, () => {
          isOpen = this.ways(slot + 1, left, sums) > 0n;
        });
        return isOpen ? supply[c].map((card) => ({ c, card, strange: strangeness(card, laid) })) : [];
      });
      // There is always one, since the rest can be laid out.
      const best = choices.reduce((a, b) => (b.strange < a.strange ? b : a));
      const { shares } = this.classes[best.c];
      left[best.c]--;
      this.lines.forEach(({ problem }, i) => (sums[i] = (sums[i] + shares[i][slot]) % problem.p));
      supply[best.c].splice(supply[best.c].indexOf(best.card), 1);
      laid.push(best.card);
    }
    return { cards: laid };
  }
}

class TooMany extends Error {}

function factorial(n: number): bigint {
  let product = 1n;
  for (let i = 2; i <= n; i++) product *= BigInt(i);
  return product;
}

/** How much a card stands out after those before it: runs of a colour, a suit, a value or a sequence. */
function strangeness(card: Card, laid: readonly Card[]): number {
  let sum = 0;
  for (const [name, weight] of LOOKS) {
    let run = 0;
    while (run < laid.length && laid[laid.length - 1 - run].attributes[name] === card.attributes[name]) run++;
    sum += weight * run * run;
  }
  const before = Number(laid.at(-1)?.attributes.value);
  return Math.abs(before - Number(card.attributes.value)) === 1 ? sum + 1 : sum;
}

const LOOKS: readonly (readonly [string, number])[] = [
  ['colour', 2],
  ['suit', 2],
  ['value', 3],
];
