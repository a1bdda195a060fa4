import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import type { Card } from '../cards/card.ts';
import { decide } from '../proving/decide.ts';
import type { Limits } from '../proving/question.ts';
import type { Ending, Lying, Routine } from '../routine/routine.ts';
import { Packets } from './packets.ts';
import { constantOf, shareOf, slotsOf, startNeed, type StartLine, type StartNeed } from './start-need.ts';

// States that counting and finding may remember.
const MOST_STATES = 200_000;

/** How many packets of the note's own cards will do; null where they could not be counted. */
export function countPackets(need: StartNeed): { readonly patterns: bigint; readonly orders: bigint } | null {
  return new Packets(need, need.starts.base.cards, MOST_STATES).count();
}

/** A set-up that was found: the routine with other cards, decided. */
export interface FoundSetUp {
  readonly routine: Routine;
  /** From the top of each pile, pile after pile in the order of their names. */
  readonly cards: readonly Card[];
}

/**
 * Lays out some of the cards at hand, facing as the set-up says, so that every sentence is proved. What is found has been decided as a
 * routine of its own.
 */
export function setUpFrom(
  routine: Routine,
  hand: readonly Card[],
  limits: Limits,
): Result<FoundSetUp, Trouble> {
  const places = routine.setUp.piles.reduce((sum, pile) => sum + pile.cards.length, 0);
  if (hand.length < places) return bad(trouble('set-up-too-few', { places, cards: hand.length }));
  const cards = hand.map((card, id): Card => ({ ...card, id }));
  const open = withCards(routine, cards.slice(0, places));
  // Cards that stay aside are known all the same: what counts as a class may depend on them.
  const need = startNeed({ ...open, cards }, limits);
  if (need === null) return bad(trouble('set-up-not-equations'));
  if (need.leftOut.length > 0)
    return bad(trouble('set-up-not-equations', { sentences: need.leftOut.map(({ text }) => text) }));
  const found = new Packets(need, cards, MOST_STATES).find();
  if (found === 'not found') return bad(trouble('set-up-not-found', { states: MOST_STATES }));
  if (found === 'none') return bad(reasonFor(need, cards));
  const made = withCards(routine, inOrderOfPiles(found.cards, need, routine));
  const { verdict } = decide(made, limits);
  // Which classes there are may change with the cards that are taken.
  if (verdict !== 'proved') return bad(trouble('set-up-not-found', { states: MOST_STATES }));
  return good({ routine: made, cards: found.cards });
}

/** Cards slot by slot, put back into the order of the note's piles. */
function inOrderOfPiles(cards: readonly Card[], { layout }: StartNeed, routine: Routine): Card[] {
  const bySlot = new Map<string, Card[]>();
  let slot = 0;
  layout.names.forEach((name, i) => {
    bySlot.set(name, cards.slice(slot, slot + layout.sizes[i]));
    slot += layout.sizes[i];
  });
  return routine.setUp.piles.flatMap(({ name }) => bySlot.get(name) ?? []);
}

/** The routine with these cards in place of its own, pile after pile as the note has them, each place facing as it did. */
export function withCards(routine: Routine, cards: readonly Card[]): Routine {
  let next = 0;
  const piles = routine.setUp.piles.map((pile) => ({
    name: pile.name,
    cards: pile.cards.map(({ up, end }): Lying => ({ card: next++, up, end })),
  }));
  return {
    ...routine,
    cards: cards.map((card, id) => ({ ...card, id })),
    setUp: { piles, freedoms: [] },
  };
}

/** The sentence that no packet of these cards satisfies; or that all of them together are too much. */
function reasonFor(need: StartNeed, cards: readonly Card[]): Trouble {
  const endings = [...new Set(need.lines.map(({ ending }) => ending))];
  const alone = endings.find((ending) => {
    const lines = need.lines.filter((line) => line.ending === ending);
    return new Packets({ lines, bits: need.bits }, cards, MOST_STATES).count()?.patterns === 0n;
  });
  return alone === undefined
    ? trouble('set-up-none-for-all', { sentences: endings.length })
    : trouble('set-up-none-for', { sentence: alone.text });
}

/** An equation that a packet breaks. */
export interface SetUpFault {
  readonly ending: Ending;
  readonly line: StartLine;
  /** Slots of the start that the equation speaks of. */
  readonly slots: readonly number[];
}

/**
 * Equations that the cards, lying as in the routine's set-up, do not satisfy; those that speak of the fewest cards first. Empty when the
 * ending is certain, as far as it is said in equations.
 */
export function faultsOf(need: StartNeed): SetUpFault[] {
  const { cards, bits } = need.starts.base;
  return need.lines
    .filter(
      (line) =>
        cards.reduce(
          (sum, card, slot) => (sum + shareOf(line, slot, card, bits[slot])) % line.problem.p,
          constantOf(line),
        ) !== 0,
    )
    .map((line) => ({ ending: line.ending, line, slots: slotsOf(line) }))
    .sort((a, b) => a.slots.length - b.slots.length || (a.slots[0] ?? 0) - (b.slots[0] ?? 0));
}
