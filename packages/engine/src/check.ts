import { sha256 } from '@noble/hashes/sha2';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils';
import { Budget } from './base/budget.ts';
import { diagnostic, trouble, type Trouble } from './base/diagnostic.ts';
import { bad, good, type Result } from './base/result.ts';
import { FreedomMemory } from './insight/freedom/memory.ts';
import { compile, type Compiled } from './note/compile.ts';
import { describe } from './note/messages/describe.ts';
import type { Note } from './note/note.ts';
import { read } from './note/read.ts';
import { BudgetEnded } from './routine/graph.ts';
import { certify } from './proving/certify.ts';
import { decide } from './proving/decide.ts';
import type { Decision } from './proving/decision.ts';
import { DEFAULT_LIMITS, type Limits } from './proving/question.ts';
import { readCertificate } from './recheck/read.ts';
import { recheck } from './recheck/recheck.ts';
import { afterReport, type AfterReport } from './report/after-report.ts';
import { blameFor, type Blame } from './report/blame-report.ts';
import { adviceFor, type Advice } from './report/advice.ts';
import { diagnosticData } from './report/diagnose.ts';
import { FreedomDesk } from './report/freedom-desk.ts';
import { makeReport } from './report/make-report.ts';
import { momentsReport, type SentenceMoments } from './report/moments.ts';
import { readingData } from './report/readings.ts';
import type { Report } from './report/report.ts';
import type { SlipRow } from './report/slips-data.ts';
import { slipRows } from './report/slips-report.ts';
import {
  CERTIFICATE_FORMAT,
  CERTIFICATE_VERSION,
  type Certificate,
  type SentenceProof,
} from './verdicts/certificate.ts';

/** A note with everything that was made of it on the way to its report. */
export interface Checked {
  readonly text: string;
  readonly note: Note;
  readonly compiled: Compiled;
  /** Absent where the note was not understood. */
  readonly decision?: Decision;
  readonly report: Report;
}

/**
 * From a note's text to its report: the whole way, in one call. Any text gives a report; what is spent is bounded by `limits`, in
 * counted work, and `limits.goOn` may end it earlier.
 */
export function check(text: string, limits: Limits = DEFAULT_LIMITS): Checked {
  const note = read(text);
  const compiled = compile(note);
  const { routine } = compiled;
  const decided = routine === undefined ? undefined : decide(routine, limits);
  // A sentence without meaning for these cards and piles is one that was not understood, though it could be read.
  const senseless = (decided?.troubles ?? []).map(({ ending, trouble: { code, facts } }) =>
    diagnostic(code, ending.range, facts),
  );
  const diagnostics = [...compiled.diagnostics, ...senseless].sort((a, b) => a.range.from - b.range.from);
  const decision = senseless.length > 0 ? undefined : decided;
  const report = makeReport({
    title: note.title,
    text,
    diagnostics: diagnosticData(diagnostics, text, describe),
    readings: readingData(compiled.readings, compiled.outline, text),
    decision,
    describe,
  });
  return { text, note, compiled, ...(decision === undefined ? {} : { decision }), report };
}

/** Enough for notes of some dozen cards, and no long wait for others. */
const ADVICE: Limits = { work: 2_000_000, states: 10_000, trials: 0, seed: 1 };

/**
 * When the sentences that can fail would work, and what has to be said aloud for those that cannot; null where the note was not
 * understood. Found within a small allowance of work: what is not found by then is left out.
 */
export function advice({ text, compiled, decision }: Checked, limits: Limits = ADVICE): Advice | null {
  return decision === undefined ? null : adviceFor(text, compiled, decision, limits, describe);
}

/** What a cause means, in one sentence. */
export function sayTrouble({ code, facts }: Trouble): string {
  return describe({ code, facts }).words;
}

/** Have and need of every sentence at every step, or that the work allowed was spent; none where the note was not understood. */
export function moments(
  { decision, text }: Checked,
  limits: Limits = DEFAULT_LIMITS,
): Result<SentenceMoments[], Trouble> {
  if (decision === undefined) return good([]);
  try {
    return good(momentsReport(decision, text, limits));
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
    return bad(trouble('budget-graph', { work: limits.work }));
  }
}

/**
 * What else could be done in a note at every place of its working, and at every step what could be left out, widened, repeated or
 * given away; null where the note was not understood. A memory kept over edits of the note spares what they leave alone.
 */
export function freedom(
  { compiled: { routine }, decision, text }: Checked,
  limits: Limits = DEFAULT_LIMITS,
  memory: FreedomMemory = new FreedomMemory(),
): Result<FreedomDesk, Trouble> | null {
  if (routine === undefined || decision === undefined) return null;
  return FreedomDesk.open({ text, routine, decision, limits, describe, memory });
}

