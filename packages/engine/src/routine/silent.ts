import { sizeOf, type Layout } from '../pictures/layout.ts';
import { testNumber, valueOf, type Program } from './program.ts';

/** Numbers that have been fixed so far, by name. */
export type Numbers = Readonly<Record<string, number>>;

export const NO_NUMBERS: Numbers = {};

// Silent instructions in a row that no sensible routine has; a loop of empty bodies ends here.
const MOST_SILENT = 100_000;

/**
 * Passes instructions that nobody sees (counting, testing, going round) until there is something to choose, a move to make, or the exit. Null
 * where they go on for ever.
 */
export function passSilent(
  program: Program,
  at: number,
  layout: Layout,
  numbers: Numbers,
): { readonly at: number; readonly numbers: Numbers } | null {
  for (let silent = 0; ; silent++) {
    if (silent > MOST_SILENT) return null;
    const instruction = program.instructions[at];
    numbers = keep(numbers, instruction.live);
    switch (instruction.do) {
      case 'move':
      case 'either':
      case 'exit':
        return { at, numbers };
      case 'set':
        numbers = { ...numbers, [instruction.number]: valueOf(instruction.to, numbers) };
        at = instruction.next;
        break;
      case 'test':
        at = testNumber(instruction.when, numbers[instruction.when.number])
          ? instruction.then
          : instruction.otherwise;
        break;
      case 'each': {
        const { stem, counter } = instruction.step;
        let last = numbers[instruction.last];
        if (last < 0) last = greatest(layout, stem);
        let n = numbers[counter] + 1;
        while (n <= last && sizeOf(layout, `${stem} ${n}`) === 0) n++;
        at = n > last ? instruction.next : instruction.body;
        numbers = { ...numbers, [counter]: n, [instruction.last]: last };
        break;
      }
      case 'repeat': {
        const { times } = instruction.step;
        if (times.of === 'any') return { at, numbers };
        const done = numbers[instruction.counter];
        if (times.of === 'at least' && done >= times.n) return { at, numbers };
        if (times.of === 'exactly' && done <= 0) at = instruction.next;
        else {
          numbers = { ...numbers, [instruction.counter]: times.of === 'exactly' ? done - 1 : done + 1 };
          at = instruction.body;
        }
        break;
      }
    }
  }
}

function keep(numbers: Numbers, live: ReadonlySet<string>): Numbers {
  const names = Object.keys(numbers);
  if (names.length === 0) return NO_NUMBERS;
  if (names.every((name) => live.has(name))) return numbers;
  return Object.fromEntries(names.filter((name) => live.has(name)).map((name) => [name, numbers[name]]));
}

function greatest(layout: Layout, stem: string): number {
  let most = 0;
  for (const name of layout.names)
    if (name.startsWith(`${stem} `) && /^\d+$/.test(name.slice(stem.length + 1)))
      most = Math.max(most, Number(name.slice(stem.length + 1)));
  return most;
}
