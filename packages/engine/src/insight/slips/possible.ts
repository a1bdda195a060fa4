import { sizeOf, type Layout } from '../../pictures/layout.ts';
import type { Action } from '../../pictures/actions.ts';

/** The piles on which hands were just at work; all there are where no card moved. */
export function handledIn(actions: readonly Action[], layout: Layout): string[] {
  const names = new Set(
    actions.flatMap((action) => (action.do === 'carry' ? [action.from, action.to] : [action.pile])),
  );
  const there = layout.names.filter((name) => !name.startsWith('~') && sizeOf(layout, name) > 0);
  const handled = there.filter((name) => names.has(name));
  return handled.length === 0 ? there : handled;
}
