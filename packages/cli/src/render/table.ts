import type { CardData, PileData, TableData } from '@foregone/engine';
import type { Colours } from '../terminal.ts';

/** A card in the terminal: red cards in red where there are colours, face up underlined and with ^. */
function paint(card: CardData, colours: Colours): string {
  const coloured = card.colour === 'red' ? colours.red(card.text) : card.text;
  return card.up ? colours.underline(coloured) : coloured;
}

/** Piles line by line, from the top, wrapped under their names. */
export function drawTable(table: TableData, colours: Colours, width: number, indent: number): string {
  const piles = table.piles.filter(({ cards }) => cards.length > 0);
  const longest = Math.max(0, ...piles.map(({ name }) => name.length));
  const lines = piles.map((pile) => drawPile(pile, longest, colours, width, indent));
  const numbers = Object.entries(table.numbers).map(
    ([name, n]) => `${name.length === 1 ? name.toUpperCase() : name} = ${n}`,
  );
  const empty = piles.length === 0 ? [`${' '.repeat(indent)}no cards`] : [];
  return [
    ...lines,
    ...empty,
    ...(numbers.length > 0 ? [`${' '.repeat(indent)}${numbers.join(', ')}`] : []),
  ].join('\n');
}

function drawPile(pile: PileData, longest: number, colours: Colours, width: number, indent: number): string {
  const lead = `${' '.repeat(indent)}${pile.name.padEnd(longest)}  `;
  const rows: string[] = [];
  let row: string[] = [];
  let used = lead.length;
  for (const card of pile.cards) {
    if (row.length > 0 && used + card.text.length + 1 > width) {
      rows.push(row.join(' '));
      row = [];
      used = lead.length;
    }
    row.push(paint(card, colours));
    used += card.text.length + 1;
  }
  rows.push(row.join(' '));
  return lead + rows.join(`\n${' '.repeat(lead.length)}`);
}

export const LEGEND = "cards from the top; ^ face up, ' ends exchanged";
