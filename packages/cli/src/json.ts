import type { Advice, FailureData, Performance, Report, SentenceReport, TableData } from '@foregone/engine';

/** What `prove --json` gives for one note; the schema is docs/json.md. */
export function reportJson(
  path: string,
  report: Report,
  seconds: number,
  advice: Advice | null,
): Record<string, unknown> {
  return {
    file: path,
    title: report.title,
    verdict: report.verdict,
    summary: report.summary,
    sentences: report.sentences.map((sentence, i) => ({
      ...sentenceJson(sentence),
      conditions: advice?.conditions[i] ?? [],
    })),
    spoken: advice?.spoken ?? [],
    // How words were taken is told under `readings`.
    diagnostics: report.diagnostics.filter(({ severity }) => severity !== 'reading'),
    readings: report.readings,
    coverage: report.coverage,
    seconds: rounded(seconds),
  };
}

function sentenceJson({ failure, ...sentence }: SentenceReport): Record<string, unknown> {
  return failure === null ? sentence : { ...sentence, ...failureJson(failure) };
}

export function failureJson({ performance, ...rest }: FailureData): Record<string, unknown> {
  return { ...performanceJson(performance), ...rest };
}

/** A performance with its piles as lists of cards in a word: `10C^`. */
export function performanceJson({ cost, start, steps }: Performance): Record<string, unknown> {
  return {
    cost,
    start: tableJson(start),
    performance: steps.map(({ after, ...step }) => ({ ...step, after: tableJson(after) })),
  };
}

export function tableJson({ piles }: TableData): Record<string, readonly string[]> {
  return Object.fromEntries(piles.map(({ name, cards }) => [name, cards.map((card) => card.text)]));
}

export function rounded(seconds: number): number {
  return Math.round(seconds * 1000) / 1000;
}

const WIDTH = 100;

/** JSON in lines; lists and objects of plain values stand in one line where they fit. */
export function jsonText(value: unknown): string {
  return `${printed(JSON.parse(JSON.stringify(value)), '')}\n`;
}

function printed(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  const isList = Array.isArray(value);
  const parts = isList
    ? value.map((one) => printed(one, inner))
    : Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${printed(one, inner)}`);
  const isPlain = Object.values(value).every((one) => typeof one !== 'object' || one === null);
  const line = parts.join(', ');
  const [open, close] = isList ? ['[', ']'] : ['{ ', ' }'];
  if (parts.length === 0) return isList ? '[]' : '{}';
  if (isPlain && indent.length + line.length + 4 <= WIDTH) return `${open}${line}${close}`;
  return `${open.trim()}\n${inner}${parts.join(`,\n${inner}`)}\n${indent}${close.trim()}`;
}
