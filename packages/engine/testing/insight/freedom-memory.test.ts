import { expect, test } from 'vitest';
import { FreedomMemory } from '../../src/insight/freedom/memory.ts';
import type { FreedomRow } from '../../src/insight/freedom/row.ts';
import { Freedom } from '../../src/insight/freedom/freedom.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';

function noteOf(working: readonly string[]): string {
  const steps = working.map((step, i) => `${i + 1}. ${step}`).join('\n');
  return `## Set-up\n\n- packet: 8 cards alternately red and black, face down\n\n## Working\n\n${steps}\n\n## Ending\n\n- Every pair faces the same way exactly when it differs in colour.\n`;
}

/** Rows of every place, and the places that had to be worked out. */
function everywhere(text: string, memory: FreedomMemory) {
  const { routine } = compile(read(text));
  if (routine === undefined) throw new Error(text);
  const freedom = Freedom.of(routine, decide(routine), DEFAULT_LIMITS, memory);
  if (!freedom.ok) throw new Error(JSON.stringify(freedom.error));
  const anew: string[] = [];
  const rows = freedom.value.places.map((place): [string, FreedomRow[]] => {
    const before = memory.worked;
    const found = [...freedom.value.at(place)];
    if (memory.worked > before) anew.push(place.id);
    return [place.id, found];
  });
  return { rows, anew };
}

const LOOP = 'Any number of times: cut the packet, then turn over the top 2 together.';
const BEFORE = [LOOP, 'Deal the packet into 2 piles.', 'Gather the piles left on right.', 'Milk the packet.'];

// What each edit does to the moments of the note, and which of its moments have to be worked out anew.
const EDITS: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ['nothing is changed', BEFORE, []],
  [
    'another way to gather that asks for the same',
    [LOOP, BEFORE[1], 'Gather the piles right on left.', BEFORE[3]],
    [],
  ],
  [
    'more piles: from there on something else is certain, before it nothing changes',
    [LOOP, 'Deal the packet into 4 piles.', BEFORE[2], BEFORE[3]],
    ['3', '4', 'end'],
  ],
  // The rounds are left for a step that asks for more; outside them only the new moment is new.
  ['a cut after the rounds', [LOOP, 'Cut the packet.', ...BEFORE.slice(1)], ['1b', 'end of 1', '2']],
];

test.each(EDITS)('%s', (_name, after, changed) => {
  const memory = new FreedomMemory();
  const first = everywhere(noteOf(BEFORE), memory);
  expect(first.anew.length).toBeGreaterThan(4);
  const second = everywhere(noteOf(after), memory);
  expect(second.anew).toEqual(changed);
  // The same as without a memory.
  expect(second.rows).toEqual(everywhere(noteOf(after), new FreedomMemory()).rows);
});
