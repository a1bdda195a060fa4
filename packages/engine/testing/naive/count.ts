import type { Node, Walk } from './walk.ts';

/**
 * How many performances there are from one start: different sequences of choices that come to an end, stuck ones included;
 * null when a repetition makes them endless.
 */
export function performances(walk: Walk): bigint | null {
  const ends = (node: Node): boolean => node.is !== 'ways';
  const before = new Map<Node, Node[]>();
  for (const node of walk.nodes) for (const to of node.to) before.set(to, [...(before.get(to) ?? []), node]);
  // A circle matters only when one can leave it for an end.
  const live = new Set<Node>(walk.nodes.filter(ends));
  for (const node of live) for (const earlier of before.get(node) ?? []) live.add(earlier);
  const waiting = new Map([...live].map((node) => [node, node.to.filter((to) => live.has(to)).length]));
  const ready = [...live].filter((node) => waiting.get(node) === 0);
  const count = new Map<Node, bigint>();
  for (let node = ready.pop(); node !== undefined; node = ready.pop()) {
    const sum = node.to.reduce((total, to) => total + (count.get(to) ?? 0n), 0n);
    count.set(node, ends(node) ? 1n : sum);
    for (const earlier of before.get(node) ?? []) {
      const left = waiting.get(earlier)! - 1;
      waiting.set(earlier, left);
      if (left === 0) ready.push(earlier);
    }
  }
  return count.size < live.size ? null : (count.get(walk.root) ?? 0n);
}
