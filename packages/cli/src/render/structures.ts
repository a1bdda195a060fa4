import { grouped, type MomentStructures, type StepStructures, type StructureData } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { shown } from './diagnostics.ts';
import { hang } from './wrap.ts';

/** Structures of one kind that are shown unless all are asked for. */
const MOST_SHOWN = 6;

/** The structures of one step: certain, needed, lost by it and gained. */
export function drawStructures(
  { number, sentence, moments }: StepStructures,
  isWhole: boolean,
  terminal: Terminal,
): string {
  const { colours, width } = terminal;
  const lines = [colours.bold(hang(`${number.padEnd(3)}  `, shown(sentence), width))];
  const told = isWhole ? moments : moments.slice(0, 1);
  for (const moment of told) {
    if (moments.length > 1) lines.push(colours.dim(`     with ${sizesOf(moment)}:`));
    lines.push(...drawMoment(moment, isWhole, terminal));
  }
  const left = moments.length - told.length;
  if (left > 0)
    lines.push(
      colours.dim(
        `     ${grouped(left)} more ${left === 1 ? 'moment' : 'moments'}: --all shows ${left === 1 ? 'it' : 'them'}`,
      ),
    );
  return `\n${lines.join('\n')}\n`;
}

function drawMoment(
  { certain, rest, needed, lost, gained }: MomentStructures,
  isWhole: boolean,
  { colours, width }: Terminal,
): string[] {
  const side = (name: string, words: readonly string[], none: string): string[] => {
    if (words.length === 0) return none === '' ? [] : [`     ${name.padEnd(LEAD)}${none}`];
    const few = isWhole ? words : words.slice(0, MOST_SHOWN);
    const list = few.map((one, i) => hang(`     ${(i === 0 ? name : '').padEnd(LEAD)}`, one, width));
    const left = words.length - few.length;
    return left === 0
      ? list
      : [...list, colours.dim(`     ${' '.repeat(LEAD)}and ${left} more: --all shows them`)];
  };
  const wanted = needed.map((one) => (one === null ? null : [...one.structures.map(wordsOf), ...one.rest]));
  const several = needed.length > 1;
  return [
    ...side('certain', [...certain.map(wordsOf), ...rest], 'nothing'),
    ...wanted.flatMap((words, i) =>
      side(several ? `needed ${i + 1}` : 'needed', words ?? [], words === null ? 'no equation' : 'nothing'),
    ),
    ...side('lost', lost.map(wordsOf), ''),
    ...side('gained', gained.map(wordsOf), ''),
  ];
}

const LEAD = 10;

function wordsOf({ trade, name, words }: StructureData): string {
  return `${trade === '' ? name : `${trade} ${name}`}: ${words}`;
}

function sizesOf({ sizes, numbers }: MomentStructures): string {
  const piles = Object.entries(sizes).map(([name, size]) => `${size} in ${name.replace(/^~/, '')}`);
  const named = Object.entries(numbers).flatMap(([name, n]) =>
    /^[~]|^that /.test(name) ? [] : [`${name} = ${n}`],
  );
  return [...piles, ...named].join(', ');
}
