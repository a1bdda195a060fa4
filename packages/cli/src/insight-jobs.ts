import {
  check,
  mixingReport,
  sameReport,
  setUpFaults,
  setUpFound,
  setUpReport,
  sizesReport,
  swapsReport,
  type Limits,
  type MixingOptions,
  type MixingReport,
  type Report,
  type Result,
  type SameReport,
  type SetUpFaults,
  type SetUpReport,
  type SetUpsFound,
  type SizeRange,
  type SizesReport,
  type SwapsReport,
  type Trouble,
} from '@foregone/engine';
import type { JobLimits } from './job-limits.ts';

/** Further questions about notes, as plain data in and out. */
export type InsightJob =
  | {
      readonly job: 'set-up';
      readonly text: string;
      readonly limits: JobLimits;
      /** Cards at hand; null where no set-up is sought. */
      readonly from: string | null;
      /** Cards as they lie; null where none are to be checked. */
      readonly check: string | null;
    }
  | {
      readonly job: 'sizes';
      readonly text: string;
      readonly limits: JobLimits;
      readonly range: Partial<SizeRange>;
    }
  | {
      readonly job: 'mixing';
      readonly text: string;
      readonly limits: JobLimits;
      readonly options: Partial<MixingOptions>;
    }
  | { readonly job: 'same'; readonly texts: readonly [string, string]; readonly limits: JobLimits }
  | {
      readonly job: 'swaps';
      readonly text: string;
      readonly limits: JobLimits;
      readonly hand: string | null;
    };

export interface InsightAnswers {
  readonly 'set-up': {
    readonly report: Report;
    readonly needs: Result<SetUpReport, Trouble>;
    /** Null where it was not asked for. */
    readonly found: Result<SetUpsFound, Trouble> | null;
    readonly faults: Result<SetUpFaults, Trouble> | null;
  };
  readonly sizes: { readonly report: Report; readonly sizes: Result<SizesReport, Trouble> };
  readonly mixing: { readonly report: Report; readonly mixing: Result<MixingReport, Trouble> };
  readonly same: { readonly reports: readonly [Report, Report]; readonly same: Result<SameReport, Trouble> };
  readonly swaps: { readonly report: Report; readonly swaps: Result<SwapsReport, Trouble> };
}

export function doInsightJob(
  job: InsightJob,
  goOn: (spent: number) => boolean,
): InsightAnswers[InsightJob['job']] {
  const limits: Limits = { ...job.limits, goOn };
  switch (job.job) {
    case 'set-up': {
      const checked = check(job.text, limits);
      return {
        report: checked.report,
        needs: setUpReport(checked, limits),
        found: job.from === null ? null : setUpFound(checked, job.from, limits),
        faults: job.check === null ? null : setUpFaults(checked, job.check, limits),
      };
    }
    case 'sizes': {
      const checked = check(job.text, limits);
      return { report: checked.report, sizes: sizesReport(checked, job.range, limits) };
    }
    case 'mixing': {
      const checked = check(job.text, limits);
      return { report: checked.report, mixing: mixingReport(checked, job.options, limits) };
    }
    case 'same': {
      const [one, other] = [check(job.texts[0], limits), check(job.texts[1], limits)];
      return { reports: [one.report, other.report], same: sameReport(one, other, limits) };
    }
    case 'swaps': {
      const checked = check(job.text, limits);
      return { report: checked.report, swaps: swapsReport(checked, job.hand, limits) };
    }
  }
}
