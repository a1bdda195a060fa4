import type { FreedomRowData, ReportVerdict } from '@foregone/engine';
import { applied, insertStep, removeStep, replaceSentence, stepsIn, type TextChange } from './steps.ts';

/** Where something else could be done: before a step or at the end of the working, or in place of a step that breaks the note. */
export interface SafePlace {
  /** The text that stays certain: the note itself, or the note without the step in question. */
  readonly text: string;
  /** The place in that text, in the engine's words: `3`, `2.1`, `end`, `end of 2`. */
  readonly place: string;
  /** The step before which, or in place of which, a row is put in; undefined for the end of the working. */
  readonly step: string | undefined;
  readonly isInstead: boolean;
}

/** Most steps that are tried out for being what breaks the note. */
const MOST_TRIED = 24;

/** The steps that can be left out, each with the note without it, the last first: what was put in late is the more often to blame. */
export function withoutEach(text: string): readonly { readonly number: string; readonly text: string }[] {
  return stepsIn(text)
    .toReversed()
    .slice(0, MOST_TRIED)
    .flatMap(({ number }) => {
      const change = removeStep(text, number);
      return change === undefined ? [] : [{ number, text: applied(text, change) }];
    });
}

/** The steps without which the note would always work, given the verdicts on the texts of `withoutEach`. */
export function breakersOf(text: string, verdicts: readonly ReportVerdict[]): readonly string[] {
  const numbers = withoutEach(text)
    .filter((_, index) => verdicts[index] === 'proved')
    .map(({ number }) => number);
  // A block is not to blame where one step in it is.
  return numbers.filter((number) => !numbers.some((other) => other.startsWith(`${number}.`)));
}

/** Where to look for what else is safe; undefined where nothing can be said. */
export function safePlaceOf(
  text: string,
  step: string | undefined,
  verdict: ReportVerdict,
  breakers: readonly string[],
): SafePlace | undefined {
  if (verdict === 'proved') return { text, place: step ?? 'end', step, isInstead: false };
  if (verdict !== 'refuted') return undefined;
  const number = step !== undefined && breakers.includes(step) ? step : breakers[0];
  const change = number === undefined ? undefined : removeStep(text, number);
  if (number === undefined || change === undefined) return undefined;
  const left = applied(text, change);
  const inner = /^(.+)\.\d+$/.exec(number)?.[1];
  const end = inner === undefined ? 'end' : `end of ${inner}`;
  // What stood behind it, if anything, has its number now.
  const hasNext = stepsIn(left).some((one) => one.number === number);
  return { text: left, place: hasNext ? number : end, step: number, isInstead: true };
}

/** The change of the note that puts a row in at its place. */
export function putIn(
  text: string,
  { step, isInstead }: SafePlace,
  sentence: string,
): TextChange | undefined {
  return isInstead && step !== undefined
    ? replaceSentence(text, step, sentence)
    : insertStep(text, sentence, step);
}

/** What a row would put into the note: its sentence, or the one that leaves only its safe choices open; empty where none does. */
export function sentenceFor({ status, text, choices }: FreedomRowData): string {
  if (status === 'safe') return text;
  return status === 'some' ? (choices?.narrowed ?? '') : '';
}

type Grouped = readonly (readonly [hands: FreedomRowData['hands'], rows: readonly FreedomRowData[]])[];

/** By what hands do: rows that can be put in, and those that cannot. */
export function sorted(rows: readonly FreedomRowData[]): {
  readonly safe: Grouped;
  readonly others: Grouped;
} {
  return {
    safe: grouped(rows.filter((row) => sentenceFor(row) !== '')),
    others: grouped(rows.filter((row) => sentenceFor(row) === '')),
  };
}

const RANK = { safe: 0, some: 1, unsafe: 2, undecided: 3 } as const;

/** What holds whatever is chosen comes first, and of what is alike the plainest. */
function grouped(rows: readonly FreedomRowData[]): Grouped {
  const groups = new Map<FreedomRowData['hands'], FreedomRowData[]>();
  for (const row of rows) groups.set(row.hands, [...(groups.get(row.hands) ?? []), row]);
  return [...groups].map(
    ([hands, found]) =>
      [
        hands,
        found.toSorted((a, b) => RANK[a.status] - RANK[b.status] || a.text.length - b.text.length),
      ] as const,
  );
}

/** The row that a key puts in: the first one on the page. */
export function firstSafe(rows: readonly FreedomRowData[]): FreedomRowData | undefined {
  return sorted(rows).safe[0]?.[1][0];
}
