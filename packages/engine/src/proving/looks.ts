import { followers } from '../routine/program.ts';
import type { Graph } from '../routine/graph.ts';

/** What the working's own looks tell cards apart by. */
export function looksOf(graph: Graph): { attributes: Set<string>; bits: Set<string> } {
  const attributes = new Set<string>();
  const bits = new Set<string>();
  const seen = new Set<number>([graph.program.start]);
  for (const at of seen) {
    const instruction = graph.program.instructions[at];
    if (instruction.do === 'move' && instruction.move.looks !== undefined) {
      for (const name of instruction.move.looks.attributes(instruction.args)) attributes.add(name);
      for (const name of instruction.move.looks.bits(instruction.args)) bits.add(name);
    }
    for (const next of followers(instruction)) seen.add(next);
  }
  return { attributes, bits };
}
