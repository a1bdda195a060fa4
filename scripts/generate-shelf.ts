import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Sentence } from '../packages/engine/src/claims/sentence.ts';
import { compile } from '../packages/engine/src/note/compile.ts';
import { read } from '../packages/engine/src/note/read.ts';
import { decide } from '../packages/engine/src/proving/decide.ts';
import type { MoveStep, Routine, Step } from '../packages/engine/src/routine/routine.ts';
import { structuresIn } from './generate-structures.ts';

/** What a note of the shelf is made of. */
export interface ShelfNote {
  readonly file: string;
  readonly title: string;
  readonly steps: readonly MoveStep[];
  /** Forms of ending, by their ids. */
  readonly endings: ReadonlySet<string>;
  readonly setUp: string;
  readonly cards: number;
  readonly predicts: boolean;
  readonly routine: Routine;
  /** Whether one of its sentences at least is proved. */
  readonly proved: boolean;
  /** Structures, by their headings, in what an ending needs at some moment. */
  readonly structures: ReadonlySet<string>;
  /** Those that are certain at the end. */
  readonly certain: ReadonlySet<string>;
}

/** A note that is understood, or null. */
export function shelfNote(file: string, text: string): ShelfNote | null {
  const note = read(text);
  const { routine } = compile(note);
  if (routine === undefined) return null;
  const decision = decide(routine);
  return {
    file,
    title: note.title,
    steps: movesIn(routine.steps),
    endings: new Set(routine.endings.flatMap(({ sentence }) => claimsIn(sentence))),
    setUp: note.setUp === null ? '' : text.slice(note.setUp.range.from, note.setUp.range.to),
    cards: routine.cards.length,
    predicts: note.prediction !== null,
    routine,
    proved: decision.sentences.some(({ verdict }) => verdict === 'proved'),
    ...structuresIn(decision),
  };
}

/** All notes of a folder in the order of their names, and the files that are not understood. */
export function readShelf(folder: string): { notes: ShelfNote[]; unread: string[] } {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.md') && file !== 'README.md')
    .sort();
  const all = files.map((file) => ({
    file,
    note: shelfNote(file, readFileSync(join(folder, file), 'utf8')),
  }));
  return {
    notes: all.flatMap(({ note }) => note ?? []),
    unread: all.flatMap(({ file, note }) => (note === null ? [file] : [])),
  };
}

/** The moves of a working in the order of the note, blocks opened. */
function movesIn(steps: readonly Step[]): MoveStep[] {
  return steps.flatMap((step) => {
    switch (step.do) {
      case 'move':
        return [step];
      case 'repeat':
      case 'each':
        return movesIn(step.body);
      case 'either':
        return step.branches.flatMap((branch) => movesIn(branch));
      case 'if':
        return movesIn([...step.then, ...step.otherwise]);
    }
  });
}

function claimsIn(sentence: Sentence): string[] {
  switch (sentence.says) {
    case 'claim':
      return [sentence.claim];
    case 'and':
    case 'or':
      return sentence.parts.flatMap(claimsIn);
    case 'not':
    case 'up to':
      return claimsIn(sentence.part);
    case 'if':
      return [...claimsIn(sentence.when), ...claimsIn(sentence.then)];
    case 'exactly when':
      return [...claimsIn(sentence.left), ...claimsIn(sentence.right)];
  }
}
