import { useEffect } from 'react';
import { createStore, useStore } from './store.ts';

export interface KeyBinding {
  /** As printed in the list of keys: `Alt+1`, `/`, `?`. */
  readonly keys: string;
  readonly what: string;
  readonly run: () => void;
  /** Works even while somebody types in a field. */
  readonly always?: boolean;
}

const bindings = createStore<readonly KeyBinding[]>([]);

/** Makes keys work while the calling room is open, and lists them under `?`. Give it a list that stays the same. */
export function useKeys(own: readonly KeyBinding[]): void {
  useEffect(() => {
    bindings.set([...bindings.get(), ...own]);
    return () => bindings.set(bindings.get().filter((binding) => !own.includes(binding)));
  }, [own]);
}

export function useKeyList(): readonly KeyBinding[] {
  return useStore(bindings);
}

/** What a key press is called in a binding. */
export function nameOfKey(
  event: Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey' | 'shiftKey'>,
): string {
  const parts = [];
  if (event.ctrlKey || event.metaKey) parts.push('Ctrl');
  if (event.altKey) parts.push('Alt');
  // With a sign such as `?`, the shift key is how it is typed and not a part of its name.
  if (event.shiftKey && event.key.length > 1) parts.push('Shift');
  parts.push(event.key.length === 1 ? event.key.toUpperCase() : event.key);
  return parts.join('+');
}

/** Runs the binding of a key press, the latest room first. */
export function pressKey(event: KeyboardEvent): void {
  if (event.defaultPrevented) return;
  const name = nameOfKey(event);
  const typing = isTyping(event.composedPath()[0]);
  const found = bindings
    .get()
    .findLast(({ keys, always = false }) => keys.toUpperCase() === name.toUpperCase() && (always || !typing));
  if (found === undefined) return;
  event.preventDefault();
  found.run();
}

function isTyping(target: EventTarget | undefined): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return target.isContentEditable || /^(?:INPUT|TEXTAREA|SELECT)$/.test(target.tagName);
}
