import type { Diagnostic } from '../base/diagnostic.ts';
import type { DiagnosticData } from './report.ts';

/** Line and column of a place, both from 1; a line ends with \n, \r\n or \r. Columns count UTF-16 code units. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  const ends = /\r\n|\r|\n/g;
  for (let end = ends.exec(text); end !== null && ends.lastIndex <= at; end = ends.exec(text)) {
    line++;
    start = ends.lastIndex;
  }
  return { line, column: at - start + 1 };
}

/** Diagnostics with places and words for people; `describe` gives the words. */
export function diagnosticData(
  diagnostics: readonly Diagnostic[],
  text: string,
  describe: (diagnostic: Diagnostic) => { readonly words: string; readonly remedy: string },
): DiagnosticData[] {
  return diagnostics.map((diagnostic) => ({
    ...diagnostic,
    ...lineAndColumn(text, diagnostic.range.from),
    ...describe(diagnostic),
  }));
}
