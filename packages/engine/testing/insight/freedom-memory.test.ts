import { expect, test } from 'vitest';
import { FreedomMemory } from '../../src/insight/freedom-memory.ts';
import type { FreedomRow } from '../../src/insight/freedom-row.ts';
import { Freedom } from '../../src/insight/freedom.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';

function noteOf(working: readonly string[]): string {
  const steps = working.map((step, i) => `${i + 1}. ${step}`).join('\n');
  return `## Set-up\n\n- packet: 8 cards alternately red and black, face down\n\n## Working\n\n${steps}\n\n## Ending\n\n- Every pair faces the same way exactly when it differs in colour.\n`;
}

/** Rows of every place, with how many moments were found in the memory and how many were worked out. */
function everywhere(text: string, memory: FreedomMemory) {
  const { routine } = compile(read(text));
  if (routine === undefined) throw new Error(text);
  const freedom = Freedom.of(routine, decide(routine), DEFAULT_LIMITS, memory);
  if (!freedom.ok) throw new Error(JSON.stringify(freedom.error));
  const { remembered, worked } = memory;
  const rows = freedom.value.places.map((place): [string, FreedomRow[]] => [
    place.id,
    [...freedom.value.at(place)],
  ]);
  return { rows, remembered: memory.remembered - remembered, worked: memory.worked - worked };
}

const LOOP = 'Any number of times: cut the packet, then turn over the top 2 together.';
const BEFORE = [LOOP, 'Deal the packet into 2 piles.', 'Gather the piles left on right.', 'Milk the packet.'];

// What each edit does to the moments of the note, and how many of its moments change.
const EDITS: readonly (readonly [string, readonly string[], number])[] = [
  ['nothing is changed', BEFORE, 0],
  [
    'another way to gather that asks for the same',
    [LOOP, BEFORE[1], 'Gather the piles right on left.', BEFORE[3]],
    0,
  ],
  [
    'more piles: only what lies between deal and gathering is new',
    [LOOP, 'Deal the packet into 4 piles.', BEFORE[2], BEFORE[3]],
    1,
  ],
  // The rounds now lead to a step that asks for more, and so does each moment in them; the rest stays.
  ['a cut after the rounds', [LOOP, 'Cut the packet.', ...BEFORE.slice(1)], 3],
];

test.each(EDITS)('%s', (_name, after, changed) => {
  const memory = new FreedomMemory();
  const first = everywhere(noteOf(BEFORE), memory);
  expect(first.worked).toBeGreaterThan(4);
  const second = everywhere(noteOf(after), memory);
  expect(second.worked).toBe(changed);
  expect(second.remembered).toBe(second.rows.length - changed);
  // The same as without a memory.
  expect(second.rows).toEqual(everywhere(noteOf(after), new FreedomMemory()).rows);
});
