import { Echelon2 } from '../packages/engine/src/base/echelon.ts';
import { seeded } from '../packages/engine/src/base/seeded.ts';
import { measure, PLAN } from './measure.ts';

const SIZE = 512;

/** Milliseconds for one fixed piece of work, a GF(2) elimination of 512 random rows: how fast the machine is just now. */
export function calibrationMs(): number {
  const random = seeded(1);
  const rows = Array.from({ length: SIZE }, () =>
    Uint32Array.from({ length: SIZE / 32 }, () => Math.floor(random() * 2 ** 32)),
  );
  const eliminate = (): number => {
    const basis = new Echelon2(SIZE);
    for (const row of rows) basis.insert(row.slice());
    return basis.rank;
  };
  return measure([{ name: 'elimination', run: eliminate }], { ...PLAN, turns: 5 })[0].best;
}
