import type { Compiled, Note } from '@foregone/engine';
import type { Understood } from './protocol.ts';

type OutlineStep = Compiled['outline'][number]['steps'][number];

/** Every sentence that was understood, in the order of the note. */
export function understoodIn(note: Note, { outline, diagnostics }: Compiled): Understood[] {
  const found: Understood[] = [];
  const wrong = diagnostics.filter(({ severity }) => severity === 'error').map(({ range }) => range);
  const lines = (section: Note['setUp'], kind: Understood['kind']) => {
    for (const block of section?.blocks ?? []) {
      if (block.is !== 'steps' && block.is !== 'bullets') continue;
      for (const { sentence } of block.items) {
        if (sentence === null) continue;
        const { range } = sentence;
        if (wrong.some(({ from, to }) => from < range.to && to >= range.from)) continue;
        found.push({ kind, range, number: '', move: '', who: 'spectator' });
      }
    }
  };
  const walk = (steps: readonly OutlineStep[]) => {
    for (const step of steps) {
      const { number, range } = step;
      const who = 'who' in step ? step.who : 'spectator';
      found.push({ kind: 'step', range, number, move: step.do === 'move' ? step.move : '', who });
      switch (step.do) {
        case 'move':
          break;
        case 'repeat':
        case 'each':
          walk(step.body);
          break;
        case 'either':
          step.branches.forEach(walk);
          break;
        case 'if':
          walk(step.then);
          walk(step.otherwise);
      }
    }
  };
  lines(note.setUp, 'set-up');
  for (const { steps } of outline) walk(steps);
  lines(note.ending, 'ending');
  return found.sort((a, b) => a.range.from - b.range.from || b.range.to - a.range.to);
}
