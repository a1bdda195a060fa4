import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { MOST_SIZE, sizesOf, type SizeRange, type SizeRow } from '../insight/likeness/sizes.ts';
import type { Limits } from '../proving/question.ts';
import { answered, type Asked } from './asked.ts';

/** The routine at every number of cards that its set-up can be written for. */
export interface SizesReport {
  /** The note's own number of cards. */
  readonly own: number;
  /** What was taken to grow with the packet. */
  readonly scaled: readonly string[];
  readonly rows: readonly SizeRow[];
  /** The numbers that work, in words: `even numbers`, `all tried`, `none`. */
  readonly pattern: string;
  /** `proved`: the verdict on every number tried is certain; `tried`: of some only random performances were tried. */
  readonly how: 'proved' | 'tried';
  readonly words: string;
}

/**
 * Verdicts at all numbers of cards from `least` to `most`; numbers of the ending that are the packet, its half or its middle grow along
 * unless they are `kept`. `told` is called after each.
 */
export function sizesReport(
  asked: Asked,
  range: Partial<SizeRange>,
  limits: Limits,
  told?: (row: SizeRow) => void,
): Result<SizesReport, Trouble> {
  return answered(asked, limits, ({ text }) => {
    const found = sizesOf(text, { least: 2, most: MOST_SIZE, numbers: 'scaled', ...range }, limits, told);
    if (typeof found === 'string')
      return bad(trouble(found === 'of one size' ? 'sizes-one' : 'sizes-named-cards'));
    const { scaled, rows, pattern, how, words } = found;
    return good({ own: scaled.cards, scaled: scaled.words, rows, pattern, how, words });
  });
}
