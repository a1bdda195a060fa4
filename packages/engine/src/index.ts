// Public names, in the order of the flow: a note is read, decided, reported, played.
export {
  advice,
  afterMishap,
  blame,
  certificateOf,
  check,
  freedom,
  hashOf,
  moments,
  RECHECK_WORK,
  recheckCertificate,
  sayTrouble,
  slipsOf,
  type Checked,
  type Recheck,
  type RecheckedSentence,
} from './check.ts';
export { DEFAULT_LIMITS, type Limits } from './proving/question.ts';
export { DEFAULT_ROUNDS, MOST_SMT_WORK, smtOf, type SmtOptions } from './proving/smt.ts';
export type { Diagnostic, Facts, Fix, Range, Severity, Trouble } from './base/diagnostic.ts';
export type { Result } from './base/result.ts';
export { seeded } from './base/seeded.ts';

export { compile, type Compiled } from './note/compile.ts';
export { format } from './note/format.ts';
export { read } from './note/read.ts';
export type { Note } from './note/note.ts';

export {
  REPORT_VERDICTS,
  type DiagnosticData,
  type FailureData,
  type ReadingData,
  type Report,
  type ReportVerdict,
  type RuleData,
  type SentenceReport,
} from './report/report.ts';
export type { Advice } from './report/advice.ts';
export type { Spoken } from './insight/conditions/spoken.ts';
export { lineAndColumn } from './report/diagnose.ts';
export type { Coverage } from './report/coverage.ts';
export { performanceOf, type Performance, type PerformanceStep } from './report/performance.ts';
export { storyboardOf, type Beat, type Scene } from './report/storyboard.ts';
export type { CardData, PileData, TableData } from './report/table-data.ts';
export type {
  EquationData,
  MomentData,
  SentenceMoments,
  StatementData,
  StepMoments,
} from './report/moments.ts';
export type { FreedomDesk } from './report/freedom-desk.ts';
export type {
  AlterationData,
  FreedomChoices,
  FreedomPlace,
  FreedomReport,
  FreedomRowData,
} from './report/freedom-data.ts';
export { FreedomMemory } from './insight/freedom/memory.ts';
export type { ChoiceData } from './insight/freedom/row.ts';
export {
  structuresOf,
  structuresReport,
  type MomentStructures,
  type NeededData,
  type StepStructures,
  type StructureData,
} from './report/structures.ts';
export { BudgetEnded } from './routine/graph.ts';
export { setUpReport, type SentenceNeed, type SetUpCount, type SetUpReport } from './report/set-up-report.ts';
export { setUpFound, type FoundSetUpData, type SetUpsFound } from './report/set-up-found.ts';
export type { StackingSteps } from './report/set-up-steps.ts';
export { setUpFaults, type CardAt, type SetUpFaultData, type SetUpFaults } from './report/set-up-check.ts';
export { sizesReport, type SizesReport } from './report/sizes-report.ts';
export { MOST_SIZE, type SizeRange, type SizeRow } from './insight/likeness/sizes.ts';
export {
  MIXING,
  mixingReport,
  type MeanData,
  type MixingOptions,
  type MixingReport,
  type OrdersData,
  type PlacesData,
  type RifflesData,
} from './report/mixing-report.ts';
export {
  sameReport,
  type ChainLink,
  type NameData,
  type SameReport,
  type SameVerdict,
} from './report/same-report.ts';
export { swapsReport, type SwapData, type SwapsReport } from './report/swaps-report.ts';
export { wordingOf } from './report/wording.ts';
export { counted, grouped } from './report/words.ts';
export type { AfterReport, AfterSentence } from './report/after-report.ts';
export type { Blame, BlameCondition, BlameRaise } from './report/blame-report.ts';
export type { LostData } from './report/lost.ts';
export type { RemainsData, SlipRow, TableSlip, TableSlipWay } from './report/slips-data.ts';
export { Stage, type Played, type StageNext } from './report/stage.ts';
export type { Judged } from './report/judge.ts';

export { MOVES } from './moves/index.ts';
export { CLAIMS } from './claims/index.ts';
export type { Move } from './moves/move.ts';
export type { Claim } from './claims/claim.ts';
export type { Certificate } from './verdicts/certificate.ts';
export type { Card } from './cards/card.ts';
