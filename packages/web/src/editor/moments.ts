import type { MomentData, Performance, SentenceMoments, TableData } from '@foregone/engine';
import type { ChoiceAt, OnePerformance, Understood } from '../worker/protocol.ts';

/** What stands in the margin beside one step. */
export interface MarginEntry {
  readonly number: string;
  /** Where the step begins in the text. */
  readonly at: number;
  readonly choice: ChoiceAt | undefined;
  /** For each sentence of the ending that is a matter of equations. */
  readonly moments: readonly {
    readonly ending: string;
    readonly moment: MomentData;
    readonly others: number;
  }[];
  /** How the cards lie just before the step in the performance looked at. */
  readonly table: TableData | undefined;
}

/** Puts together what is known of every step, in the order of the page. */
export function marginOf(
  understood: readonly Understood[],
  play: OnePerformance | null | undefined,
  moments: readonly SentenceMoments[] | undefined,
): MarginEntry[] {
  const steps = understood.filter(({ kind }) => kind === 'step');
  const all = steps.map(({ number, range }): MarginEntry => {
    const found = (moments ?? []).flatMap(({ text, steps: all }) => {
      const here = all?.find((step) => step.number === number);
      const [moment] = here?.moments ?? [];
      return moment === undefined ? [] : [{ ending: text, moment, others: (here?.moments.length ?? 1) - 1 }];
    });
    return {
      number,
      at: range.from,
      choice: play?.choices.find((choice) => choice.number === number),
      moments: found,
      table: play === null || play === undefined ? undefined : tableBefore(play.performance, number)?.table,
    };
  });
  // A number with nothing beside it says nothing.
  return all.filter((entry) => entry.moments.length > 0 || entry.choice !== undefined);
}

/** The cards just before a step is done for the first time, and how many steps of the performance are over by then. */
export function tableBefore(
  { start, steps }: Performance,
  number: string,
): { readonly table: TableData; readonly done: number } | undefined {
  const index = steps.findIndex((step) => step.number === number || step.number.startsWith(`${number}.`));
  if (index === -1) return undefined;
  return { table: tableAfter({ start, steps }, index), done: index };
}

/** The cards after so many steps of a performance. */
export function tableAfter({ start, steps }: Pick<Performance, 'start' | 'steps'>, done: number): TableData {
  return steps[done - 1]?.after ?? start;
}
