import { diagnostic, type Diagnostic, type Facts, type Fix, type Range } from '../base/diagnostic.ts';
import type { AttributeValue, Card } from '../cards/card.ts';
import { printCardName, type PipCard } from '../cards/names.ts';
import { PACK } from '../cards/pack.ts';
import { namedOrder } from '../cards/stacks.ts';
import type { Freedom, Lying, SetUp } from '../routine/routine.ts';
import { dealt, type Dealt, type Supply } from './setup-deal.ts';
import { facesOf, isSaid, lies, orders, overlap, spansOf, type Stretch } from './setup-spans.ts';
import { kindName, printKind } from './setup-kinds.ts';
import { printWhat } from './setup-print.ts';
import type { Knowledge } from './setup-knowledge.ts';
import { refKey, type CardRef, type PileLine, type Run, type Test, type What } from './setup-syntax.ts';
import { PAIR } from './setup-words.ts';

const NEW_PACK = 'A-K of hearts, A-K of clubs, K-A of diamonds, K-A of spades';

const BY_KEY: ReadonlyMap<string, PipCard> = new Map(PACK.map((card) => [refKey({ is: 'pip', card }), card]));

/** Cards that one set-up may lay: four packs. */
export const MOST_CARDS = 208;

export interface Laid {
  readonly cards: readonly Card[];
  readonly setUp: SetUp;
  readonly diagnostics: readonly Diagnostic[];
  /** Values of the attribute that ties unnamed cards to their mates; empty when there is none. */
  readonly pairs: readonly number[];
}

/** Lays the cards of all pile lines, in the order of the lines, and says what cannot be. */
export function layOut(lines: readonly PileLine[], knowledge: Knowledge): Laid {
  const table = new Table(lines, knowledge);
  for (const line of lines) table.lay(line);
  return table.laid();
}

class Table {
  private readonly cards: Card[] = [];
  private readonly piles: { name: string; cards: Lying[] }[] = [];
  private readonly freedoms: Freedom[] = [];
  private readonly diagnostics: Diagnostic[] = [];
  private readonly count = new Map<string, number>();
  private readonly kinds = new Map<string, number>();
  private readonly knowledge: Knowledge;
  private readonly left: Set<PipCard>;
  private readonly names = new Map<string, string>();
  private readonly doubled = new Map<string, Run>();
  private pairs = 0;
  private isFull = false;

  constructor(lines: readonly PileLine[], knowledge: Knowledge) {
    this.knowledge = knowledge;
    this.left = new Set(PACK);
    const nothing: Supply = { pips: knowledge.pips, rest: () => [] };
    for (const { runs } of lines)
      for (const { what } of runs)
        for (const { ref } of dealt(what, nothing, MOST_CARDS + 1)) {
          const card = ref === null ? undefined : BY_KEY.get(refKey(ref));
          if (card !== undefined) this.left.delete(card);
        }
  }

  laid(): Laid {
    const pairs = Array.from({ length: this.pairs }, (_, k) => k + 1);
    return {
      cards: this.cards,
      setUp: { piles: this.piles, freedoms: this.freedoms },
      diagnostics: this.diagnostics,
      pairs,
    };
  }

  lay(line: PileLine): void {
    const cards: Lying[] = [];
    const starts: number[] = [];
    const attributes: Freedom[] = [];
    const faces = facesOf(line);
    const flips = new Map<number, number>();
    line.runs.forEach((run, index) => {
      starts.push(cards.length);
      const { facing, group } = faces[index];
      const dealing = this.deal(run);
      const isTurned = isSaid(line, index, 'ends');
      const free: number[] = [];
      dealing.forEach((card, k) => {
        const flip = flips.get(group) ?? 0;
        flips.set(group, flip + 1);
        const id = this.card(card, run, k, line);
        if (card.ref === null && card.free !== null) free.push(id);
        const end = isTurned !== (card.ref !== null && card.end) ? 1 : 0;
        cards.push({ card: id, up: lies(facing, card.facing, flip), end });
      });
      this.checkOrderSaid(line, index, dealing.length);
      const what = run.what;
      if (what.is === 'each' && free.length > 0)
        attributes.push({ free: 'attribute', attribute: what.attribute, values: what.values, cards: free });
    });
    starts.push(cards.length);
    if (cards.length === 0) return;
    this.piles.push({ name: line.pile, cards });
    const faceSpans = spansOf(line, starts, (index) => faces[index].facing === 'free');
    const orderSpans = orders(line, starts);
    for (const { from, count } of faceSpans)
      this.freedoms.push({ free: 'faces', pile: line.pile, from, count });
    this.freedoms.push(...attributes);
    for (const { from, count } of orderSpans)
      this.freedoms.push({ free: 'order', pile: line.pile, from, count });
    this.checkFreeFaces(line, faceSpans, orderSpans);
  }

