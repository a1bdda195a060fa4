import type { DiagnosticData } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { hang } from './wrap.ts';

/** A diagnostic with its place, the line it speaks of and what to do. */
export function drawDiagnostic(path: string, text: string, one: DiagnosticData, terminal: Terminal): string {
  const { colours, width } = terminal;
  const kind =
    one.severity === 'error'
      ? colours.red('error')
      : one.severity === 'warning'
        ? colours.yellow('warning')
        : 'reading';
  const head = `${colours.bold(`${path}:${one.line}:${one.column}`)} ${kind}`;
  const parts = [head, hang('  ', one.words, width), frame(text, one, terminal)];
  if (one.remedy !== '') parts.push(hang('  ', one.remedy, width));
  const near = one.severity === 'reading' ? [] : one.fixes.filter(({ label }) => !one.remedy.includes(label));
  near.forEach(({ label }, i) =>
    parts.push(hang(i === 0 ? '  nearest: ' : '           ', shown(label), width)),
  );
  return parts.join('\n');
}

/** The line with a caret under each character of the range that is on it; long lines are cut around it. */
function frame(text: string, { range, line, column }: DiagnosticData, { colours, width }: Terminal): string {
  const start = range.from - (column - 1);
  const end = /\r|\n|$/.exec(text.slice(start))?.index ?? 0;
  const whole = text.slice(start, start + end);
  const lead = `  ${line} | `;
  const room = Math.max(20, width - lead.length);
  const from = column - 1 > room - 10 ? column - 1 - Math.floor(room / 3) : 0;
  const cut = shown(whole.slice(from, from + room));
  const length = Math.max(
    1,
    Math.min(range.to - range.from, whole.length - (column - 1), room - (column - 1 - from)),
  );
  return `${colours.dim(lead)}${cut}\n${' '.repeat(lead.length + column - 1 - from)}${colours.red('^'.repeat(length))}`;
}

/** Nothing that a terminal would obey. */
export function shown(text: string): string {
  return text.replace(/\s/g, ' ').replace(/[\p{Cc}\p{Cf}]/gu, '\ufffd');
}
