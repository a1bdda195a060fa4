import { printPile } from '../phrases/blanks/pile.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import type { Layout } from '../pictures/layout.ts';

/** Pile and place (from the top, 1 first) of every slot. */
export interface Place {
  readonly pile: string;
  readonly place: number;
}

export function placesIn(layout: Layout): Place[] {
  return layout.names.flatMap((name, i) =>
    Array.from({ length: layout.sizes[i] }, (_, k) => ({ pile: name.replace(/^~/, ''), place: k + 1 })),
  );
}

/** `a`, `a and b`, `a, b and c`. */
export function list(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** Slots in words: `place 3`, `places 1 to 4 and 9`, `the odd places`, `every place`; with the pile where there are several. */
export function sayPlaces(slots: readonly number[], layout: Layout): string {
  const places = placesIn(layout);
  const several = layout.names.length > 1;
  const sorted = [...slots].sort((a, b) => a - b);
  if (several && sorted.length === places.length) return 'every place of all piles';
  const byPile = new Map<string, number[]>();
  for (const slot of sorted) {
    const { pile, place } = places[slot];
    const known = byPile.get(pile);
    if (known === undefined) byPile.set(pile, [place]);
    else known.push(place);
  }
  const sizes = new Map(layout.names.map((name, i) => [name.replace(/^~/, ''), layout.sizes[i]]));
  const parts = [...byPile].map(([pile, found]) => {
    const words = sayNumbers(found, sizes.get(pile) ?? 0);
    return several ? `${words} of ${printPile(pile)}` : words;
  });
  return list(parts);
}

/** The same after a verb: `at place 3`, `in the left`, `in all piles`. */
export function sayWhere(slots: readonly number[], layout: Layout): string {
  const places = placesIn(layout);
  const piles = new Set(slots.map((slot) => places[slot].pile));
  const isWhole = slots.length === places.filter(({ pile }) => piles.has(pile)).length;
  if (!isWhole) return `at ${sayPlaces(slots, layout)}`;
  if (piles.size === 1) return `in ${printPile([...piles][0])}`;
  return slots.length === places.length ? 'in all piles' : `in ${list([...piles].map(printPile))}`;
}

function sayNumbers(found: readonly number[], size: number): string {
  if (found.length === 1) return size === 1 ? 'the one place' : `place ${found[0]}`;
  if (found.length === size) return 'every place';
  const halves = Math.ceil(size / 2);
  if (size >= 6 && found.length === halves && found.every((p) => p % 2 === 1)) return 'the odd places';
  if (size >= 6 && found.length === size - halves && found.every((p) => p % 2 === 0))
    return 'the even places';
  const step = found[1] - found[0];
  const isSteady =
    found.every((place, i) => place === found[0] + i * step) && found[found.length - 1] + step > size;
  if (step > 1 && found.length > 2 && isSteady && found[0] <= step)
    return `every ${printOrdinal(step)} place from ${found[0]} on`;
  const runs: { from: number; to: number }[] = [];
  for (const place of found) {
    const last = runs[runs.length - 1];
    if (last !== undefined && last.to === place - 1) last.to = place;
    else runs.push({ from: place, to: place });
  }
  const words = runs.flatMap(({ from, to }) => {
    if (to === from) return [String(from)];
    return to === from + 1 ? [String(from), String(to)] : [`${from} to ${to}`];
  });
  return `places ${list(words)}`;
}

/** Pairs of slots in words: `places 1 and 16, 2 and 15, and so on to 8 and 9`. */
export function sayPairs(pairs: readonly (readonly [number, number])[], layout: Layout): string {
  const places = placesIn(layout);
  const several = layout.names.length > 1;
  const say = (slot: number): string =>
    several ? `${places[slot].place} of ${places[slot].pile}` : `${places[slot].place}`;
  const words = pairs.map(([a, b]) => `${say(a)} and ${say(b)}`);
  if (pairs.length > 3) {
    const [da, db] = [pairs[1][0] - pairs[0][0], pairs[1][1] - pairs[0][1]];
    const isRegular = pairs.every(([a, b], i) => a === pairs[0][0] + i * da && b === pairs[0][1] + i * db);
    const sides = [0, 1].every((side) => new Set(pairs.map((pair) => places[pair[side]].pile)).size === 1);
    if (isRegular && sides) return `places ${words[0]}, ${words[1]}, and so on to ${words[words.length - 1]}`;
  }
  return `places ${words.join(', ')}`;
}

/** How far apart: k, where the sets are all the places of the one pile that are a multiple of k from one another. */
export function apart(sets: readonly (readonly number[])[], layout: Layout): number | undefined {
  const k = sets.length;
  if (layout.names.length !== 1 || k < 2) return undefined;
  const size = layout.sizes[0];
  const isAll = sets.every((slots) => {
    const first = Math.min(...slots);
    return (
      first < k &&
      slots.length === Math.ceil((size - first) / k) &&
      slots.every((slot) => (slot - first) % k === 0)
    );
  });
  return isAll ? k : undefined;
}