  private deal(run: Run): Dealt[] {
    const { what, range } = run;
    const size = sizeAsked(what);
    if (size === 0) this.tell('set-up-count-zero', range);
    if (what.is === 'order' && size > 52)
      this.tell('set-up-order-size', range, { order: what.order, count: size });
    if (what.is === 'order') this.sayOrder(what, range);
    if (what.is === 'pattern') this.checkPattern(what, range);
    const supply: Supply = {
      pips: this.knowledge.pips,
      rest: (tests) => {
        const found = this.knowledge.pips(tests).filter((card) => this.left.has(card));
        for (const card of found) this.left.delete(card);
        return found;
      },
    };
    const room = MOST_CARDS - this.cards.length;
    const cards = dealt(what, supply, MOST_CARDS + 1);
    if (cards.length === 0 && (what.is === 'rest' || what.is === 'set'))
      this.tell(what.is === 'rest' ? 'set-up-no-rest' : 'set-up-no-such-card', range, {
        kind: printKind(what.tests, 'many'),
      });
    this.checkKinds(what, range);
    if (cards.length > room) {
      if (!this.isFull)
        this.tell('set-up-too-many', range, {
          count: Math.max(size, this.cards.length + cards.length),
          most: MOST_CARDS,
        });
      this.isFull = true;
    }
    const base = this.pairs;
    const laid = cards.slice(0, Math.max(0, room));
    for (const card of laid)
      if (card.ref === null && card.pair !== null) this.pairs = Math.max(this.pairs, base + card.pair + 1);
    return laid.map((card) =>
      card.ref === null && card.pair !== null ? { ...card, pair: base + card.pair } : card,
    );
  }

  /** Orders known by name differ from maker to maker and from book to book, so which one is meant is said. */
  private sayOrder(what: Extract<What, { is: 'order' }>, range: Range): void {
    const { title, convention } = namedOrder(what.order);
    const isNewPack = what.order === 'new pack' && what.n === 52 && what.start === null;
    const fixes: Fix[] = isNewPack ? [{ label: 'Write it out', range, text: NEW_PACK }] : [];
    const facts = {
      word: title,
      taken: convention,
      other: 'the order written out, such as A-K of hearts, K-A of spades',
    };
    this.diagnostics.push(diagnostic('set-up-order-taken', range, facts, { severity: 'reading', fixes }));
  }

  private checkPattern(what: Extract<What, { is: 'pattern' }>, range: Range): void {
    const { n, style } = what;
    const { length } = what.elements;
    if (n < length && n > 0) this.tell('set-up-pattern-short', range, { count: n, length });
    else if (style === 'repeated' && n % length !== 0)
      this.tell('set-up-pattern-cut', range, { count: n, length, rest: n % length }, 'warning');
  }

  /** Kinds of which there is no card, or of which the pack has fewer. */
  private checkKinds(what: What, range: Range): void {
    for (const tests of kindsOf(what)) {
      const known = this.knowledge.known(tests);
      if (known === null) this.tell('set-up-no-such-card', range, { kind: printKind(tests, 'many') });
    }
    if (what.is === 'each')
      for (const value of what.values)
        if (this.knowledge.known([...what.tests, { attribute: what.attribute, value }]) === null)
          this.tell('set-up-no-such-card', range, {
            kind: printKind([...what.tests, { attribute: what.attribute, value }], 'many'),
          });
  }

  private card(card: Dealt, run: Run, k: number, line: PileLine): number {
    const id = this.cards.length;
    if (card.ref !== null) {
      this.cards.push({ id, name: this.name(card.ref), attributes: this.knowledge.of(card.ref) });
      if (card.half !== true) this.checkDouble(card.ref, run, k, line);
      return id;
    }
    const attributes: Record<string, AttributeValue> = { ...this.known(card) };
    if (card.pair !== null) attributes[PAIR] = card.pair + 1;
    this.cards.push({ id, name: kindName(card.tests), attributes });
    if (card.half !== true) this.checkSupply(card.tests, run.range, line);
    return id;
  }

