import type { ReportVerdict } from '@foregone/engine';

/** What the program ends with; documented in docs/json.md. */
export const EXIT = {
  proved: 0,
  refuted: 1,
  notUnderstood: 2,
  undecided: 3,
  empty: 4,
  usage: 64,
  fault: 70,
  interrupted: 130,
} as const;

export function exitOf(verdict: ReportVerdict): number {
  switch (verdict) {
    case 'proved':
      return EXIT.proved;
    case 'refuted':
      return EXIT.refuted;
    case 'not understood':
      return EXIT.notUnderstood;
    case 'undecided':
      return EXIT.undecided;
    case 'empty':
      return EXIT.empty;
  }
}
