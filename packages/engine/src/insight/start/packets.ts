import type { Budget } from '../../base/budget.ts';
import type { Card } from '../../cards/card.ts';
import type { CardClass } from './card-class.ts';
import { pairSymmetry } from './pair-symmetry.ts';
import { slotOrder } from './slot-order.ts';
import { constantOf, shareOf, slotsOf, type StartLine, type StartNeed } from './start-need.ts';

/** Every way of laying out some cards so that the ending is certain, counted and found without listing them. */
export class Packets {
  readonly classes: readonly CardClass[];
  /** Slots in the order in which they are filled: those that equations tie together stand together. */
  readonly order: readonly number[];
  private readonly lines: readonly StartLine[];
  /** For each step of the order: lines with a slot before it and a slot from it on; their sums so far matter. */
  private readonly open: readonly (readonly number[])[];
  /** Lines that are settled by this step. */
  private readonly ending: readonly (readonly number[])[];
  /** Lines that speak of a slot. */
  private readonly about: readonly (readonly number[])[];
  private readonly constants: readonly number[];
  private readonly alike: Alike;
  private readonly between: ((left: readonly number[]) => string) | null;
  private readonly known = new Map<string, bigint>();
  private readonly budget: Budget;

  /** @param budget one is spent for every state that is remembered; when it ends, counting and finding are given up */
  constructor(need: Pick<StartNeed, 'lines' | 'bits'>, cards: readonly Card[], budget: Budget) {
    const { lines, bits } = need;
    const slots = bits.length;
    this.lines = lines;
    this.budget = budget;
    this.classes = classesOf(lines, bits, cards);
    this.constants = lines.map(constantOf);
    const own = lines.map(slotsOf);
    this.order = slotOrder(slots, own);
    const stepOf = new Map(this.order.map((slot, step) => [slot, step]));
    const spans = own.map((list) => {
      const steps = list.map((slot) => stepOf.get(slot) ?? 0);
      return { first: Math.min(...steps), last: Math.max(...steps) };
    });
    const at = (test: (span: { first: number; last: number }, step: number) => boolean): number[][] =>
      Array.from({ length: slots }, (_, step) => spans.flatMap((span, i) => (test(span, step) ? [i] : [])));
    this.open = at(({ first, last }, step) => first < step && last >= step);
    this.ending = at(({ last }, step) => last === step);
    this.about = Array.from({ length: slots }, (_, slot) =>
      own.flatMap((list, i) => (list.includes(slot) ? [i] : [])),
    );
    this.alike = alikeClasses(this.classes, this.constants);
    this.between = pairSymmetry(lines, bits, this.classes);
  }

  /** True when an equation without cards is false: no packet will do. */
  private get isHopeless(): boolean {
    return this.lines.some((line, i) => slotsOf(line).length === 0 && this.constants[i] !== 0);
  }

  /**
   * In how many ways the classes can be laid out, and in how many all the cards, each told apart; null where counting takes too much.
   * Orders are counted where there are as many cards as places.
   */
  count(): { readonly patterns: bigint; readonly orders: bigint } | null {
    const patterns = this.patterns();
    if (patterns === null) return null;
    const total = this.classes.reduce((sum, { cards }) => sum + cards.length, 0);
    if (total !== this.order.length) return { patterns, orders: 0n };
    const inside = this.classes.reduce((product, { cards }) => product * factorial(cards.length), 1n);
    return { patterns, orders: patterns * inside };
  }

  private patterns(): bigint | null {
    if (this.isHopeless) return 0n;
    try {
      return this.ways(0, this.full(), [...this.constants]);
    } catch (error) {
      if (error instanceof TooMany) return null;
      throw error;
    }
  }

  private full(): number[] {
    return this.classes.map(({ cards }) => cards.length);
  }

