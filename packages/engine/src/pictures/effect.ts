import type { Action, Carry, Mark } from './actions.ts';
import { firstSlot, type Layout } from './layout.ts';

/**
 * What a list of actions does to the slots. `from[s]` is the old slot of the card now in slot s; `ops[s]` holds two bits for
 * each kind of bit (kind k at 2k): 0 keep, 1 toggle, 2 clear, 3 set. `ops` is null when no bit changes.
 */
export interface Effect {
  readonly after: Layout;
  readonly from: Uint16Array;
  readonly ops: Uint32Array | null;
}

/** Names the kinds of bits a routine handles; index 0 is `up`, 1 is `end`, marks follow in order of first use. */
export class BitKinds {
  readonly names: string[] = ['up', 'end'];

  indexOf(bit: string): number {
    const known = this.names.indexOf(bit);
    if (known >= 0) return known;
    // Two bits a kind in a 32-bit word; the note reader refuses more marks than fit.
    if (this.names.length >= MOST_BIT_KINDS) throw new Error(`more than ${MOST_BIT_KINDS} kinds of bits`);
    this.names.push(bit);
    return this.names.length - 1;
  }
}

export const MOST_BIT_KINDS = 16;

const OP_CODE = { toggle: 1, clear: 2, set: 3 } as const;

/** First `first`, then `second`, on each two-bit field: keep passes, toggle swaps, clear and set override. */
export function composeOps(first: number, second: number): number {
  if (second === 0) return first;
  if (first === 0) return second;
  const overrides = (second >>> 1) & 0x55555555;
  const mask = (overrides | (overrides << 1)) >>> 0;
  const toggles = second & 0x55555555 & ~mask;
  return (((first & ~mask) ^ toggles) | (second & mask)) >>> 0;
}

/** The new value of one bit under a two-bit operation. */
export function applyOp(value: number, op: number): number {
  return op === 0 ? value : op === 1 ? value ^ 1 : op & 1;
}

interface Work {
  readonly name: string;
  slots: number[];
  /** Operations card by card; null while nothing was turned or marked. */
  ops: number[] | null;
}

/**
 * Runs actions on cards that only know their slot. An action that asks for cards which are not there is a fault of the move
 * that made it, so it throws.
 */
export function effectOf(before: Layout, actions: readonly Action[], bits: BitKinds): Effect {
  const handling = new Handling(before, bits);
  handling.do(actions);
  return handling.effect();
}

/** Actions done one after the other, with the piles as they stand in between. */
export class Handling {
  private readonly before: Layout;
  private readonly bits: BitKinds;
  private readonly piles: Work[] = [];
  private readonly total: number;

  constructor(before: Layout, bits: BitKinds) {
    this.before = before;
    this.bits = bits;
    let total = 0;
    for (let i = 0; i < before.names.length; i++) {
      const size = before.sizes[i];
      const slots = new Array<number>(size);
      for (let k = 0; k < size; k++) slots[k] = total++;
      this.piles.push({ name: before.names[i], slots, ops: null });
    }
    this.total = total;
  }

  do(actions: readonly Action[]): void {
    for (const action of actions) {
      if (action.do === 'carry') doCarry(this.piles, action);
      else doMark(this.piles, action, this.bits);
    }
  }

  layout(): Layout {
    return this.standing().after;
  }

  effect(): Effect {
    const { kept, after } = this.standing();
    const from = new Uint16Array(this.total);
    let ops: Uint32Array | null = null;
    let at = 0;
    for (const work of kept) {
      from.set(work.slots, at);
      if (work.ops?.some((op) => op !== 0) === true) (ops ??= new Uint32Array(this.total)).set(work.ops, at);
      at += work.slots.length;
    }
    return { after, from, ops };
  }

  private standing(): { readonly kept: readonly Work[]; readonly after: Layout } {
    const { piles, before } = this;
    const kept = piles.some((work) => work.slots.length === 0)
      ? piles.filter((work) => work.slots.length > 0)
      : piles;
    const same = kept.length === piles.length && piles.length === before.names.length;
    const names = same ? before.names : kept.map((work) => work.name);
    return { kept, after: { names, sizes: kept.map((work) => work.slots.length) } };
  }
}

function find(piles: readonly Work[], name: string): Work | undefined {
  for (const work of piles) if (work.name === name) return work;
  return undefined;
}

/** A new pile, in its place by name. */
function begin(piles: Work[], name: string): Work {
  const work: Work = { name, slots: [], ops: null };
  let at = piles.length;
  while (at > 0 && piles[at - 1].name > name) at--;
  piles.splice(at, 0, work);
  return work;
}

function opsOf(work: Work): number[] {
  return (work.ops ??= new Array<number>(work.slots.length).fill(0));
}

function doCarry(piles: Work[], action: Carry): void {
  const { at, count } = action;
  if (count === 0) return;
  const source = find(piles, action.from);
  if (source === undefined || at < 0 || count < 0 || at + count > source.slots.length)
    throw new Error(`carry of missing cards: ${JSON.stringify(action)}`);
  const change =
    (action.turned === undefined ? 0 : 1) | ((action.turned === 'end') !== (action.spun === true) ? 4 : 0);
  if (change !== 0) opsOf(source);
  const slots = source.slots.splice(at, count);
  const ops = source.ops === null ? null : source.ops.splice(at, count);
  if ((action.reversed === true) !== (action.turned !== undefined)) {
    slots.reverse();
    ops?.reverse();
  }
  if (change !== 0 && ops !== null) for (let k = 0; k < ops.length; k++) ops[k] = composeOps(ops[k], change);
  const target = find(piles, action.to) ?? begin(piles, action.to);
  if (action.into < 0 || action.into > target.slots.length)
    throw new Error(`carry to a missing place: ${JSON.stringify(action)}`);
  if (ops !== null || target.ops !== null)
    opsOf(target).splice(action.into, 0, ...(ops ?? new Array<number>(slots.length).fill(0)));
  target.slots.splice(action.into, 0, ...slots);
}

function doMark(piles: readonly Work[], action: Mark, bits: BitKinds): void {
  const work = find(piles, action.pile);
  if (work === undefined || action.at < 0 || action.at + action.count > work.slots.length)
    throw new Error(`mark on missing cards: ${JSON.stringify(action)}`);
  const op = (OP_CODE[action.op] << (2 * bits.indexOf(action.bit))) >>> 0;
  const ops = opsOf(work);
  for (let k = action.at; k < action.at + action.count; k++) ops[k] = composeOps(ops[k], op);
}

/** The slot a place of a pile has, top = 0. */
export function slotAt(layout: Layout, pile: string, place: number): number {
  return firstSlot(layout, pile) + place;
}
