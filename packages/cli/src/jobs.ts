import {
  certificateOf,
  check,
  compile,
  moments,
  read,
  recheckCertificate,
  smtOf,
  type Certificate,
  type Limits,
  type Recheck,
  type Report,
  type Result,
  type SentenceMoments,
  type Trouble,
} from '@foregone/engine';

/** What may take long, as plain data in and out, so that another thread can do it. */
export type Job =
  | { readonly job: 'check'; readonly text: string; readonly limits: JobLimits; readonly certify: boolean }
  | { readonly job: 'moments'; readonly text: string; readonly limits: JobLimits }
  | { readonly job: 'export'; readonly text: string; readonly options: ExportJobOptions }
  | { readonly job: 'recheck'; readonly json: string };

export type JobLimits = Omit<Limits, 'goOn'>;

export interface ExportJobOptions {
  /** The sentence of the ending, 1 for the first; null where the note has only one. */
  readonly sentence: number | null;
  readonly rounds: number;
  readonly work: number;
}

export interface Answers {
  readonly check: { readonly report: Report; readonly certificate: Result<Certificate, Trouble> | null };
  readonly moments: { readonly report: Report; readonly moments: Result<SentenceMoments[], Trouble> };
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

export type Answer<J extends Job> = Answers[J['job']];

/** Does a job here and now. `goOn` is asked now and then and ends it when it says no. */
export function doJob(job: Job, goOn: (spent: number) => boolean): Answers[Job['job']] {
  switch (job.job) {
    case 'check': {
      const checked = check(job.text, { ...job.limits, goOn });
      return { report: checked.report, certificate: job.certify ? certificateOf(checked) : null };
    }
    case 'moments': {
      const limits = { ...job.limits, goOn };
      const checked = check(job.text, limits);
      return { report: checked.report, moments: moments(checked, limits) };
    }
    case 'export':
      return exported(job.text, job.options, goOn);
    case 'recheck':
      return recheckCertificate(job.json);
  }
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
