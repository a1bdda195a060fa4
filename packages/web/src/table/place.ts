import type { PileData, TableData } from '@foregone/engine';

/** Where a card lies and how: pixels from the upper left of the table, `turn` 0 face down to 1 face up, `spin` in degrees. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly turn: number;
  readonly spin: number;
}

export interface PlacedPile {
  readonly name: string;
  readonly count: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface Placed {
  readonly poses: ReadonlyMap<number, Pose>;
  readonly piles: readonly PlacedPile[];
  readonly height: number;
}

const GAP = 12;
const LABEL = 30;
// A card of which less than this share shows could not be told or touched, so a pile goes on in another row.
const LEAST_SHOWN = 0.24;

/**
 * Cards are as large as the table allows, between what a thumb and what a projector need: few enough for one row are as wide as the
 * row lets them be.
 */
export function cardWidthFor(width: number, cards: number): number {
  const many = Math.min(84, width / 14);
  const few = Math.min(120, width / (cards + 2) - GAP);
  return Math.round(Math.max(44, many, few));
}

/** Piles side by side, each a spread row from its top card at the left; what does not fit goes on below. */
export function place(table: TableData, width: number): Placed {
  const total = table.piles.reduce((sum, pile) => sum + pile.cards.length, 0);
  const card = cardWidthFor(width, total);
  const height = card * (10 / 7);
  const piles = table.piles.filter((pile) => pile.cards.length > 0);
  const columns = Math.max(1, Math.min(piles.length, Math.floor(width / (card * 2.4))));
  const columnWidth = (width - GAP * (columns - 1)) / columns;
  const poses = new Map<number, Pose>();
  const placed: PlacedPile[] = [];
  let y = LABEL;
  let z = 0;
  for (let first = 0; first < piles.length; first += columns) {
    let lowest = y;
    piles.slice(first, first + columns).forEach((pile, column) => {
      const x = column * (columnWidth + GAP);
      const rows = rowsFor(pile, columnWidth, card);
      const perRow = Math.ceil(pile.cards.length / rows);
      const step = perRow < 2 ? 0 : Math.min(card + GAP, (columnWidth - card) / (perRow - 1));
      pile.cards.forEach(({ id, up, end }, i) => {
        const row = Math.floor(i / perRow);
        poses.set(id, {
          x: x + (i % perRow) * step,
          y: y + row * (height + GAP / 2),
          z: z + i,
          turn: up ? 1 : 0,
          spin: end ? 180 : 0,
        });
      });
      z += pile.cards.length;
      placed.push({
        name: pile.passing ? '' : pile.name,
        count: pile.cards.length,
        x,
        y: y - LABEL,
        width: columnWidth,
      });
      lowest = Math.max(lowest, y + rows * (height + GAP / 2));
    });
    y = lowest + LABEL + GAP;
  }
  return { poses, piles: placed, height: y };
}

function rowsFor(pile: PileData, width: number, card: number): number {
  const most = Math.max(1, Math.floor((width - card) / (card * LEAST_SHOWN)) + 1);
  return Math.max(1, Math.ceil(pile.cards.length / most));
}
