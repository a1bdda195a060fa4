import type { Budget } from '../base/budget.ts';
import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Names } from '../phrases/values.ts';
import type { Ending } from '../routine/routine.ts';
import { chanceIn } from './chance.ts';
import { EndingReader } from './ending.ts';
import { explainEnding } from './explain-ending.ts';
import { MOST_ENDINGS, MOST_SENTENCE, MOST_SUGGESTED } from './limits.ts';
import { lineOf, placeOf, splitAt, type Line, type Span } from './line.ts';
import type { Piece, Section } from './note.ts';
import type { Print } from './outcome.ts';
import { printEnding } from './print.ts';

export interface ReadEndings {
  readonly endings: readonly Ending[];
  readonly diagnostics: readonly Diagnostic[];
  readonly prints: readonly Print[];
}

/** The sentences of the ending: every item of its lists, each sentence to be proved on its own. */
export function readEndings(
  section: Section,
  names: Names,
  cards: readonly Card[],
  work: Budget,
  near = true,
): ReadEndings {
  const endings: Ending[] = [];
  const diagnostics: Diagnostic[] = [];
  const prints: Print[] = [];
  const reader = new EndingReader(names, cards, work);
  let missed = 0;
  let lists = 0;

  const readSpan = (line: Line, span: Span): void => {
    const range = placeOf(line, span);
    if (endings.length + missed >= MOST_ENDINGS) {
      if (missed + endings.length === MOST_ENDINGS)
        diagnostics.push(diagnostic('too-many-endings', range, { most: MOST_ENDINGS }));
      missed++;
      return;
    }
    const said = chanceIn(line, span);
    const read = reader.read(line, said?.rest ?? span);
    if (said?.asked === null) diagnostics.push(diagnostic('chance-number', said.range));
    if (read.sentence === null) {
      diagnostics.push(explainEnding(line, read.unread, names, cards, missed++ < MOST_SUGGESTED && near));
      return;
    }
    const { sentence } = read;
    read.diagnostics.forEach((one) => diagnostics.push(one));
    const text = line.text.slice(range.from - line.range.from, range.to - line.range.from);
    const chance = said?.asked ?? undefined;
    const ending: Ending =
      chance === undefined ? { text, range, sentence } : { text, range, sentence, chance };
    endings.push(ending);
    if (read.diagnostics.length === 0)
      prints.push({ range, say: () => printEnding(ending).replace(/\.$/, '') });
  };
  const readPiece = (piece: Piece): void => {
    if (piece.text.length > MOST_SENTENCE) {
      const { from } = piece.range;
      diagnostics.push(diagnostic('sentence-too-long', { from, to: from + 60 }, { most: MOST_SENTENCE }));
      return;
    }
    const line = lineOf(piece);
    if (line.tokens.length === 0) diagnostics.push(diagnostic('line-empty', piece.range));
    if (line.stray !== null)
      diagnostics.push(diagnostic('stray-sign', line.stray.range, { sign: line.stray.text }));
    for (const span of splitAt(line, { from: 0, to: line.tokens.length }, '.;')) readSpan(line, span);
  };
  for (const block of section.blocks) {
    if (block.is !== 'bullets' && block.is !== 'steps') continue;
    lists++;
    for (const { sentence, range } of block.items) {
      if (sentence === null)
        diagnostics.push(
          diagnostic('line-empty', { from: range.from, to: Math.min(range.to, range.from + 1) }),
        );
      else readPiece(sentence);
    }
  }
  if (lists === 0)
    diagnostics.push(diagnostic('no-ending-lines', section.heading.range, {}, { severity: 'warning' }));
  return { endings, diagnostics, prints };
}
