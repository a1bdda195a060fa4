import { fileNamesOf } from './file-names.ts';
import type { Disk } from './folder-disk.ts';
import { planSteps, type DiskFile, type Step } from './folder-plan.ts';
import type { NoteRecord } from './records.ts';
import type { Repository } from './repository.ts';

export interface SyncOutcome {
  /** False when all the files were gone at once, and nothing was done. */
  readonly sameFolder: boolean;
  /** Titles of notes that were changed on both sides; both texts stand on both sides now. */
  readonly parted: readonly string[];
  /** Titles of notes whose files were removed; they lie in the bin. */
  readonly trashed: readonly string[];
}

/** Brings shelf and folder into step, once. What changes meanwhile is left for the next time. */
export async function syncFolder(repository: Repository, disk: Disk): Promise<SyncOutcome> {
  const { db } = repository.store;
  const files = await disk.list();
  const notes = await db.notes.toArray();
  const steps = planSteps({ files, notes, links: await db.links.toArray() });
  if (steps === undefined) return { sameFolder: false, parted: [], trashed: [] };
  const byId = new Map(notes.map((note) => [note.id, note]));
  const paths = new Set(files.map(({ path }) => path));
  for (const step of steps) await carryOut(step, repository, disk, byId, paths);
  const titles = (what: Step['do']) =>
    steps.flatMap((step) => (step.do === what && 'note' in step ? (byId.get(step.note)?.title ?? []) : []));
  return { sameFolder: true, parted: titles('part'), trashed: titles('trash') };
}

/** Lets go of the folder: its files and the notes stay as they are. */
export async function forgetFolder(repository: Repository): Promise<void> {
  await repository.setSetting('folder', null);
  await repository.store.db.links.clear();
}

async function carryOut(
  step: Step,
  repository: Repository,
  disk: Disk,
  notes: ReadonlyMap<string, NoteRecord>,
  paths: Set<DiskFile['path']>,
): Promise<void> {
  const { links } = repository.store.db;
  switch (step.do) {
    case 'write': {
      const text = notes.get(step.note)!.text;
      if (await disk.write(step.path, text, step.was)) {
        await links.put({ path: step.path, note: step.note, seen: text });
      }
      return;
    }
    case 'save': {
      const outcome = await repository.saveNote(step.note, step.text, step.revision);
      if (outcome.kind === 'saved') await links.put({ path: step.path, note: step.note, seen: step.text });
      return;
    }
    case 'part':
    case 'bring in': {
      const { id } = await repository.createNote(step.text);
      await links.put({ path: step.path, note: id, seen: step.text });
      if (step.do === 'part') await writeNew(step.note, repository, disk, notes, paths);
      return;
    }
    case 'new file':
      await writeNew(step.note, repository, disk, notes, paths);
      return;
    case 'trash':
      await repository.trashNotes([step.note]);
      await links.delete(step.path);
      return;
    case 'link':
      await links.put({ path: step.path, note: step.note, seen: step.seen });
      return;
    case 'forget':
      await links.delete(step.path);
  }
}

async function writeNew(
  id: string,
  repository: Repository,
  disk: Disk,
  notes: ReadonlyMap<string, NoteRecord>,
  paths: Set<string>,
): Promise<void> {
  const { title, text } = notes.get(id)!;
  const path = fileNamesOf([title], paths)[0]!;
  paths.add(path);
  if (await disk.write(path, text, '')) await repository.store.db.links.put({ path, note: id, seen: text });
}
