import {
  advice,
  afterMishap,
  blame,
  certificateOf,
  check,
  compile,
  freedom,
  moments,
  read,
  recheckCertificate,
  slipsOf,
  smtOf,
  structuresOf,
  type Advice,
  type AfterReport,
  type AlterationData,
  type Blame,
  type Certificate,
  type FailureData,
  type FreedomReport,
  type FreedomRowData,
  type Limits,
  type Recheck,
  type Report,
  type Result,
  type SentenceMoments,
  type StepStructures,
  type SlipRow,
  type Trouble,
} from '@foregone/engine';
import type { JobLimits } from './job-limits.ts';
import { doInsightJob, type InsightAnswers, type InsightJob } from './insight-jobs.ts';

/** What may take long, as plain data in and out, so that another thread can do it. */
export type Job =
  | InsightJob
  | {
      readonly job: 'check';
      readonly text: string;
      readonly limits: JobLimits;
      readonly certify: boolean;
      /** Whether it is asked when a sentence that can fail would work, and what has to be said aloud. */
      readonly advise?: boolean;
    }
  | { readonly job: 'moments'; readonly text: string; readonly limits: JobLimits }
  | {
      readonly job: 'freedom';
      readonly text: string;
      readonly limits: JobLimits;
      /** The place asked about; null for all. */
      readonly at: string | null;
      /** A row whose shortest failing performance is asked for. */
      readonly failing: string | null;
      /** Two or three moves one after the other instead of one. */
      readonly moves: 1 | 2 | 3;
    }
  | {
      readonly job: 'slips';
      readonly text: string;
      readonly limits: JobLimits;
      /** The step asked about; null for all. */
      readonly at: string | null;
    }
  | {
      readonly job: 'after';
      readonly text: string;
      readonly limits: JobLimits;
      readonly at: string;
      readonly slip: string;
    }
  | { readonly job: 'export'; readonly text: string; readonly options: ExportJobOptions }
  | { readonly job: 'recheck'; readonly json: string; readonly work: number };

export interface ExportJobOptions {
  /** The sentence of the ending, 1 for the first; null where the note has only one. */
  readonly sentence: number | null;
  readonly rounds: number;
  readonly work: number;
}

export interface Answers extends InsightAnswers {
  readonly check: {
    readonly report: Report;
    readonly certificate: Result<Certificate, Trouble> | null;
    readonly advice: Advice | null;
  };
  readonly moments: {
    readonly report: Report;
    readonly moments: Result<SentenceMoments[], Trouble>;
    readonly structures: Result<StepStructures[], Trouble>;
  };
  readonly freedom: {
    readonly report: Report;
    /** Why nothing can be said. */
    readonly problem: Trouble | null;
    /** The places there are to ask about. */
    readonly names: readonly string[];
    readonly places: readonly FreedomAnswer[];
  };
  readonly slips: {
    readonly report: Report;
    /** Why nothing can be said. */
    readonly problem: Trouble | null;
    readonly rows: readonly SlipRow[];
    /** What is to blame where a sentence can fail without any slip. */
    readonly blamed: readonly Blame[];
  };
  /** Null only of a note that was not understood. */
  readonly after: { readonly report: Report; readonly after: Result<AfterReport, Trouble> | null };
  readonly export: {
    /** Only of a note that was not understood. */
    readonly report: Report | null;
    /** The sentences there are to choose from. */
    readonly sentences: readonly string[];
    /** Null where it is not said which sentence is meant, or there is none. */
    readonly smt: Result<string, Trouble> | null;
  };
  readonly recheck: Result<Recheck, Trouble>;
}

/** What was asked about one place. */
export interface FreedomAnswer {
  readonly report: FreedomReport;
  /** Changes of the step that comes next; none at the end of a list. */
  readonly alterations: readonly AlterationData[];
  /** Only where they were asked for: several moves that are safe one after the other. */
  readonly sequences?: readonly FreedomRowData[];
  /** Only where it was asked for; null where none is known. */
  readonly failure?: FailureData | null;
}

export type Answer<J extends Job> = Answers[J['job']];

/** Does a job here and now. `goOn` is asked now and then and ends it when it says no. */
export function doJob(job: Job, goOn: (spent: number) => boolean): Answers[Job['job']] {
  switch (job.job) {
    case 'check': {
      const checked = check(job.text, { ...job.limits, goOn });
      return {
        report: checked.report,
        certificate: job.certify ? certificateOf(checked) : null,
        advice: job.advise === true ? advice(checked) : null,
      };
    }
    case 'moments': {
      const limits = { ...job.limits, goOn };
      const checked = check(job.text, limits);
      return {
        report: checked.report,
        moments: moments(checked, limits),
        structures: structuresOf(checked, limits),
      };
    }
    case 'freedom':
      return freedomOf(job, { ...job.limits, goOn });
    case 'slips':
      return slipsFor(job, { ...job.limits, goOn });
    case 'after': {
      const limits = { ...job.limits, goOn };
      // What is asked is not what the note proves, so only its text is looked at.
      const checked = check(job.text, { ...limits, work: 0, states: 0, trials: 0 });
      return { report: checked.report, after: afterMishap(checked, job.at, job.slip, limits) };
    }
    case 'export':
      return exported(job.text, job.options, goOn);
    case 'recheck':
      return recheckCertificate(job.json, { work: job.work, goOn });
    default:
      return doInsightJob(job, goOn);
  }
}

function freedomOf(
  { text, at, failing, moves }: Extract<Job, { job: 'freedom' }>,
  limits: Limits,
): Answers['freedom'] {
  const checked = check(text, limits);
  const { report } = checked;
  const desk = freedom(checked, limits);
  if (desk === null) return { report, problem: null, names: [], places: [] };
  if (!desk.ok) return { report, problem: desk.error, names: [], places: [] };
  const { places } = desk.value;
  const asked = at === null ? places : places.filter(({ id }) => id === at);
  return {
    report,
    problem: null,
    names: places.map(({ id }) => id),
    places: asked.flatMap(({ id, number }): FreedomAnswer[] => {
      const found = desk.value.report(id);
      if (found === null) return [];
      const alterations = number === '' ? [] : [...desk.value.alterations(number)];
      return [
        {
          report: found,
          alterations,
          ...(moves === 1 ? {} : { sequences: [...desk.value.sequences(id, moves)] }),
          ...(failing === null ? {} : { failure: desk.value.failure(id, failing) }),
        },
      ];
    }),
  };
}

function slipsFor({ text, at }: Extract<Job, { job: 'slips' }>, limits: Limits): Answers['slips'] {
  const checked = check(text, limits);
  const { report } = checked;
  const found = slipsOf(checked, limits, at ?? undefined);
  if (found === null) return { report, problem: null, rows: [], blamed: [] };
  const blamed = at === null ? blame(checked, limits) : [];
  if (!found.ok) return { report, problem: blamed.length > 0 ? null : found.error, rows: [], blamed };
  return { report, problem: null, rows: [...found.value], blamed };
}

function exported(
  text: string,
  { sentence, ...options }: ExportJobOptions,
  goOn: (spent: number) => boolean,
): Answers['export'] {
  const { routine } = compile(read(text));
  // Nothing is decided of a note that is not understood: the report only says why.
  if (routine === undefined) return { report: check(text).report, sentences: [], smt: null };
  const { endings } = routine;
  const ending = sentence === null && endings.length > 1 ? undefined : endings[(sentence ?? 1) - 1];
  return {
    report: null,
    sentences: endings.map((one) => one.text),
    smt: ending === undefined ? null : smtOf(routine, ending, { ...options, goOn }),
  };
}
