import type { Repository } from '../storage/repository.ts';
import { loadExamples } from './texts.ts';

/** Fills an empty shelf with the examples, once in the life of a browser, however many tabs open at the same time. */
export async function welcome(repository: Repository): Promise<void> {
  const fill = async () => {
    if ((await repository.getSettings()).welcomed) return;
    const { db } = repository.store;
    if ((await db.notes.count()) === 0) await repository.createNotes(await loadExamples());
    await repository.setSetting('welcomed', true);
  };
  await (navigator.locks === undefined ? fill() : navigator.locks.request('foregone.welcome', fill));
}
