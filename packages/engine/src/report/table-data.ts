import type { Card } from '../cards/card.ts';
import { shortName, showCard } from '../cards/show.ts';
import type { Graph } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import type { Layout } from '../pictures/layout.ts';

/** One card as it lies, for people and for pictures. */
export interface CardData {
  /** The same card keeps its number through a whole performance. */
  readonly id: number;
  readonly name: string;
  /** The name in a word: `10C`, `r3`. */
  readonly short: string;
  /** As it lies: `10C^'(chosen)`, ^ face up, ' ends exchanged, marks in brackets. */
  readonly text: string;
  readonly colour: string | null;
  readonly up: boolean;
  /** Ends exchanged. */
  readonly end: boolean;
  /** Marks that were put on it, such as `chosen`. */
  readonly marks: readonly string[];
}

export interface PileData {
  readonly name: string;
  /** True for a packet that only exists while hands are at work; it is gone when the step ends. */
  readonly passing: boolean;
  /** From the top: `10C 4D^`, ^ face up, ' ends exchanged, a mark in brackets. */
  readonly text: string;
  readonly cards: readonly CardData[];
}

/** Everything that lies on the table, piles in the order of their names, cards from the top. */
export interface TableData {
  readonly piles: readonly PileData[];
  /** Numbers that were named and are still needed. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** A concrete table in a layout. */
export function tableData(
  table: TableSlots,
  layout: Layout,
  graph: Graph,
  numbers: Readonly<Record<string, number>> = {},
): TableData {
  let slot = 0;
  const piles = layout.names.map((name, i): PileData => {
    const cards = Array.from({ length: layout.sizes[i] }, () => {
      const card = cardData(table.cards[slot], table.bits[slot], graph);
      slot++;
      return card;
    });
    const passing = name.startsWith('~');
    return {
      name: passing ? name.slice(1) : name,
      passing,
      text: cards.map(({ text }) => text).join(' '),
      cards,
    };
  });
  const named = Object.entries(numbers).filter(
    ([name]) => !name.startsWith('~') && !name.startsWith('that '),
  );
  return { piles, numbers: Object.fromEntries(named) };
}

function cardData(card: Card, bits: number, graph: Graph): CardData {
  const up = (bits & 1) as 0 | 1;
  const end = ((bits >>> 1) & 1) as 0 | 1;
  const marks = graph.bits.names.filter((_, kind) => kind > 1 && ((bits >>> kind) & 1) === 1);
  const { colour } = card.attributes;
  return {
    id: card.id,
    name: card.name,
    short: shortName(card),
    text: showCard({ card, up, end }) + marks.map((name) => `(${name})`).join(''),
    colour: colour === undefined ? null : String(colour),
    up: up === 1,
    end: end === 1,
    marks,
  };
}
