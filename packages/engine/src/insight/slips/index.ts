import { cardDropped } from './card-dropped.ts';
import { cardTurned } from './card-turned.ts';
import { cutNotCompleted } from './cut-not-completed.ts';
import { miscount } from './miscount.ts';
import type { Slip } from './slip.ts';
import { stepForgotten } from './step-forgotten.ts';
import { twoAsOne } from './two-as-one.ts';
import { wrongHeapOnTop } from './wrong-heap-on-top.ts';
import { wrongOneFirst } from './wrong-one-first.ts';
import { wrongTurn } from './wrong-turn.ts';

/** The usual mistakes, the commonest first; a new one is its own file and one line here. */
export const SLIPS: readonly Slip[] = [
  twoAsOne,
  miscount,
  cutNotCompleted,
  wrongHeapOnTop,
  wrongTurn,
  wrongOneFirst,
  cardTurned,
  cardDropped,
  stepForgotten,
];
