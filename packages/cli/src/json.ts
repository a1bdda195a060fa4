import type { Performance, Report, SentenceReport, TableData } from '@foregone/engine';

/** What `prove --json` gives for one note; the schema is docs/json.md. */
export function reportJson(path: string, report: Report, seconds: number): Record<string, unknown> {
  return {
    file: path,
    title: report.title,
    verdict: report.verdict,
    summary: report.summary,
    sentences: report.sentences.map(sentenceJson),
    diagnostics: report.diagnostics,
    readings: report.readings,
    coverage: report.coverage,
    seconds: rounded(seconds),
  };
}

function sentenceJson({ failure, ...sentence }: SentenceReport): Record<string, unknown> {
  if (failure === null) return sentence;
  const { performance, ...rest } = failure;
  return { ...sentence, ...performanceJson(performance), ...rest };
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

export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
