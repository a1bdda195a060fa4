import { diffLines, diffWordsWithSpace } from 'diff';

export interface Stretch {
  readonly text: string;
  readonly changed: boolean;
}

/** One line of both texts beside each other; a side without a line is null. */
export interface Row {
  readonly before: readonly Stretch[] | null;
  readonly after: readonly Stretch[] | null;
}

/** Longer texts are compared by lines only, so that comparing never takes long. */
const FINE_LIMIT = 2_000;
/** How much the comparison may look at before it gives up on finding the least difference. */
const MOST_EDITS = 1_000;

/** Two texts, line beside line. */
export function compare(before: string, after: string): Row[] {
  const changes = diffLines(before, after, { maxEditLength: MOST_EDITS });
  if (changes === undefined) return pair(lines(before), lines(after));
  const rows: Row[] = [];
  for (let index = 0; index < changes.length; index += 1) {
    const { added, removed, value } = changes[index]!;
    const next = changes[index + 1];
    if (removed && next?.added === true) {
      rows.push(...pair(lines(value), lines(next.value)));
      index += 1;
    } else if (removed) rows.push(...pair(lines(value), []));
    else if (added) rows.push(...pair([], lines(value)));
    else rows.push(...lines(value).map((text) => ({ before: plain(text), after: plain(text) })));
  }
  return rows;
}

function pair(before: readonly string[], after: readonly string[]): Row[] {
  return Array.from({ length: Math.max(before.length, after.length) }, (_, index) => {
    const [a, b] = [before[index], after[index]];
    if (a === undefined || b === undefined) return { before: whole(a), after: whole(b) };
    if (a.length + b.length > FINE_LIMIT) return { before: whole(a), after: whole(b) };
    const words = diffWordsWithSpace(a, b);
    return {
      before: words
        .filter(({ added }) => !added)
        .map(({ value, removed }) => ({ text: value, changed: removed })),
      after: words
        .filter(({ removed }) => !removed)
        .map(({ value, added }) => ({ text: value, changed: added })),
    };
  });
}

const plain = (text: string): Stretch[] => [{ text, changed: false }];
const whole = (text: string | undefined): Stretch[] | null =>
  text === undefined ? null : [{ text, changed: true }];

function lines(text: string): string[] {
  const found = text.split('\n');
  if (found.at(-1) === '') found.pop();
  return found;
}
