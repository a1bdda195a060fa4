import type { Key } from '../../src/moves/move.ts';
import { pack } from './cost.ts';
import { settle, type Moment } from './machine.ts';
import type { Start } from './starts.ts';
import type { Bits } from './table.ts';
import { startMoment, type Working } from './walk.ts';
import { nextOf } from './ways-on.ts';

/** Where a performance written as keys leads. */
export interface Replayed {
  readonly moment: Moment;
  readonly end: 'exit' | 'stuck' | 'under way';
  /** Packed as in cost.ts. */
  readonly cost: number;
}

/** Does what the keys say, one after the other; throws when one is not among the options of its moment. */
export function replay(
  routine: Pick<Working, 'steps'>,
  start: Start,
  keys: readonly Key[],
  bits: Bits,
): Replayed {
  let moment = startMoment(routine, start);
  let cost = 0;
  for (const key of keys) {
    const next = nextOf(moment, start.cards, bits);
    const ways = next.is === 'ways' ? next.ways.filter((way) => way.key === key) : [];
    if (ways.length !== 1) throw new Error(`${ways.length} ways on are called ${JSON.stringify(key)}`);
    const [way] = ways;
    cost += pack(way.off, way.begins ? 1 : 0, way.option ? 1 : 0);
    moment = way.to;
  }
  const { is } = nextOf(moment, start.cards, bits);
  return { moment: settle(moment).moment, end: is === 'ways' ? 'under way' : is, cost };
}
