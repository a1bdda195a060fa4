import {
  certificateOf,
  check,
  moments,
  recheckCertificate,
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
  | { readonly job: 'recheck'; readonly json: string };

export type JobLimits = Omit<Limits, 'goOn'>;

export interface Answers {
  readonly check: { readonly report: Report; readonly certificate: Result<Certificate, Trouble> | null };
  readonly moments: { readonly report: Report; readonly moments: Result<SentenceMoments[], Trouble> };
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
    case 'recheck':
      return recheckCertificate(job.json);
  }
}
