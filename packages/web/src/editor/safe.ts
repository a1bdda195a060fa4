import type { ReportVerdict } from '@foregone/engine';
import { applied, insertStep } from './steps.ts';

/** One thing the hands could do besides, and what would become of the ending. */
export interface SafeRow {
  readonly sentence: string;
  readonly verdict: 'safe' | 'breaks' | 'undecided';
}

/** Mixes that performers put in, each leaving the cards in one packet as they found them. */
export const MIXES = [
  'Cut the packet.',
  'Cut the packet at an even number.',
  'Turn the packet over.',
  'Turn over the top 2 together.',
  'Turn over any number of cards from the top.',
  'Deal the packet into a pile.',
  'Transfer any number of cards from the top to the bottom.',
  'Milk the packet.',
  'Out-faro the packet.',
  'In-faro the packet.',
  'Overhand-shuffle the packet.',
  'Riffle the packet.',
  'Shuffle the packet freely.',
] as const;

/** The note with each of the mixes put in before a step, or at the end of the working. */
export function safeTexts(text: string, step: string | undefined): readonly string[] {
  return MIXES.map((sentence) => {
    const change = insertStep(text, sentence, step);
    return change === undefined ? text : applied(text, change);
  });
}

/** What the verdicts of those texts say of the mixes; what makes no sense at that place is left out. */
export function safeRows(verdicts: readonly ReportVerdict[]): readonly SafeRow[] {
  return MIXES.flatMap((sentence, index): SafeRow[] => {
    switch (verdicts[index]) {
      case 'proved':
        return [{ sentence, verdict: 'safe' }];
      case 'refuted':
        return [{ sentence, verdict: 'breaks' }];
      case 'undecided':
        return [{ sentence, verdict: 'undecided' }];
      case 'empty':
      case 'not understood':
      case undefined:
        return [];
    }
  });
}
