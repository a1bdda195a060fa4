import type { Card } from '../cards/card.ts';
import type { TableView } from './move.ts';

/** What moves that look at cards have in common. */

/** The card with a mark, wherever it lies; the first in order of piles if several have it. */
export function marked(mark: string, table: TableView): Card | undefined {
  for (let i = 0; i < table.layout.names.length; i++)
    for (let place = 0; place < table.layout.sizes[i]; place++)
      if (table.bitAt(table.layout.names[i], place, mark) === 1)
        return table.cardAt(table.layout.names[i], place);
  return undefined;
}

/** The value a card counts for, courts at most `courts`; 0 for a card without a value. */
export function valueCounted(card: Card | undefined, courts: number | undefined): number {
  const value = Number(card?.attributes.value ?? 0);
  if (!Number.isInteger(value) || value < 0) return 0;
  return courts !== undefined && value > 10 ? courts : value;
}
