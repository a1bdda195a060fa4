import {
  compile,
  read,
  Stage,
  type Card,
  type Judged,
  type Played,
  type Scene,
  type StageNext,
  type TableData,
  type TableSlip,
} from '@foregone/engine';
import { useCallback, useMemo, useState } from 'react';
import { wayTouched, type Touched } from './touch.ts';

export interface Performing {
  readonly start: TableData;
  readonly scenes: readonly Scene[];
  readonly next: StageNext;
  /** True where a step is over and the next has not begun. */
  readonly between: boolean;
  readonly ended: boolean;
  /** True where the working cannot go on. */
  readonly stuck: boolean;
  readonly judged: readonly Judged[];
  readonly cards: readonly Card[];
  readonly canGoBack: boolean;
  /** How the cards lie now. */
  readonly now: TableData;
  readonly take: (key: string | number) => void;
  /** Takes the way that touching a card stands for; false where it stands for none. */
  readonly touch: (touched: Touched) => boolean;
  /** What can go wrong in doing the step about to be done. */
  readonly slips: () => readonly TableSlip[];
  readonly slip: (slip: string, key: string) => void;
  /** Goes on by itself until something is to be chosen or the step is over. */
  readonly step: () => void;
  /** Finishes the step with choices at random. */
  readonly stepAtRandom: () => void;
  /** Finishes the step with the first way on, or the last: what an awkward spectator does. */
  readonly stepAwkwardly: () => void;
  readonly back: () => void;
  readonly reset: () => void;
  readonly wholeAtRandom: () => void;
  /** Plays with these choices to the end; false where they do not fit the note. */
  readonly follow: (keys: readonly string[]) => boolean;
}

// More decisions than the longest mix takes; a step is given up rather than followed for ever.
const MOST_OPTIONS = 2000;

/** A performance of a note on the table, built of the same stage as the command line's; null while the note is not understood. */
export function useStage(text: string): Performing | null {
  const stage = useMemo(() => {
    const { routine } = compile(read(text));
    return routine === undefined ? null : new Stage(routine, text);
  }, [text]);
  const [history, setHistory] = useState<{ stage: Stage; played: readonly Played[] } | null>(null);
  const [awkward, setAwkward] = useState(0);
  const played = useMemo(
    () => (stage === null ? [] : history?.stage === stage ? history.played : [stage.filled()]),
    [stage, history],
  );
  const push = useCallback(
    (next: Played) => stage !== null && setHistory({ stage, played: [...played, next] }),
    [stage, played],
  );
  return useMemo(() => {
    const now = played.at(-1);
    if (stage === null || now === undefined) return null;
    const go = (pick: (ways: StageNext['ways']) => StageNext['ways'][number] | undefined) => {
      let at = now;
      for (let i = 0; i < MOST_OPTIONS && !at.ended && at.stuck === undefined; i++) {
        const { ways } = stage.next(at);
        const way = ways.length === 1 ? ways[0] : pick(ways);
        if (way === undefined) break;
        at = stage.take(at, way.key);
        if (stage.isBetweenSteps(at)) break;
      }
      if (at !== now) push(at);
    };
    return {
      start: stage.performance(now).start,
      scenes: stage.storyboard(now),
      next: stage.next(now),
      between: stage.isBetweenSteps(now),
      ended: now.ended,
      stuck: now.stuck !== undefined,
      judged: stage.judge(now),
      cards: now.start.cards,
      canGoBack: played.length > 1,
      now: stage.table(now),
      take: (key) => push(stage.take(now, key)),
      touch: (touched) => {
        const { ways } = stage.next(now);
        const key = wayTouched(ways, stage.table(now), (one) => stage.table(stage.take(now, one)), touched);
        if (key !== undefined) push(stage.take(now, key));
        return key !== undefined;
      },
      slips: () => (now.ended || now.stuck !== undefined ? [] : stage.slips(now)),
      slip: (slip, key) => push(stage.slip(now, slip, key)),
      step: () => go(() => undefined),
      stepAtRandom: () => push(stage.goOn(now, Math.random, 'step')),
      stepAwkwardly: () => {
        setAwkward(awkward + 1);
        go((ways) => (awkward % 2 === 0 ? ways[0] : ways.at(-1)));
      },
      back: () => setHistory({ stage, played: played.slice(0, -1) }),
      reset: () => setHistory(null),
      wholeAtRandom: () => {
        const whole = stage.randomly(Math.random);
        setHistory({ stage, played: [played[0]!, whole] });
      },
      follow: (keys) => {
        const found = stage.byKeys(keys);
        if (!found.ok) return false;
        setHistory({ stage, played: [played[0]!, found.value] });
        return true;
      },
    };
  }, [stage, played, push, awkward]);
}
