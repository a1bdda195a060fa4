import { useEffect } from 'react';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { createEngine, engineName, type Engine } from '../worker/client.ts';

/** A note on the shelf gets this many milliseconds of the engine's time; opened, it gets more. */
const TIME = 5_000;

/** Has the engine read, one after the other, the notes whose verdict is not known; it stops when the shelf is left. */
export function useVerdicts(notes: readonly NoteRecord[] | undefined): void {
  useEffect(() => {
    if (notes?.some(isUnread) !== true) return undefined;
    const engine = createEngine();
    let left = false;
    const run = async () => {
      for (const note of notes) {
        if (left) return;
        if (isUnread(note)) await readOne(engine, note);
      }
      engine.stop();
    };
    // A moment's pause, so that the shelf is drawn first.
    const timer = setTimeout(() => void run(), 200);
    return () => {
      left = true;
      clearTimeout(timer);
      engine.stop();
    };
    // The list is new after every note that was read; the run goes on with the old one, which has the same texts.
  }, [notes?.map(({ id, revision }) => `${id}${revision}`).join()]);
}

function isUnread({ summary, revision }: NoteRecord): boolean {
  return summary?.revision !== revision || summary.engine !== engineName;
}

async function readOne(engine: Engine, { id, text, revision }: NoteRecord): Promise<void> {
  const found = await engine.ask('check', text, { time: TIME });
  if (found === undefined) return;
  const { report, digest } = found;
  const { verdict } = report;
  // Of the same text, so the engine has it before it already.
  const structures = (await engine.ask('structures', text, { time: TIME })) ?? [];
  await repository.saveSummary(id, { ...digest, engine: engineName, revision, verdict, structures });
}
