import { exportAll, exportNotes } from '../storage/export-notes.ts';
import type { Imported, Refusal } from '../storage/import-limits.ts';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { askToStay } from '../storage/room.ts';
import { isFull } from '../storage/autosave.ts';
import { say } from '../ui/live.tsx';
import { notify } from '../ui/notices.tsx';
import { go } from '../ui/routes.ts';

const LASTS = 10_000;

const REFUSALS: Readonly<Record<Refusal, string>> = {
  'too long': 'too long',
  'not text': 'not text',
  damaged: 'damaged',
  'too many': 'too many files at once',
  'too much': 'too much at once',
  'too slow': 'taking too long',
  empty: 'empty',
};

/** Carries something out and, where the browser has no room for it, says so and offers the way out. */
export async function attempt(doing: () => Promise<void>): Promise<void> {
  try {
    await doing();
  } catch (error) {
    if (!isFull(error)) throw error;
    notify({
      text: 'The browser has no more room for notes. Nothing was lost, and this was not done.',
      tone: 'brick',
      action: { label: 'Export all notes', run: () => void exportEverything() },
    });
  }
}

export function exportEverything(): Promise<void> {
  return attempt(async () => {
    const count = await exportAll(repository);
    say(`${counted(count)} exported.`);
  });
}

export function openNote(id: string): void {
  go({ room: 'note', id });
}

export function startNote(text: string): Promise<void> {
  return attempt(async () => {
    const { id } = await repository.createNote(text);
    void askToStay();
    openNote(id);
  });
}

export function duplicate(note: NoteRecord): Promise<void> {
  return attempt(async () => {
    const copy = await repository.duplicateNote(note.id);
    if (copy !== undefined) notify({ text: `“${copy.title}” stands on the shelf.`, lasts: LASTS });
  });
}

export function rename(note: NoteRecord, title: string): Promise<void> {
  return attempt(async () => {
    const outcome = await repository.renameNote(note.id, title);
    const renamed = outcome.kind === 'saved' && (await repository.getNote(note.id))?.title === title;
    if (renamed) say(`Renamed to ${title}.`);
    else {
      notify({
        text: `“${note.title}” could not be renamed: the head of the note cannot be read. Open it and mend the head.`,
        tone: 'brick',
        action: { label: 'Open', run: () => openNote(note.id) },
      });
    }
  });
}

/** Throws notes away and offers them back. */
export function throwAway(notes: readonly NoteRecord[]): Promise<void> {
  return attempt(async () => {
    const ids = notes.map(({ id }) => id);
    await repository.trashNotes(ids);
    notify({
      text: `${notes.length === 1 ? `“${notes[0]!.title}”` : counted(notes.length)} thrown away.`,
      lasts: LASTS,
      action: { label: 'Undo', run: () => void putBack(ids) },
    });
  });
}

export function putBack(ids: readonly string[]): Promise<void> {
  return attempt(async () => {
    await repository.restoreNotes(ids);
    say(`${counted(ids.length)} back on the shelf.`);
  });
}

/** Ends notes of the bin for good. */
export function endForGood(ids: readonly string[]): Promise<void> {
  return attempt(async () => {
    await repository.endNotes(ids);
    say(`${counted(ids.length)} gone for good.`);
  });
}

export function exportChosen(notes: readonly NoteRecord[]): Promise<void> {
  return attempt(() => exportNotes(notes));
}

/** Puts what an import read on the shelf; a text that is already there is not put there twice. */
export function takeIn({ texts, refused, others }: Imported): Promise<void> {
  return attempt(async () => {
    const present = new Set((await repository.listNotes()).map(({ text }) => text));
    const fresh = [...new Set(texts)].filter((text) => !present.has(text));
    if (fresh.length > 0) await repository.createNotes(fresh);
    void askToStay();
    const already = texts.length - fresh.length;
    const first = refused[0];
    const lines = [
      fresh.length > 0 || refused.length === 0
        ? `${counted(fresh.length)} brought in.`
        : 'Nothing was brought in.',
      already > 0 ? `${counted(already)} already here.` : '',
      others > 0 ? `${others} other ${others === 1 ? 'file' : 'files'} passed over.` : '',
      first === undefined ? '' : `Refused: ${first.name} (${REFUSALS[first.why]})`,
      refused.length > 1 ? `and ${refused.length - 1} more.` : '',
    ];
    const isTrouble = refused.length > 0;
    notify({
      text: lines.filter((line) => line !== '').join(' '),
      tone: isTrouble ? 'brick' : 'pencil',
      ...(isTrouble ? {} : { lasts: LASTS }),
    });
  });
}

export function counted(count: number): string {
  return count === 1 ? 'One note' : `${count} notes`;
}
