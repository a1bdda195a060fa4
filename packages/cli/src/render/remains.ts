import type { RemainsData } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { shown } from './diagnostics.ts';
import { hang } from './wrap.ts';

/** Endings that are shown unless all are asked for. */
const MOST_SHOWN = 3;

/** Endings that are still certain, one to a line after the first word. */
export function drawRemains(
  remains: readonly RemainsData[],
  lead: string,
  indent: string,
  isWhole: boolean,
  { colours, width }: Terminal,
): string[] {
  const told = isWhole ? remains : remains.slice(0, MOST_SHOWN);
  const lines = told.map(({ words }, i) =>
    hang(`${indent}${i === 0 ? lead : ' '.repeat(lead.length)}`, shown(words), width),
  );
  const left = remains.length - told.length;
  return left === 0 ? lines : [...lines, colours.dim(`${indent}${' '.repeat(lead.length)}and ${left} more`)];
}
