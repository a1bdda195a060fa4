import { existsSync } from 'node:fs';
import { dealAndRiffle, turnover } from './scenarios.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';
import { proveProcess } from './whole-process.ts';

/** The built command line as a whole: start, read, prove, print, end. */
export function processSuite(bench: string, program: string): Target[] {
  if (!existsSync(program.replace('bin/foregone.mjs', 'dist/foregone.cjs')))
    throw new Error('the command line has not been built: npm run build');
  const texts: readonly (readonly [string, string])[] = [
    ['turnover, 16 cards', turnover(16)],
    ['turnover, 52 cards', turnover(52)],
    ['deal and riffle, 52 cards, 13 kinds', dealAndRiffle(52, 13)],
  ];
  const rows = texts.map(([name, text]) => ({ name, ...proveProcess(bench, program, text) }));
  console.log(
    `\n${drawn(
      ['foregone prove, whole process', 'processor ms', 'clock ms', 'peak MB'],
      rows.map(({ name, cpu, clock, peak }) => [name, ms(cpu), ms(clock), ms(peak)]),
    )}`,
  );
  return [
    { what: 'foregone prove, turnover, 16 cards: whole process', limit: 300, unit: 'ms', found: rows[0].cpu },
    {
      what: 'peak of memory, worst of these',
      limit: 150,
      unit: 'MB',
      found: Math.max(...rows.map(({ peak }) => peak)),
    },
  ];
}
