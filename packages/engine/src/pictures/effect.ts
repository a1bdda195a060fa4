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
  const piles: Work[] = [];
  let total = 0;
  for (let i = 0; i < before.names.length; i++) {
    const size = before.sizes[i];
    const slots = new Array<number>(size);
    for (let k = 0; k < size; k++) slots[k] = total++;
    piles.push({ name: before.names[i], slots, ops: null });
  }
  for (const action of actions) {
    if (action.do === 'carry') doCarry(piles, action);
    else doMark(piles, action, bits);
  }
  const same = piles.length === before.names.length && piles.every((work) => work.slots.length > 0);
  if (!same) piles.sort((a, b) => (a.name < b.name ? -1 : 1));
  const kept = same ? piles : piles.filter((work) => work.slots.length > 0);
  const from = new Uint16Array(total);
  let ops: Uint32Array | null = null;
  let at = 0;
  for (const work of kept) {
    from.set(work.slots, at);
    if (work.ops?.some((op) => op !== 0) === true) (ops ??= new Uint32Array(total)).set(work.ops, at);
    at += work.slots.length;
  }
  const names = same ? before.names : kept.map((work) => work.name);
  return { after: { names, sizes: kept.map((work) => work.slots.length) }, from, ops };
}

function find(piles: readonly Work[], name: string): Work | undefined {
  for (const work of piles) if (work.name === name) return work;
  return undefined;
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
  let target = find(piles, action.to);
  if (target === undefined) piles.push((target = { name: action.to, slots: [], ops: null }));
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