  private known(card: Extract<Dealt, { ref: null }>): Readonly<Record<string, AttributeValue>> {
    if (card.free === null) return this.knowledge.known(card.tests) ?? {};
    const { attribute, values } = card.free;
    // What holds whichever value the card turns out to have, and the first value until it does.
    const ways = values.map((value) => this.knowledge.known([...card.tests, { attribute, value }]) ?? {});
    const [first, ...others] = ways;
    const common = Object.entries(first).filter(([name, value]) =>
      others.every((way) => way[name] === value),
    );
    return { ...Object.fromEntries(common), [attribute]: values[0] };
  }

  /** One's own cards keep the capitals of their first mention. */
  private name(ref: CardRef): string {
    const key = refKey(ref);
    const known = this.names.get(key);
    if (known !== undefined) return known;
    const name = nameOf(ref);
    this.names.set(key, name);
    return name;
  }

  private checkDouble(ref: CardRef, run: Run, k: number, line: PileLine): void {
    if (ref.is === 'own' || (ref.is === 'joker' && ref.colour === null)) return;
    const key = refKey(ref);
    const count = (this.count.get(key) ?? 0) + 1;
    this.count.set(key, count);
    if (count <= line.packs || this.doubled.get(key) === run) return;
    this.doubled.set(key, run);
    const range = placeOf(run, k);
    this.tell('duplicate-card', range, {
      card: nameOf(ref),
      times: count,
      packs: line.packs,
      pile: line.pile,
    });
  }

  /** `full pack` says which cards, and neither their order nor that it is open. */
  private checkOrderSaid(line: PileLine, index: number, size: number): void {
    const { what, range } = line.runs[index];
    if ((what.is !== 'set' && what.is !== 'rest') || size < 2 || isSaid(line, index, 'order')) return;
    const end = { from: range.to, to: range.to };
    const fixes: Fix[] = [{ label: 'Add in any order', range: end, text: ' in any order' }];
    if (what.is === 'set' && what.tests.length === 0)
      fixes.push({ label: 'Add in new pack order', range: end, text: ' in new pack order' });
    this.diagnostics.push(diagnostic('set-up-order-not-said', range, { what: printWhat(what) }, { fixes }));
  }

  private checkSupply(tests: readonly Test[], range: Range, line: PileLine): void {
    if (tests.length === 0) return;
    const kind = printKind(tests, 'many');
    const count = (this.kinds.get(kind) ?? 0) + 1;
    this.kinds.set(kind, count);
    const most = this.knowledge.pips(tests).length * line.packs;
    if (count === most + 1 && most > 0)
      this.tell('set-up-more-than-a-pack', range, { kind, most }, 'warning');
  }

  /** Cards that may face either way cannot be mixed with cards that may not: which ones are free would depend on the order. */
  private checkFreeFaces(line: PileLine, faces: readonly Stretch[], orders: readonly Stretch[]): void {
    for (const order of orders) {
      const inside = faces.reduce((sum, face) => sum + overlap(order, face), 0);
      if (inside > 0 && inside < order.count)
        this.tell('set-up-faces-in-order', line.range, { pile: line.pile });
    }
  }

  private tell(
    code: string,
    range: Range,
    facts: Facts = {},
    severity: Diagnostic['severity'] = 'error',
  ): void {
    this.diagnostics.push(diagnostic(code, range, facts, { severity }));
  }
}

function kindsOf(what: What): (readonly Test[])[] {
  switch (what.is) {
    case 'count':
      return [what.tests];
    case 'pattern':
      return what.elements.flatMap((e) => (e.ref === null ? [[...what.tests, ...e.tests]] : []));
    case 'mates':
      return kindsOf(what.base);
    default:
      return [];
  }
}

/** How many cards the run asks for, where it says so itself. */
function sizeAsked(what: What): number {
  switch (what.is) {
    case 'count':
    case 'copies':
    case 'each':
    case 'pattern':
    case 'order':
      return what.n;
    case 'mates':
      return 2 * sizeAsked(what.base);
    case 'cards':
      return what.cards.length;
    case 'ranks':
    case 'set':
    case 'rest':
      return 1;
  }
}

export function nameOf(ref: CardRef): string {
  switch (ref.is) {
    case 'pip':
      return printCardName(ref.card);
    case 'own':
      return ref.name;
    case 'joker':
      return refKey(ref);
  }
}

/** Where the k-th card of a run is written, or the whole run. */
function placeOf({ what, range }: Run, k: number): Range {
  const list =
    what.is === 'cards' ? what.cards : what.is === 'mates' && what.base.is === 'cards' ? what.base.cards : [];
  return list[k]?.range ?? range;
}
