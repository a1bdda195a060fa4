import type { Advice, Coverage, Report, ReportVerdict, RuleData, SentenceReport } from '@foregone/engine';
import { counted, grouped } from '@foregone/engine';
import type { Terminal } from '../terminal.ts';
import { drawDiagnostic, shown } from './diagnostics.ts';
import { drawPerformance } from './performance.ts';
import { hang, wrap } from './wrap.ts';

export function paintVerdict(verdict: ReportVerdict, { colours }: Pick<Terminal, 'colours'>): string {
  switch (verdict) {
    case 'proved':
      return colours.green(verdict);
    case 'refuted':
    case 'not understood':
      return colours.red(verdict);
    case 'undecided':
    case 'empty':
      return colours.yellow(verdict);
  }
}

/** What `prove` says of one note. */
export function drawReport(
  path: string,
  text: string,
  report: Report,
  seconds: number,
  terminal: Terminal,
  advice: Advice | null = null,
): string {
  const { colours, width } = terminal;
  const title = report.title === '' ? path : shown(report.title);
  const told = report.diagnostics.filter(({ severity }) => severity !== 'reading');
  const blocks = [
    `${colours.bold(title)}: ${paintVerdict(report.verdict, terminal)}`,
    ...told.map((one) => drawDiagnostic(path, text, one, terminal)),
    ...(report.sentences.length === 0 ? [wrap(report.summary, width)] : []),
    ...report.sentences.map((sentence, i) =>
      drawSentence(path, sentence, terminal, advice?.conditions[i] ?? []),
    ),
    ...unsaid(advice, terminal),
  ];
  if (report.coverage !== null)
    blocks.push(colours.dim(wrap(coverageWords(report.coverage, seconds), width)));
  const readings = report.readings.filter(({ confirmed }) => !confirmed).length;
  if (readings > 0)
    blocks.push(
      colours.dim(
        wrap(
          `${counted(readings, 'word')} with two meanings: \`foregone readings ${path}\` says how ${readings === 1 ? 'it was' : 'they were'} taken.`,
          width,
        ),
      ),
    );
  return `${blocks.join('\n\n')}\n`;
}

/** What the ending rests on and nobody says. */
function unsaid(advice: Advice | null, { width }: Terminal): string[] {
  if (advice === null || advice.unsaid.length === 0) return [];
  return [advice.unsaid.map((one) => hang('', shown(one), width)).join('\n')];
}

function drawSentence(
  path: string,
  sentence: SentenceReport,
  terminal: Terminal,
  conditions: readonly string[],
): string {
  const { colours, width } = terminal;
  const lines = [
    hang('  ', `${shown(sentence.text)}`, width),
    `  ${paintVerdict(sentence.verdict, terminal)} ${sentence.verdict === 'empty' ? '' : wrap(sentence.by, width - 20, 4)}`.trimEnd(),
    hang('    ', shown(sentence.why), width),
    ...conditions.map((one) => hang('    ', shown(one), width)),
  ];
  const { failure, rule } = sentence;
  if (rule !== null) lines.push('', ...drawRule(rule, terminal));
  if (failure === null) return lines.join('\n');
  lines.push('', indented(drawPerformance(failure.performance, { ...terminal, width: width - 4 }), 4));
  if (failure.stuck !== '') lines.push(hang('    ', `Stuck: ${failure.stuck}`, width));
  // That already the plainest performance fails is said above.
  if (failure.lost.step !== null) lines.push(hang('    ', shown(failure.lost.words), width));
  if (!failure.shortest)
    lines.push(hang('    ', 'Found by chance or along a search for a rule: a shorter one may exist.', width));
  const choices = failure.choices.map((key) => quoted(String(key))).join(',');
  const again = choices === '' ? '' : ` --choices ${choices}`;
  lines.push(
    colours.dim(`    to play it: foregone play ${quoted(path)}${again === '' ? ' --failing' : again}`),
  );
  return lines.join('\n');
}

/** Lines of a rule that are shown; the whole of it is in --json. */
const MOST_RULES = 12;

function drawRule(rule: readonly RuleData[], { width }: Terminal): string[] {
  const told = rule.slice(0, MOST_RULES).map(({ step, when, choice }) => {
    const after = when.length === 0 ? '' : `, after ${when.map((one) => `"${one}"`).join(', ')}`;
    return hang('    ', shown(`you at ${step}${after}: ${choice}`), width);
  });
  const left = rule.length - told.length;
  return left > 0 ? [...told, `    and ${counted(left, 'more case')}: --json has them all`] : told;
}

/** As a shell would need it. */
function quoted(text: string): string {
  return /^[\w./:=@%+,-]+$/.test(text) ? text : `'${text.replaceAll("'", `'\\''`)}'`;
}

function indented(text: string, by: number): string {
  return text.replace(/^(?=.)/gm, ' '.repeat(by));
}

function coverageWords(coverage: Coverage, seconds: number): string {
  const { cards, steps, locations, edges, tables, equations, performances } = coverage;
  const parts = [
    counted(cards, 'card'),
    counted(steps, 'step'),
    counted(locations, 'moment'),
    ...(edges === null ? [] : [counted(edges, 'way on', 'ways on')]),
    ...(performances === null
      ? []
      : [
          performances === 'unlimited'
            ? 'performances without number'
            : `${grouped(performances)} ${performances === '1' ? 'performance' : 'performances'}`,
        ]),
    ...(tables > 0 ? [`${counted(tables, 'table')} kept`] : []),
    ...(equations > 0 ? [`${counted(equations, 'equation')} kept`] : []),
  ];
  return `${parts.join(', ')}; ${seconds.toFixed(2)} s`;
}
