/** Either a value or what stood in its way; for everything that a user can cause. */
export type Result<T, E> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

export function good<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function bad<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error };
}

/** Marks a branch that the types rule out; reaching it is a fault of ours, never of a note. */
export function impossible(value: never): never {
  throw new Error(`impossible case: ${JSON.stringify(value)}`);
}
