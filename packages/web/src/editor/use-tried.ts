import type { Performance } from '@foregone/engine';
import { useState } from 'react';
import type { Known } from './desk.ts';

/** Something that is tried out on the note and breaks it. */
export interface Tried {
  /** `With “Riffle the packet” put in` */
  readonly words: string;
  readonly isKnown: boolean;
  /** Undefined where none was found that fails. */
  readonly performance: Performance | undefined;
}

type What = { readonly text: string } & (
  { readonly row: string } | { readonly words: string; readonly performance: Performance }
);

export interface Trying {
  /** The row put in of which the page wants to see how it breaks the note. */
  readonly row: string | undefined;
  readonly tryRow: (row: string) => void;
  readonly trySlip: (words: string, performance: Performance) => void;
  readonly leave: () => void;
}

/** What is tried out on this text; another text is not the one it was tried on. */
export function useTrying(text: string): Trying & { readonly triedIn: (known: Known) => Tried | undefined } {
  const [what, setWhat] = useState<What>();
  const now = what?.text === text ? what : undefined;
  const row = now !== undefined && 'row' in now ? now.row : undefined;
  return {
    row,
    tryRow: (next) => setWhat({ text, row: next }),
    trySlip: (words, performance) => setWhat({ text, words, performance }),
    leave: () => setWhat(undefined),
    triedIn({ breaking }) {
      if (now === undefined) return undefined;
      if (!('row' in now)) return { words: now.words, isKnown: true, performance: now.performance };
      const found = breaking?.text === text && breaking.row === now.row ? breaking : undefined;
      return {
        words: `With “${now.row.replace(/\.$/, '')}” put in`,
        isKnown: found !== undefined,
        performance: found?.value?.performance,
      };
    },
  };
}
