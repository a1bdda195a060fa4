import type { Diagnostic } from '../base/diagnostic.ts';

const UNREAD: ReadonlySet<string> = new Set([
  'sentence-not-understood',
  'sentence-ends-early',
  'block-not-understood',
]);

/** Names that are missed, and the fact that tells the name. */
const MISSED: ReadonlyMap<string, string> = new Map([
  ['unknown-pile', 'pile'],
  ['unknown-mark', 'mark'],
]);

/**
 * Without what only follows from an earlier sentence not being understood: a name that stands in it is not missed by later ones,
 * for that sentence may bring it. In the order of the text.
 */
export function withoutEchoes(diagnostics: readonly Diagnostic[], text: string): readonly Diagnostic[] {
  const unread: string[] = [];
  return diagnostics.filter(({ code, facts, range }) => {
    if (UNREAD.has(code)) unread.push(lineAround(text, range.from));
    const fact = MISSED.get(code);
    if (fact === undefined) return true;
    const name = String(facts[fact]).toLowerCase();
    return !unread.some((line) => line.includes(name));
  });
}

function lineAround(text: string, at: number): string {
  const from = text.lastIndexOf('\n', at - 1) + 1;
  const to = text.indexOf('\n', at);
  return text.slice(from, to < 0 ? undefined : to).toLowerCase();
}