  private ways(step: number, left: number[], sums: number[]): bigint {
    if (step === this.order.length) return 1n;
    const key = `${step}/${this.keyOf(step, left, sums)}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    if (!this.budget.spend()) throw new TooMany();
    let total = 0n;
    for (const c of this.classes.keys())
      this.tryClass(step, c, left, sums, () => {
        total += this.ways(step + 1, left, sums);
      });
    this.known.set(key, total);
    return total;
  }

  /** The same for states from which the rest can be laid in the same number of ways, as far as that is seen. */
  private keyOf(step: number, left: readonly number[], sums: readonly number[]): string {
    if (this.between !== null && this.open[step].length === 0) return this.between(left);
    return this.alike.key(left, sums, this.open[step]);
  }

  /** Lays a card of a class, goes on if no equation is broken by it, and takes the card up again. */
  private tryClass(step: number, c: number, left: number[], sums: number[], go: () => void): void {
    if (left[c] === 0) return;
    const slot = this.order[step];
    left[c]--;
    this.add(c, slot, sums, 1);
    if (this.ending[step].every((i) => sums[i] === 0)) go();
    this.add(c, slot, sums, -1);
    left[c]++;
  }

  private add(c: number, slot: number, sums: number[], sign: 1 | -1): void {
    const { shares } = this.classes[c];
    for (const i of this.about[slot]) {
      const { p } = this.lines[i].problem;
      sums[i] = (sums[i] + sign * shares[i][slot] + p) % p;
    }
  }

  /**
   * One way of laying out cards so that all equations hold, slot by slot in `order`: of the cards that leave a way on, the one that
   * `strange` finds least so is laid. `none` where there is no way at all.
   *
   * @param strange how little a card is wanted in a slot, with what is laid so far
   */
  find(
    strange: (card: Card, slot: number, laid: readonly (Card | undefined)[]) => number,
  ): readonly Card[] | 'none' | 'not found' {
    const patterns = this.patterns();
    if (patterns === null) return 'not found';
    if (patterns === 0n) return 'none';
    const left = this.full();
    const sums = [...this.constants];
    const supply = this.classes.map(({ cards }) => [...cards]);
    const laid: (Card | undefined)[] = this.order.map(() => undefined);
    for (const [step, slot] of this.order.entries()) {
      let best: { c: number; card: Card; strange: number } | undefined;
      for (const c of this.classes.keys())
        this.tryClass(step, c, left, sums, () => {
          if (this.ways(step + 1, left, sums) === 0n) return;
          for (const card of supply[c]) {
            const how = strange(card, slot, laid);
            if (best === undefined || how < best.strange) best = { c, card, strange: how };
          }
        });
      // The rest can be laid out, so there is always one.
      if (best === undefined) throw new Error('a way on was counted that is not there');
      const { c, card } = best;
      left[c]--;
      this.add(c, slot, sums, 1);
      supply[c].splice(supply[c].indexOf(card), 1);
      laid[slot] = card;
    }
    return laid.filter((card) => card !== undefined);
  }

  /** The class of each card, by its number. */
  classNumbers(): ReadonlyMap<number, number> {
    return new Map(this.classes.flatMap(({ cards }, c) => cards.map((card) => [card.id, c] as const)));
  }

  /** Whether exchanging what lies in two slots of a packet that holds leaves all equations true; `a` and `b` are the classes there. */
  mayExchange(slotA: number, a: number, slotB: number, b: number): boolean {
    if (a === b) return true;
    return [...new Set([...this.about[slotA], ...this.about[slotB]])].every((i) => {
      const { p } = this.lines[i].problem;
      const [one, other] = [this.classes[a].shares[i], this.classes[b].shares[i]];
      return (one[slotB] - one[slotA] + other[slotA] - other[slotB]) % p === 0;
    });
  }

  /** Whether a card of class `b` may take the place of one of class `a`. */
  mayReplace(slot: number, a: number, b: number): boolean {
    return this.about[slot].every(
      (i) =>
        (this.classes[a].shares[i][slot] - this.classes[b].shares[i][slot]) % this.lines[i].problem.p === 0,
    );
  }
}

class TooMany extends Error {}

function classesOf(
  lines: readonly StartLine[],
  bits: readonly number[],
  cards: readonly Card[],
): CardClass[] {
  const groups = new Map<string, { cards: Card[]; shares: number[][] }>();
  for (const card of cards) {
    const shares = lines.map((line) => bits.map((word, slot) => shareOf(line, slot, card, word)));
    const key = shares.map((row) => row.join()).join('|');
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { cards: [card], shares });
    else known.cards.push(card);
  }
  return [...groups.values()];
}

function factorial(n: number): bigint {
  let product = 1n;
  for (let i = 2; i <= n; i++) product *= BigInt(i);
  return product;
}

/** Classes that play the same part, such as the thirteen values where pairs must agree in value: it does not matter which is which. */
interface Alike {
  /** The same for states that only differ in which of such classes is which. */
  readonly key: (left: readonly number[], sums: readonly number[], open: readonly number[]) => string;
}

/**
 * Finds the classes that can change places. A line belongs to a class when it reads that class otherwise than all others; classes
 * are alike when every line of one has a line of the other that reads it in the same way, and no other line tells them apart.
 */
function alikeClasses(classes: readonly CardClass[], constants: readonly number[]): Alike {
  const owner = constants.map((_, i) => {
    const read = classes.map(({ shares }) => shares[i].join());
    const odd = read.flatMap((one, c) =>
      read.every((other, d) => d === c || (other !== one && other === read[c === 0 ? 1 : 0])) ? [c] : [],
    );
    // With two classes a line reads each otherwise than the other: it belongs to none.
    return classes.length > 2 && odd.length === 1 ? odd[0] : -1;
  });
  const linesOf = classes.map((_, c) => owner.flatMap((o, i) => (o === c ? [i] : [])));
  const profile = (i: number, c: number): string => {
    const other = classes[c === 0 ? 1 : 0];
    return `${classes[c].shares[i].join()}/${other.shares[i].join()}/${constants[i]}`;
  };
  const shared = owner.flatMap((o, i) => (o < 0 ? [i] : []));
  const signature = classes.map((one, c) =>
    [
      // In an order of their own, so that lines of two classes stand opposite one another.
      ...linesOf[c].map((i) => profile(i, c)),
      '#',
      ...shared.map((i) => one.shares[i].join()),
    ].join('|'),
  );
  const groups = new Map<string, number[]>();
  signature.forEach((key, c) => {
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [c]);
    else group.push(c);
  });
  const sets = [...groups.values()];
  return {
    key(left, sums, open) {
      const isOpen = new Set(open);
      const stateOf = (c: number): string =>
        `${left[c]}:${linesOf[c].map((i) => (isOpen.has(i) ? sums[i] : '')).join()}`;
      const parts = sets.map((set) => set.map(stateOf).sort().join(' '));
      return `${parts.join('/')}/${open.flatMap((i) => (owner[i] < 0 ? [sums[i]] : [])).join()}`;
    },
  };
}
