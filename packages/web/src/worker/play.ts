import { seeded, Stage, type Compiled, type Played } from '@foregone/engine';
import type { ChoiceAt, OnePerformance } from './protocol.ts';

/** Decisions after which a performance is left as it is. */
const MOST = 2_000;
/** Ways looked into for steps not come by yet. */
const MOST_PEEKED = 12;

/**
 * A performance by chance that comes by as many steps as it can, so that every line of the page has cards to show.
 *
 * @param which the same number gives the same performance
 */
export function onePerformance(
  routine: NonNullable<Compiled['routine']>,
  text: string,
  which: number,
): OnePerformance {
  const stage = new Stage(routine, text);
  const random = seeded(which + 1);
  const choices = new Map<string, ChoiceAt>();
  const isNew = (played: Played) => {
    const { step } = stage.next(played);
    return step !== null && !choices.has(step.number);
  };
  let played = stage.begin();
  for (let count = 0; count < MOST && !played.ended && played.stuck === undefined; count += 1) {
    const { step, ways } = stage.next(played);
    const [first] = ways;
    if (first === undefined) break;
    if (step !== null && !choices.has(step.number)) {
      choices.set(step.number, { number: step.number, who: step.who, ways: ways.length });
    }
    // What the set-up leaves open stays as it is written.
    let key = first.key;
    if (step !== null && ways.length > 1) {
      const from = played;
      const open = ways.length > MOST_PEEKED ? [] : ways.filter((way) => isNew(stage.take(from, way.key)));
      const among = open.length > 0 ? open : ways;
      key = among[Math.floor(random() * among.length)]?.key ?? key;
    }
    played = stage.take(played, key);
  }
  return { performance: stage.performance(played), choices: [...choices.values()] };
}
