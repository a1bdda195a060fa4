/** Piles with at least one card, sorted by name; slots are numbered through them in this order, tops first. */
export interface Layout {
  readonly names: readonly string[];
  readonly sizes: readonly number[];
}

export function layoutOf(sizes: Iterable<readonly [string, number]>): Layout {
  const kept = [...sizes].filter(([, size]) => size > 0).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return { names: kept.map(([name]) => name), sizes: kept.map(([, size]) => size) };
}

export function sizeOf(layout: Layout, pile: string): number {
  const i = layout.names.indexOf(pile);
  return i < 0 ? 0 : layout.sizes[i];
}

/** The slot of the pile's top card; meaningless for a pile without cards. */
export function firstSlot(layout: Layout, pile: string): number {
  let slot = 0;
  for (let i = 0; i < layout.names.length; i++) {
    if (layout.names[i] === pile) return slot;
    slot += layout.sizes[i];
  }
  return slot;
}

export function cardsIn(layout: Layout): number {
  return layout.sizes.reduce((sum, size) => sum + size, 0);
}

export function layoutKey(layout: Layout): string {
  let key = '';
  for (let i = 0; i < layout.names.length; i++) key += `${layout.names[i]}:${layout.sizes[i]},`;
  return key;
}
