import type { Form } from './form.ts';
import { across } from './forms/across.ts';
import { allAlike } from './forms/all-alike.ts';
import { alternating } from './forms/alternating.ts';
import { balance } from './forms/balance.ts';
import { blocks } from './forms/blocks.ts';
import { counted } from './forms/counted.ts';
import { cyclicMirror } from './forms/cyclic-mirror.ts';
import { cyclicStack } from './forms/cyclic-stack.ts';
import { grid } from './forms/grid.ts';
import { halfOffset } from './forms/half-offset.ts';
import { keyDistance } from './forms/key-distance.ts';
import { mirrored } from './forms/mirrored.ts';
import { oddAsEven } from './forms/odd-as-even.ts';
import { oneEnd } from './forms/one-end.ts';
import { pairs } from './forms/pairs.ts';
import { repeating } from './forms/repeating.ts';
import { residue } from './forms/residue.ts';
import { separated } from './forms/separated.ts';
import { sums } from './forms/sums.ts';
import { sumsAcross } from './forms/sums-across.ts';
import { upTotal } from './forms/up-total.ts';
import { windows } from './forms/windows.ts';

/** Every structure that is recognised; a new one is its own file and one line here. Of equally strong ones the first is told. */
export const FORMS: readonly Form[] = [
  allAlike,
  alternating,
  separated,
  halfOffset,
  repeating,
  mirrored,
  pairs,
  cyclicMirror,
  across,
  blocks,
  cyclicStack,
  windows,
  sums,
  sumsAcross,
  grid,
  upTotal,
  counted,
  oddAsEven,
  balance,
  residue,
  keyDistance,
  oneEnd,
];
