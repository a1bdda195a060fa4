import type { Performance, PerformanceStep } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { shown } from './diagnostics.ts';
import { drawTable, LEGEND } from './table.ts';
import { hang } from './wrap.ts';

const INDENT = 5;

/** A performance step by step: sentence, choice in words, piles with their cards. */
export function drawPerformance(performance: Performance, terminal: Terminal): string {
  const { colours, width } = terminal;
  const parts = [
    `${colours.bold('Set-up')}  ${colours.dim(LEGEND)}`,
    drawTable(performance.start, colours, width, INDENT),
    ...performance.steps.map((step) => drawStep(step, terminal)),
  ];
  return parts.join('\n');
}

export function drawStep(step: PerformanceStep, { colours, width }: Terminal): string {
  const lead = `${step.number.padEnd(INDENT - 2)}  `;
  const head = colours.bold(hang(lead, shown(step.sentence), width));
  const choice = step.choice === '' ? [] : [`${' '.repeat(INDENT)}${choiceWords(step)}`];
  if (step.slip !== undefined)
    choice.push(colours.red(hang(' '.repeat(INDENT), `slip: ${shown(step.slip)}`, width)));
  // Going on or stopping moves no card.
  if (step.is === 'choice') return [head, ...choice].join('\n');
  return [head, ...choice, drawTable(step.after, colours, width, INDENT)].join('\n');
}

function choiceWords({ who, secret, choice }: PerformanceStep): string {
  const person = who === 'performer' ? 'you' : 'spectator';
  return `${person}${secret ? ', in secret' : ''}: ${choice}`;
}
