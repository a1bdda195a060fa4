/** A stretch of the packet that is a stretch of the order at hand: the same way round (1), the other (-1), or one card (0). */
export interface Block {
  readonly from: number;
  readonly to: number;
  readonly by: -1 | 0 | 1;
}

/** The packet as stretches of the order at hand; `places` are its cards' places there, from the top. */
export function blocksIn(places: readonly number[]): Block[] {
  const blocks: { from: number; to: number; by: -1 | 0 | 1 }[] = [];
  places.forEach((place, i) => {
    const last = blocks.at(-1);
    const by = i === 0 ? 0 : place - places[i - 1];
    if (last !== undefined && (by === 1 || by === -1) && (last.by === 0 || last.by === by)) {
      last.to = i;
      last.by = by;
    } else blocks.push({ from: i, to: i, by: 0 });
  });
  return blocks;
}

/** Finding a block and laying it down; one that is turned round is dealt card by card. */
export function handlingsOfBlocks(blocks: readonly Block[]): number {
  if (blocks.length === 1 && blocks[0].by >= 0) return 0;
  return blocks.reduce((sum, { from, to, by }) => sum + (by < 0 ? to - from + 2 : 2), 0);
}

/** Packets cut from the order at hand whose top cards, taken now from one, now from another, make the packet. */
export interface Packeted {
  /** Indices of the first and last card of each packet. */
  readonly packets: readonly { readonly first: number; readonly last: number }[];
  /** From which packet each card is taken. */
  readonly taken: readonly number[];
}

export function packetsIn(places: readonly number[]): Packeted {
  const packets: { first: number; last: number; next: number }[] = [];
  const taken = places.map((place, i) => {
    let at = packets.findIndex(({ next }) => next === place);
    if (at < 0) at = packets.push({ first: i, last: i, next: place }) - 1;
    packets[at].last = i;
    packets[at].next = place + 1;
    return at;
  });
  return { packets, taken };
}

/** Cutting off the packets and taking every card. */
export function handlingsOfPackets({ packets, taken }: Packeted): number {
  return packets.length + taken.length;
}

/** The cheaper of the two ways to make a packet of the order at hand. */
export function handlingsFrom(places: readonly number[]): number {
  return Math.min(handlingsOfBlocks(blocksIn(places)), handlingsOfPackets(packetsIn(places)));
}
