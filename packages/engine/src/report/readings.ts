import type { CompiledReading } from '../note/compile.ts';
import type { OutlineItem } from '../note/outline.ts';
import type { Step } from '../routine/routine.ts';
import type { ReadingData } from './report.ts';

/** How ambiguous words were taken, step by step. */
export function readingData(
  readings: readonly CompiledReading[],
  outline: readonly OutlineItem[],
  text: string,
): ReadingData[] {
  const steps = outline.flatMap(stepsIn);
  return readings.map(({ range, reading, confirmed }) => {
    const own = steps.find((step) => step.range.from <= range.from && range.to <= step.range.to);
    return {
      number: own?.number ?? '',
      sentence: text.slice(range.from, range.to).replace(/\s+/g, ' ').trim(),
      range,
      word: reading.word,
      taken: reading.taken,
      other: reading.other,
      confirmed,
    };
  });
}

function stepsIn(item: OutlineItem): Step[] {
  return [...item.steps.flatMap(inside), ...item.items.flatMap(stepsIn)];
}

/** A step's inner steps come first: they are the nearer ones. */
function inside(step: Step): Step[] {
  switch (step.do) {
    case 'move':
      return [step];
    case 'repeat':
    case 'each':
      return [...step.body.flatMap(inside), step];
    case 'either':
      return [...step.branches.flat().flatMap(inside), step];
    case 'if':
      return [...step.then.flatMap(inside), ...step.otherwise.flatMap(inside), step];
  }
}