/**
 * The usual slips in every step of a note, one after another in its order, and what follows from each; null where the note was not
 * understood, or why nothing is said.
 * @param at only this step, with chances, which cost more
 */
export function slipsOf(
  { compiled: { routine }, decision, text }: Checked,
  limits: Limits = DEFAULT_LIMITS,
  at?: string,
): Result<Generator<SlipRow>, Trouble> | null {
  if (routine === undefined || decision === undefined) return null;
  return slipRows({ text, routine, decision, limits, describe }, at);
}

/**
 * What is still certain after a mishap that is told in sentences of a working; null where the note was not understood.
 * @param at `3` for one that happens before step 3, `end` for one when all is done
 */
export function afterMishap(
  { compiled: { routine }, note }: Checked,
  at: string,
  sentences: string,
  limits: Limits = DEFAULT_LIMITS,
): Result<AfterReport, Trouble> | null {
  return routine === undefined ? null : afterReport({ note, routine, limits, describe }, at, sentences);
}

/** What is to blame for each sentence that can fail: the step that loses it, what would save it, which choices make it likelier. */
export function blame(
  { compiled: { routine }, decision, text }: Checked,
  limits: Limits = DEFAULT_LIMITS,
): Blame[] {
  return routine === undefined || decision === undefined ? [] : blameFor(routine, decision, text, limits);
}

/** SHA-256 of a text in UTF-8, hexadecimal. */
export function hashOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/**
 * The proofs of a note's sentences, to be checked by anybody; of a sentence that is not proved, or whose proof has no form that could be
 * checked, it says nothing. Else why there is none.
 */
export function certificateOf({ text, decision, report }: Checked): Result<Certificate, Trouble> {
  const proved = decision?.sentences.filter(({ verdict }) => verdict === 'proved') ?? [];
  if (decision === undefined || proved.length === 0)
    return bad(trouble('certificate-not-proved', { verdict: report.verdict }));
  const sentences = decision.sentences.map(
    (sentence): SentenceProof => certify(decision, sentence) ?? { text: sentence.ending.text, proof: 'none' },
  );
  if (sentences.every(({ proof }) => proof === 'none'))
    return bad(trouble('certificate-no-form', { sentences: proved.map(({ ending }) => ending.text) }));
  return good({
    format: CERTIFICATE_FORMAT,
    version: CERTIFICATE_VERSION,
    note: text,
    sha256: hashOf(text),
    sentences,
  });
}

/** Work that a check may take unless more is allowed: some minutes. Checking costs more than proving, for it saves nothing. */
export const RECHECK_WORK = 1_000_000_000;

/** What the checker says of one sentence. */
export interface RecheckedSentence {
  readonly text: string;
  readonly accepted: boolean;
  /** Why it was not accepted; null when it was. */
  readonly fault: Trouble | null;
  /** True where the certificate says nothing of the sentence. */
  readonly silent?: true;
}

export interface Recheck {
  readonly title: string;
  readonly accepted: boolean;
  readonly sentences: readonly RecheckedSentence[];
}

/**
 * Reads a certificate, compiles the note in it anew, and checks every proof; else why it cannot be checked at all, or that the work
 * allowed was spent.
 */
export function recheckCertificate(
  json: string,
  { work, goOn }: Pick<Limits, 'work' | 'goOn'> = { work: RECHECK_WORK },
): Result<Recheck, Trouble> {
  const certificate = readCertificate(json);
  if (!certificate.ok) return certificate;
  const { note: text, sha256: said, sentences: proofs } = certificate.value;
  if (hashOf(text) !== said.toLowerCase()) return bad(trouble('certificate-hash'));
  const note = read(text);
  const { routine, diagnostics } = compile(note);
  if (routine === undefined) {
    const first = diagnostics.find(({ severity }) => severity === 'error');
    return bad(trouble('certificate-note', { code: first?.code ?? '' }));
  }
  if (proofs.length !== routine.endings.length)
    return bad(
      trouble('certificate-sentences', { proofs: proofs.length, sentences: routine.endings.length }),
    );
  if (proofs.length === 0) return bad(trouble('certificate-sentences', { proofs: 0, sentences: 0 }));
  try {
    const sentences = recheck(routine, proofs, new Budget(work, goOn)).map(
      ({ text: sentence, fault, silent }): RecheckedSentence => ({
        text: sentence,
        accepted: fault === undefined && silent !== true,
        fault: fault ?? null,
        ...(silent === true ? { silent } : {}),
      }),
    );
    const spoken = sentences.filter(({ silent }) => silent !== true);
    const accepted = spoken.length > 0 && spoken.every((one) => one.accepted);
    return good({ title: note.title, accepted, sentences });
  } catch (error) {
    if (!(error instanceof BudgetEnded)) throw error;
    return bad(trouble('certificate-budget', { work }));
  }
}
