import { fileNamesOf } from './file-names.ts';
import type { NoteRecord } from './records.ts';
import type { Repository } from './repository.ts';

// Every zip carries the same date, so that the same notes always make the same file. It is the oldest a zip can carry.
const ZIP_DATE = new Date(1980, 0, 1);

/** The notes as Markdown files in one zip, to the letter as they are kept. */
export async function zipOf(
  notes: readonly Pick<NoteRecord, 'title' | 'text'>[],
): Promise<Uint8Array<ArrayBuffer>> {
  const { strToU8, zipSync } = await import('fflate');
  const names = fileNamesOf(notes.map(({ title }) => title));
  const files = Object.fromEntries(notes.map(({ text }, index) => [names[index]!, strToU8(text)]));
  return new Uint8Array(zipSync(files, { mtime: ZIP_DATE, level: 6 }));
}

/** Hands one note to the browser as a Markdown file, several as a zip. */
export async function exportNotes(notes: readonly NoteRecord[]): Promise<void> {
  const [first] = notes;
  if (first === undefined) return;
  if (notes.length === 1) {
    hand(new Blob([first.text], { type: 'text/markdown' }), fileNamesOf([first.title])[0]!);
  } else hand(new Blob([await zipOf(notes)], { type: 'application/zip' }), 'foregone-notes.zip');
}

/** Hands out everything on the shelf and remembers that it did. Gives back how many notes there were. */
export async function exportAll(repository: Repository): Promise<number> {
  const notes = await repository.listNotes();
  hand(new Blob([await zipOf(notes)], { type: 'application/zip' }), 'foregone-notes.zip');
  await repository.setSetting('backedUp', repository.store.now());
  return notes.length;
}

function hand(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken hold of it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
