/**
 * Finds the circles in a graph of files: for each group of files that all reach one another, a shortest way round.
 *
 * @param edges every file with the files it imports; targets that are not keys are ignored
 * @returns circles as lists whose last file imports the first, each starting at its alphabetically first file
 */
export function circles(edges: ReadonlyMap<string, Iterable<string>>): string[][] {
  const found: string[][] = [];
  const settled = new Set<string>();
  for (const start of [...edges.keys()].toSorted()) {
    if (settled.has(start)) continue;
    const circle = shortestWayBack(start, edges);
    if (circle === undefined) continue;
    found.push(circle);
    const reachable = reach(start, edges);
    for (const file of reachable) if (reach(file, edges).has(start)) settled.add(file);
  }
  return found;
}

/** Breadth-first from a file until something imports that file again. */
function shortestWayBack(start: string, edges: ReadonlyMap<string, Iterable<string>>): string[] | undefined {
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (const file of queue) {
    for (const next of edges.get(file) ?? []) {
      if (next === start) {
        const circle = [file];
        while (circle[0] !== start) circle.unshift(cameFrom.get(circle[0]) ?? start);
        return circle;
      }
      if (!edges.has(next) || cameFrom.has(next)) continue;
      cameFrom.set(next, file);
      queue.push(next);
    }
  }
  return undefined;
}

function reach(start: string, edges: ReadonlyMap<string, Iterable<string>>): Set<string> {
  const seen = new Set<string>();
  const queue = [start];
  for (const file of queue) {
    for (const next of edges.get(file) ?? []) {
      if (!edges.has(next) || seen.has(next)) continue;
      seen.add(next);
      queue.push(next);
    }
  }
  return seen;
}
