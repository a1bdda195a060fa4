import { Budget } from '../../base/budget.ts';
import { trouble, type Trouble } from '../../base/diagnostic.ts';
import { bad, good, type Result } from '../../base/result.ts';
import type { Card } from '../../cards/card.ts';
import { newPackOrder } from '../../cards/stacks.ts';
import { printCardName } from '../../cards/names.ts';
import { layoutOf, type Layout } from '../../pictures/layout.ts';
import { decide } from '../../proving/decide.ts';
import type { Decision } from '../../proving/decision.ts';
import { DEFAULT_LIMITS, type Limits } from '../../proving/question.ts';
import type { Lying, Routine } from '../../routine/routine.ts';
import { startsOf } from '../../routine/starts.ts';
import { Packets } from './packets.ts';
import { inBlocks, inHeaps, INNOCENT, inOrderOf, packetFor, type Wish } from './packet-search.ts';
import { handlingsFrom } from './stacking.ts';
import { openFaces, startNeed, type StartNeed } from './start-need.ts';

// States that counting and finding may remember.
const MOST_STATES = 200_000;

/** How many packets of the note's own cards will do; null where they could not be counted. */
export function countPackets(
  need: StartNeed,
  limits: Limits = DEFAULT_LIMITS,
): { readonly patterns: bigint; readonly orders: bigint } | null {
  return new Packets(need, need.starts.base.cards, budgetFor(limits)).count();
}

function budgetFor({ goOn }: Limits): Budget {
  return new Budget(MOST_STATES, goOn);
}

/** What a set-up was sought for. */
export type SoughtFor = 'looks' | 'new pack' | 'shuffled';

/** A set-up that was found: the routine with other cards, decided. */
export interface FoundSetUp {
  readonly for: SoughtFor;
  readonly routine: Routine;
  readonly decision: Decision;
  /** From the top of each pile, in the order of the note's piles. */
  readonly cards: readonly Card[];
  /** Cards of one number are alike for all that the working needs. */
  readonly classOf: (card: Card) => number;
  /** All cards at hand, those that stay aside too. */
  readonly hand: readonly Card[];
}

/**
 * Lays out some of the cards at hand, facing as the set-up says, so that every sentence is proved: as innocent to look at as can be,
 * in as few blocks of new-pack order as can be, and in as few heaps of cards that are alike. What is found has been decided as a
 * routine of its own; those that are the same are told once.
 */
export function setUpsFrom(
  routine: Routine,
  hand: readonly Card[],
  limits: Limits,
): Result<FoundSetUp[], Trouble> {
  const places = routine.setUp.piles.reduce((sum, pile) => sum + pile.cards.length, 0);
  if (hand.length < places) return bad(trouble('set-up-too-few', { places, cards: hand.length }));
  const cards = hand.map((card, id): Card => ({ ...card, id }));
  const open = withCards(routine, cards.slice(0, places));
  // Cards that stay aside are known all the same: what counts as a class may depend on them.
  const need = startNeed({ ...open, cards }, limits);
  // Without equations nothing is known but by deciding what is laid.
  const isKnown = need !== null && need.leftOut.length < routine.endings.length;
  const { lines, bits, layout } = need ?? unasked(open);
  const packets = new Packets({ lines, bits }, cards, budgetFor(limits));
  const classes = packets.classNumbers();
  const classOf = (card: Card): number => classes.get(card.id) ?? 0;
  const place = newPackPlace(cards);
  const wishes: (readonly [SoughtFor, Wish])[] = [
    ['looks', INNOCENT],
    ...(place === null ? [] : [['new pack', inBlocks(place)] as const]),
    ['shuffled', inHeaps(classOf)],
  ];
  const nearest = (laid: readonly Card[]): readonly Card[] => {
    if (place === null) return laid;
    const sorted = inOrderOf(packets, laid, place);
    return handlingsFrom(sorted.map(place)) < handlingsFrom(laid.map(place)) ? sorted : laid;
  };
  const found: FoundSetUp[] = [];
  for (const [wanted, wish] of wishes) {
    const laid = packetFor(packets, wish);
    if (laid === 'not found') return bad(trouble('set-up-not-found', { states: MOST_STATES }));
    if (laid === 'none') return bad(reasonFor({ lines, bits }, cards, limits));
    const ordered = inOrderOfPiles(wanted === 'new pack' ? nearest(laid) : laid, layout, routine);
    if (found.some((other) => other.cards.every((card, i) => card === ordered[i]))) continue;
    const made = withCards(routine, ordered);
    const decision = decide(made, limits);
    // Which classes there are may change with the cards that are taken; and sentences that are no equations were not looked at.
    if (decision.verdict !== 'proved') continue;
    found.push({ for: wanted, routine: made, decision, cards: ordered, classOf, hand: cards });
  }
  if (found.length > 0) return good(found);
  return bad(
    isKnown ? trouble('set-up-not-found', { states: MOST_STATES }) : trouble('set-up-not-equations'),
  );
}

