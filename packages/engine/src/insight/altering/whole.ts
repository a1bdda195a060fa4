import { composeOps } from '../../pictures/effect.ts';

/** What a whole doing of some steps does to the slots; `ops` is null when no bit changes. */
export interface Whole {
  readonly from: Uint16Array;
  readonly ops: Uint32Array | null;
}

/** Several rearrangements one after another as one. */
export function composed(path: readonly { readonly effect: Whole }[], slots: number): Whole {
  let whole: Whole | null = null;
  for (const { effect } of path) whole = whole === null ? effect : after(whole, effect);
  return whole ?? { from: Uint16Array.from({ length: slots }, (_, s) => s), ops: null };
}

/** First `first`, then `then`. */
export function after(first: Whole, then: Whole): Whole {
  const slots = then.from.length;
  const from = new Uint16Array(slots);
  for (let s = 0; s < slots; s++) from[s] = first.from[then.from[s]];
  if (first.ops === null && then.ops === null) return { from, ops: null };
  const ops = new Uint32Array(slots);
  for (let s = 0; s < slots; s++)
    ops[s] = composeOps(
      first.ops === null ? 0 : first.ops[then.from[s]],
      then.ops === null ? 0 : then.ops[s],
    );
  return { from, ops };
}

export function isIdentity({ from, ops }: Whole): boolean {
  return from.every((old, slot) => old === slot) && (ops === null || ops.every((op) => op === 0));
}

/** The same for two mixes exactly when every card ends in the same place the same way, as far as these bits tell. */
export function wholeKey({ from, ops }: Whole, bits = 0xffffffff): string {
  let key = String.fromCharCode(...from);
  if (ops !== null && ops.some((op) => (op & bits) !== 0)) key += `|${ops.map((op) => op & bits).join()}`;
  return key;
}
