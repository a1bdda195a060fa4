import type { Blame } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { shown } from './diagnostics.ts';
import { hang } from './wrap.ts';

/** Why a sentence can fail without any slip, what would save it, and which choices make it likelier. */
export function drawBlame(
  { sentence, words, condition, chance, raises }: Blame,
  { colours, width }: Pick<Terminal, 'colours' | 'width'>,
): string {
  const lines = [
    `${shown(sentence)}: ${colours.red('can fail without any slip')}`,
    words,
    ...(condition === null ? [] : [`It is certain when ${condition.words}.`]),
    ...(condition === null || condition.text === ''
      ? []
      : [`Write at step ${condition.step}: ${condition.text}`]),
    ...(chance === null ? [] : [`With every choice at random its chance is ${chance}.`]),
    ...raises.map((one) => `At step ${one.step}, ${one.words}: ${one.chance}.`),
  ];
  const [head, ...rest] = lines;
  return [hang('', head, width), ...rest.map((line) => hang('     ', shown(line), width))].join('\n');
}
