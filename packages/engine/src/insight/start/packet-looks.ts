import type { Card } from '../../cards/card.ts';

/** How innocent a packet looks when it is spread face up. */
export interface PacketLooks {
  /** Neighbours that differ in colour, and how many neighbours there are. */
  readonly changes: number;
  readonly neighbours: number;
  /** The longest run of one colour, and of one suit; 0 where the cards have none. */
  readonly colourRun: number;
  readonly suitRun: number;
  /** Neighbours of one value, and neighbours whose values follow one another. */
  readonly twins: number;
  readonly steps: number;
}

export function looksOf(cards: readonly Card[]): PacketLooks {
  const pairs = cards.slice(1).map((card, i) => [cards[i], card] as const);
  const count = (test: (a: Card, b: Card) => boolean): number => pairs.filter(([a, b]) => test(a, b)).length;
  return {
    changes: count((a, b) => !isSame('colour', a, b)),
    neighbours: pairs.length,
    colourRun: longestRun(cards, 'colour'),
    suitRun: longestRun(cards, 'suit'),
    twins: count((a, b) => isSame('value', a, b)),
    steps: count(follow),
  };
}

function longestRun(cards: readonly Card[], attribute: string): number {
  let [longest, run] = [0, 0];
  cards.forEach((card, i) => {
    if (card.attributes[attribute] === undefined) return;
    run = i > 0 && isSame(attribute, cards[i - 1], card) ? run + 1 : 1;
    longest = Math.max(longest, run);
  });
  return longest;
}

function isSame(attribute: string, a: Card, b: Card): boolean {
  const value = a.attributes[attribute];
  return value !== undefined && value === b.attributes[attribute];
}

function follow(a: Card, b: Card): boolean {
  return Math.abs(Number(a.attributes.value) - Number(b.attributes.value)) === 1;
}

/** How strange a card is behind those before it, the nearest first: what eyes catch on is a run, a pair of twins or a sequence. */
export function strangeness(card: Card, before: readonly (Card | undefined)[]): number {
  let sum = 0;
  for (const [attribute, weight] of CAUGHT)
    for (let run = 0; run < before.length; run++) {
      const other = before[run];
      if (other === undefined || !isSame(attribute, other, card)) break;
      sum += weight * (run + 1);
    }
  const [last] = before;
  return last !== undefined && follow(last, card) ? sum + 1 : sum;
}

const CAUGHT: readonly (readonly [string, number])[] = [
  ['colour', 2],
  ['suit', 2],
  ['value', 3],
];
