import type { MomentData, SentenceMoments, TableData } from '@foregone/engine';
import { useEffect, useState } from 'react';
import { createEngine } from '../worker/client.ts';

/** What the engine says of the note on the table; each part as soon as it is known. */
export interface Knowledge {
  /** The choices of a performance that fails. */
  readonly failure: readonly string[] | undefined;
  readonly moments: readonly SentenceMoments[];
}

const NOTHING: Knowledge = { failure: undefined, moments: [] };

export function useKnowledge(text: string): Knowledge {
  const [known, setKnown] = useState(NOTHING);
  useEffect(() => {
    setKnown(NOTHING);
    const engine = createEngine();
    const ask = async () => {
      const checked = await engine.ask('check', text);
      const failing = checked?.report.sentences.find(({ failure }) => failure !== null)?.failure;
      const failure = failing?.choices.map(String);
      setKnown({ failure, moments: [] });
      const found = await engine.ask('moments', text);
      if (found?.ok === true) setKnown({ failure, moments: found.value });
    };
    // The table can be played without it; a fault of the engine's is told in the Note room.
    ask().catch(() => {});
    return () => engine.stop();
  }, [text]);
  return known;
}

/** What is certain and needed of a table before a step, or at the end for an empty number, for each sentence of the ending. */
export function momentsAt(
  moments: readonly SentenceMoments[],
  number: string,
  table: TableData,
): readonly MomentData[] {
  const sizes = new Map(table.piles.map(({ name, cards }) => [name, cards.length]));
  const fits = (moment: MomentData) =>
    [...sizes].every(([name, size]) => (moment.sizes[name] ?? 0) === size) &&
    Object.entries(moment.sizes).every(([name, size]) => (sizes.get(name) ?? 0) === size) &&
    Object.entries(moment.numbers).every(([name, value]) => (table.numbers[name] ?? value) === value);
  return moments.flatMap(({ steps }) => {
    const step = steps?.find((one) => one.number === number);
    const found = step?.moments.find(fits);
    return found === undefined ? [] : [found];
  });
}
