/** A stretch of the note's text, in UTF-16 code units, `to` exclusive. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** What a diagnostic knows, as plain data; the words are made elsewhere, from the code and these facts. */
export type Facts = Readonly<Record<string, string | number | readonly string[]>>;

/** A change of the text that would remove the trouble. */
export interface Fix {
  readonly label: string;
  readonly range: Range;
  readonly text: string;
}

export type Severity = 'error' | 'warning' | 'reading';

/**
 * One thing to say about one place of a note. An `error` keeps the note from getting a verdict, a `warning` does
 * not, a `reading` states how an ambiguous word was taken.
 */
export interface Diagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly range: Range;
  readonly facts: Facts;
  readonly fixes: readonly Fix[];
}

/** A cause without a place yet: who finds it seldom knows where in the text it stands. */
export interface Trouble {
  readonly code: string;
  readonly facts: Facts;
}

export function trouble(code: string, facts: Facts = {}): Trouble {
  return { code, facts };
}

export function diagnostic(
  code: string,
  range: Range,
  facts: Facts = {},
  more: { severity?: Severity; fixes?: readonly Fix[] } = {},
): Diagnostic {
  return { code, severity: more.severity ?? 'error', range, facts, fixes: more.fixes ?? [] };
}
