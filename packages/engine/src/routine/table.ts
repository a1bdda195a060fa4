import type { Card } from '../cards/card.ts';
import type { SlotView } from '../claims/formula.ts';
import type { Key, TableView } from '../moves/move.ts';
import { applyOp } from '../pictures/effect.ts';
import { firstSlot, type Layout } from '../pictures/layout.ts';
import type { Edge, Graph, Location } from './graph.ts';
import type { TableSlots } from './starts.ts';

/** The table after an edge, every card followed. */
export function afterEdge(table: TableSlots, edge: Edge): TableSlots {
  const { from, ops } = edge.effect;
  const cards = Array.from(from, (old) => table.cards[old]);
  const bits = Uint32Array.from(from, (old, slot) => {
    const word = table.bits[old];
    return ops === null || ops[slot] === 0 ? word : applyOps(word, ops[slot]);
  });
  return { cards, bits };
}

/** All bits of one card under a word of two-bit operations. */
export function applyOps(word: number, ops: number): number {
  for (let kind = 0; ops >>> (2 * kind) !== 0 && kind < 16; kind++) {
    const op = (ops >>> (2 * kind)) & 3;
    if (op === 0) continue;
    const bit = applyOp((word >>> kind) & 1, op);
    word = bit === 1 ? word | (1 << kind) : word & ~(1 << kind);
  }
  return word >>> 0;
}

/** A concrete table as formulas see it. */
export function slotView(table: TableSlots, graph: Graph): SlotView {
  return {
    card: (slot) => table.cards[slot],
    bit: (slot, bit) => (table.bits[slot] >>> graph.bits.indexOf(bit)) & 1,
  };
}

/** A concrete table as a move that looks sees it. */
export function tableView(table: SlotView, layout: Layout): TableView {
  return {
    layout,
    cardAt: (pile: string, place: number): Card => table.card(firstSlot(layout, pile) + place),
    bitAt: (pile: string, place: number, bit: string) => table.bit(firstSlot(layout, pile) + place, bit),
  };
}

/** What the move at this location sees on this table; undefined where it does not look. */
export function seenAt(graph: Graph, location: Location, table: SlotView): Key | undefined {
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move' || instruction.move.looks === undefined) return undefined;
  return instruction.move.looks.observe(
    instruction.args,
    tableView(table, location.layout),
    graph.view(location),
  );
}
