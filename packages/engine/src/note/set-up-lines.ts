import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import type { Section } from './note.ts';

export interface SetUpLines {
  readonly pieces: readonly { readonly text: string; readonly from: number; readonly to: number }[];
  readonly diagnostics: readonly Diagnostic[];
}

/** The lines of the set-up: the first paragraph of every item of its lists. */
export function setUpLines(section: Section): SetUpLines {
  const pieces: { text: string; from: number; to: number }[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const block of section.blocks) {
    if (block.is !== 'bullets' && block.is !== 'steps') continue;
    for (const { sentence, range } of block.items) {
      if (sentence === null)
        diagnostics.push(
          diagnostic('line-empty', { from: range.from, to: Math.min(range.to, range.from + 1) }),
        );
      else pieces.push({ text: sentence.text, from: sentence.range.from, to: sentence.range.to });
    }
  }
  if (pieces.length === 0 && diagnostics.length === 0)
    diagnostics.push(diagnostic('no-set-up-lines', section.heading.range));
  return { pieces, diagnostics };
}
