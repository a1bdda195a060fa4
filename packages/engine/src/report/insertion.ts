import type { Fix } from '../base/diagnostic.ts';
import type { Place } from '../insight/altering/places.ts';
import { compile } from '../note/compile.ts';
import { read } from '../note/read.ts';
import type { Routine } from '../routine/routine.ts';

/**
 * The change of a note's text that puts sentences in at a place as a line of their own; null where the place has no line of its own.
 * The text is read again, and the change only offered where it is understood as the routine wanted.
 */
export function insertion(text: string, place: Place, sentences: string, wanted: Routine): Fix | null {
  const { before } = place;
  if (before === undefined) return null;
  const lineFrom = text.lastIndexOf('\n', before.range.from - 1) + 1;
  const lead = text.slice(lineFrom, before.range.from);
  if (!/^\s*(?:\d+[.)]|[-*+])\s+$/.test(lead)) return null;
  const fix: Fix = {
    label: sentences,
    range: { from: lineFrom, to: lineFrom },
    text: `${lead}${sentences}\n`,
  };
  const made = compile(read(text.slice(0, lineFrom) + fix.text + text.slice(lineFrom))).routine;
  return made !== undefined && likeness(made) === likeness(wanted) ? fix : null;
}

/** A routine's steps as a text, apart from where they stand in a note and who knows of them. */
function likeness({ steps }: Routine): string {
  return JSON.stringify(steps, (key, value: unknown) => {
    if (ASIDE.has(key)) return undefined;
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}

const ASIDE: ReadonlySet<string> = new Set(['number', 'range', 'secret', 'open']);
