import type { LaidCard, Table } from '../packages/engine/testing/packets.ts';

/**
 * Tables drawn with letters only, so that they look alike in any editor and in print: a line for each pile, its top card on the
 * left; `[3]` lies face up, `3'` is turned end for end, `3(chosen)` is marked. A layout is drawn as it lies on the table.
 */
export function draw(tables: readonly (readonly [label: string, table: Table])[]): string {
  const all = tables.flatMap(([, { piles }]) => [...piles.values()].flat());
  const width = Math.max(...all.map((card) => wordOf(card).length), 3);
  const names = tables.flatMap(([, { piles }]) => [...piles.keys()].filter((name) => cellOf(name) === null));
  const title = Math.max(...names.map((name) => name.length), 0);
  const label = Math.max(...tables.map(([text]) => text.length));
  const lines = tables.flatMap(([text, table]) =>
    linesOf(table, title, width).map((line, i) =>
      `${(i === 0 ? text : '').padEnd(label)}  ${line}`.trimEnd(),
    ),
  );
  return lines.join('\n');
}

function linesOf({ piles, numbers }: Table, title: number, width: number): string[] {
  const filled = [...piles].filter(([, cards]) => cards.length > 0);
  const lines = filled
    .filter(([name]) => cellOf(name) === null)
    .map(([name, cards]) => `${name.padEnd(title)}  ${rowOf(cards, width)}`);
  const named = Object.entries(numbers).map(
    ([name, n]) => `${name.length === 1 ? name.toUpperCase() : name} = ${n}`,
  );
  const all = [...lines, ...gridOf(filled, width), ...(named.length === 0 ? [] : [named.join(', ')])];
  return all.length === 0 ? ['no cards'] : all;
}

function rowOf(cards: readonly LaidCard[], width: number): string {
  return cards.map((card) => wordOf(card).padEnd(width)).join(' ');
}

/** The cells of a layout, row by row; a heap in one cell is written from its top, an empty cell as a dot. */
function gridOf(piles: readonly (readonly [string, readonly LaidCard[]])[], width: number): string[] {
  const cells = piles.flatMap(([name, cards]) => {
    const cell = cellOf(name);
    return cell === null ? [] : [{ ...cell, text: rowOf(cards, 0) }];
  });
  if (cells.length === 0) return [];
  const wide = Math.max(width, ...cells.map(({ text }) => text.length));
  const rows = Math.max(...cells.map(({ row }) => row));
  const columns = Math.max(...cells.map(({ column }) => column));
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => {
      const found = cells.find(({ row, column }) => row === r + 1 && column === c + 1);
      return (found?.text ?? ' .').padEnd(wide);
    }).join('  '),
  );
}

function cellOf(name: string): { row: number; column: number } | null {
  const found = /^cell (\d+) (\d+)$/.exec(name);
  return found === null ? null : { row: Number(found[1]), column: Number(found[2]) };
}

function wordOf({ card, bits }: LaidCard): string {
  const marks = [...bits].filter((bit) => bit !== 'up' && bit !== 'end').sort();
  const word = card.name + (bits.has('end') ? "'" : '') + marks.map((mark) => `(${mark})`).join('');
  return bits.has('up') ? `[${word}]` : ` ${word} `;
}