/** A start of which nothing is asked. */
function unasked(routine: Routine): Pick<StartNeed, 'lines' | 'bits' | 'layout'> {
  const layout = layoutOf(routine.setUp.piles.map(({ name, cards }) => [name, cards.length] as const));
  return { lines: [], bits: Array.from(startsOf(routine).base.bits), layout };
}

/** Where a card lies in new-pack order among those at hand; null where some have no place in it or two have the same. */
export function newPackPlace(hand: readonly Card[]): ((card: Card) => number) | null {
  const pack = newPackOrder().map(printCardName);
  const order = hand
    .map((card) => ({ id: card.id, place: pack.indexOf(card.name) }))
    .sort((a, b) => a.place - b.place);
  if (order.some(({ place }, i) => place < 0 || place === order[i + 1]?.place)) return null;
  const rank = new Map(order.map(({ id }, i) => [id, i]));
  return (card) => rank.get(card.id) ?? -1;
}

/** Cards slot by slot, put back into the order of the note's piles. */
function inOrderOfPiles(cards: readonly Card[], layout: Layout, routine: Routine): Card[] {
  const bySlot = new Map<string, readonly Card[]>();
  let slot = 0;
  layout.names.forEach((name, i) => {
    bySlot.set(name, cards.slice(slot, slot + layout.sizes[i]));
    slot += layout.sizes[i];
  });
  return routine.setUp.piles.flatMap(({ name }) => bySlot.get(name) ?? []);
}

/**
 * The routine with these cards in place of its own, pile after pile as the note has them, each place facing as it did, or as `lying`
 * says for each card.
 */
export function withCards(
  routine: Routine,
  cards: readonly Card[],
  lying?: readonly Pick<Lying, 'up' | 'end'>[],
): Routine {
  let next = 0;
  const piles = routine.setUp.piles.map((pile) => ({
    name: pile.name,
    cards: pile.cards.map(({ up, end }): Lying => {
      const card = next++;
      return { card, up: lying?.[card].up ?? up, end: lying?.[card].end ?? end };
    }),
  }));
  // Where it is said how the cards lie, nothing about that is open.
  const freedoms = lying === undefined ? openFaces(routine) : [];
  return { ...routine, cards: cards.map((card, id) => ({ ...card, id })), setUp: { piles, freedoms } };
}

/** The sentence that no packet of these cards satisfies; or that all of them together are too much. */
function reasonFor(need: Pick<StartNeed, 'lines' | 'bits'>, cards: readonly Card[], limits: Limits): Trouble {
  const endings = [...new Set(need.lines.map(({ ending }) => ending))];
  const alone = endings.find((ending) => {
    const lines = need.lines.filter((line) => line.ending === ending);
    return new Packets({ lines, bits: need.bits }, cards, budgetFor(limits)).count()?.patterns === 0n;
  });
  return alone === undefined
    ? trouble('set-up-none-for-all', { sentences: endings.length })
    : trouble('set-up-none-for', { sentence: alone.text });
}
