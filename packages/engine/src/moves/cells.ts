import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { NumberRef } from '../phrases/values.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf, type Layout } from '../pictures/layout.ts';

/** Cards laid out in rows and columns: each cell is a pile, `cell 2 3` the third from the left in the second row from the top. */
export function cellName(row: number, column: number, stem = 'cell'): string {
  return `${stem} ${row} ${column}`;
}

/** Rows one after the other from the left, or alternately from the left and from the right. */
export type LayWay = 'row by row' | 'rows alternately';

/** One card from the top of the pile to each cell. */
export function layRows(pile: string, rows: number, columns: number, way: LayWay, stem?: string): Action[] {
  const actions: Action[] = [];
  for (let row = 1; row <= rows; row++)
    for (let c = 1; c <= columns; c++) {
      const column = way === 'rows alternately' && row % 2 === 0 ? columns + 1 - c : c;
      actions.push(carry(pile, 0, 1, cellName(row, column, stem), 0));
    }
  return actions;
}

export interface Cell {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly size: number;
}

export function cellsOf(layout: Layout): Cell[] {
  return layout.names.flatMap((name) => {
    const found = /^cell (\d+) (\d+)$/.exec(name);
    return found === null
      ? []
      : [{ name, row: Number(found[1]), column: Number(found[2]), size: sizeOf(layout, name) }];
  });
}

export type Line = 'rows' | 'columns';
export type Outer = 'first' | 'last';

/**
 * Cells closed line by line and laid together on `to`: `first` and `closed` say which line lies uppermost and which card of each.
 */
export function closeLines(
  cells: readonly Cell[],
  line: Line,
  first: Outer,
  closed: Outer,
  to: string,
): Action[] {
  const outer = (cell: Cell): number => (line === 'rows' ? cell.row : cell.column);
  const inner = (cell: Cell): number => (line === 'rows' ? cell.column : cell.row);
  const sign = (end: Outer): number => (end === 'first' ? 1 : -1);
  const sorted = [...cells].sort(
    (a, b) => sign(first) * (outer(a) - outer(b)) || sign(closed) * (inner(a) - inner(b)),
  );
  const actions: Action[] = [];
  // From the bottom up, each cell on those gathered before.
  for (const { name, size } of sorted.reverse()) actions.push(carry(name, 0, size, to, 0));
  return actions;
}

export function noLayout(rows: NumberRef, columns: NumberRef): Trouble[] {
  return rows === 0 || columns === 0 ? [trouble('no-rows')] : [];
}
