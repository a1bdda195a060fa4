import type { Card } from '../cards/card.ts';
import { shortName } from '../cards/show.ts';
import { newPackPlace, type FoundSetUp } from '../insight/start/set-up-search.ts';
import { blocksIn, handlingsOfBlocks, handlingsOfPackets, packetsIn } from '../insight/start/stacking.ts';
import { list } from './places.ts';
import { nameTrait } from './traits.ts';
import { counted } from './words.ts';

/** How to lay out a packet with one's hands. */
export interface StackingSteps {
  /** Cards or blocks picked up and laid down. */
  readonly handlings: number;
  readonly steps: readonly string[];
}

/** From the cards at hand in new-pack order; null where they have no place in it or are several of a kind. */
export function fromNewPack({ cards, hand }: FoundSetUp): StackingSteps | null {
  const placeOf = newPackPlace(hand);
  if (placeOf === null) return null;
  const places = cards.map(placeOf);
  const order = [...hand].sort((a, b) => placeOf(a) - placeOf(b));
  const begin =
    cards.length === hand.length
      ? `Have the ${counted(hand.length, 'card')} in new-pack order, ${shortName(order[0])} on top.`
      : `Have the cards at hand in new-pack order, ${shortName(order[0])} on top; ${cards.length} of the ${hand.length} are used.`;
  const byBlocks = inBlocks(cards, places);
  const byPackets = fromPackets(cards, places);
  const best = byPackets.handlings < byBlocks.handlings ? byPackets : byBlocks;
  return { handlings: best.handlings, steps: [begin, ...best.steps] };
}

/** Stretches of the order at hand, lifted one after another, each put beneath the one before. */
function inBlocks(cards: readonly Card[], places: readonly number[]): StackingSteps {
  const blocks = blocksIn(places);
  const handlings = handlingsOfBlocks(blocks);
  if (handlings === 0) return { handlings, steps: ['That is the set-up already.'] };
  const said = blocks.map(({ from, to, by }) => {
    const [first, last] = [shortName(cards[from]), shortName(cards[to])];
    if (from === to) return first;
    // Dealing one by one is what turns an order round.
    return by > 0 ? `${first} to ${last}` : `${first} to ${last} (the other way round: deal them singly)`;
  });
  return {
    handlings,
    steps: [`Lay these beneath one another, from the top of the packet down: ${said.join(', ')}.`],
  };
}

/** The order is cut into packets, and their top cards are taken now from one, now from another. */
function fromPackets(cards: readonly Card[], places: readonly number[]): StackingSteps {
  const packeted = packetsIn(places);
  const { packets, taken } = packeted;
  const names = packets.map(({ first, last }) =>
    first === last ? shortName(cards[first]) : `${shortName(cards[first])} to ${shortName(cards[last])}`,
  );
  return {
    handlings: handlingsOfPackets(packeted),
    steps: [
      `Take out ${counted(packets.length, 'packet')}, each as it lies: ${names.map((name, k) => `${k + 1}: ${name}`).join('; ')}.`,
      `Take the top cards of these, each to lie beneath the one before: ${sayTaking(taken, (k) => `packet ${k + 1}`)}.`,
    ],
  };
}

/** From the cards at hand in any order: sorted into heaps of cards that are alike, then laid from these. */
export function fromShuffled({ cards, hand, classOf }: FoundSetUp): StackingSteps {
  const used = [...new Set(cards.map(classOf))];
  const all = new Set(hand.map(classOf));
  if (all.size === 1) return { handlings: 0, steps: ['Any order of these cards will do.'] };
  const name = (c: number): string => {
    const trait = nameTrait({ bits: [], of: (card) => (classOf(card) === c ? 1 : 0) }, hand);
    const names = [...new Set(hand.filter((card) => classOf(card) === c).map(shortName))];
    if (names.length === 1) return names[0];
    return trait.many.startsWith('cards among') ? names.join(' or ') : trait.many;
  };
  const names = new Map(used.map((c) => [c, name(c)]));
  const size = (c: number): number => cards.filter((card) => classOf(card) === c).length;
  const handlings = hand.length + cards.length;
  if (used.length > MOST_HEAPS) {
    const wanted = cards.map((card) => names.get(classOf(card)));
    return { handlings, steps: [`Look these out and lay them beneath one another: ${wanted.join(', ')}.`] };
  }
  const heaps = used.map((c) => `${size(c)} ${/ or /.test(names.get(c) ?? '') ? 'of ' : ''}${names.get(c)}`);
  const taking = sayTaking(
    cards.map((card) => used.indexOf(classOf(card))),
    (k) => `heap ${k + 1}`,
  );
  return {
    handlings,
    steps: [
      `Go through the cards and sort them into ${counted(used.length, 'heap')}, each in any order: ${heaps.map((words, k) => `${k + 1}: ${words}`).join('; ')}.${all.size > used.length || hand.length > cards.length ? ' The others stay aside.' : ''}`,
      `Take cards from the heaps, each to lie beneath the one before: ${taking}.`,
    ],
  };
}

// More heaps than that are more trouble than looking out each card.
const MOST_HEAPS = 6;

/** `packet 1 and packet 2 in turn`, or run by run. */
function sayTaking(taken: readonly number[], name: (k: number) => string): string {
  const distinct = [...new Set(taken)];
  const k = distinct.length;
  const isInTurn =
    k > 1 && taken.every((one, i) => one === taken[i % k]) && new Set(taken.slice(0, k)).size === k;
  if (isInTurn) return `one each from ${list(taken.slice(0, k).map(name))} in turn, to the end`;
  const runs: { from: number; many: number }[] = [];
  for (const one of taken) {
    const last = runs.at(-1);
    if (last !== undefined && last.from === one) last.many++;
    else runs.push({ from: one, many: 1 });
  }
  const isSingle = runs.every(({ many }) => many === 1);
  return runs
    .map(({ from, many }) => (isSingle ? name(from).replace(/^\D+/, '') : `${many} from ${name(from)}`))
    .join(isSingle ? ' ' : ', ');
}
