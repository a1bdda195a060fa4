import type { Range } from '../base/diagnostic.ts';
import type { SlipVerdict } from '../insight/slips/judge-slips.ts';
import type { Notice } from '../insight/slips/visible.ts';
import type { FailureData } from './report.ts';

/** An ending that is certain all the same: a sentence of the note, one that says less, or something that was not claimed. */
export interface RemainsData {
  readonly words: string;
  readonly from: 'note' | 'weaker' | 'also';
}

/** One kind of slip in one step of a note, and what follows from it. */
export interface SlipRow {
  /** The step's number, place and sentence. */
  readonly step: string;
  readonly range: Range;
  readonly sentence: string;
  /** The kind: `card-turned`. Unique at its step. */
  readonly slip: string;
  /** `a card turned` */
  readonly title: string;
  readonly help: string;
  /** In how many ways it can happen there: which card, how many more. */
  readonly ways: number;
  /**
   * `harmless`: proved, whatever is chosen; `sometimes`: the ending comes out for some choices; `fatal`: for none; `harmful`: it does not
   * always come out, and whether it ever does was not worked out; `undecided`: not settled.
   */
  readonly verdict: SlipVerdict;
  /** The verdict in a sentence for a performer. */
  readonly words: string;
  /** Each sentence of the ending that holds without the slip. */
  readonly sentences: readonly { readonly text: string; readonly verdict: SlipVerdict }[];
  /** How likely the ending still comes out, in words; null where it is not to be told, or was not asked for. */
  readonly chance: string | null;
  /** Could it be noticed before the ending by who watches the piles, where first, and by what. */
  readonly notice: Notice;
  /** Empty where the slip is harmless. */
  readonly remains: readonly RemainsData[];
  /** A performance with the slip in which the ending fails; null where none does or none is known. */
  readonly failure: FailureData | null;
}

/** A kind of slip that can be made at the table, in all its ways. */
export interface TableSlip {
  readonly slip: string;
  readonly title: string;
  readonly help: string;
  readonly ways: readonly TableSlipWay[];
}

export interface TableSlipWay {
  readonly key: string;
  readonly words: string;
}
