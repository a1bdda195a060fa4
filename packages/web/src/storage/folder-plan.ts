import type { LinkRecord, NoteRecord } from './records.ts';

/** A file of the linked folder; without a text when it cannot be read as a note, and then it is left alone. */
export interface DiskFile {
  readonly path: string;
  readonly text: string | undefined;
}

/** One thing to do to bring shelf and folder into step. Nothing here destroys a text that is nowhere else. */
export type Step =
  /** The note was changed: write it, if the file still is as it was seen. */
  | { readonly do: 'write'; readonly path: string; readonly note: string; readonly was: string }
  /** The file was changed: put it into the note, if that still is at the revision it was seen at. */
  | {
      readonly do: 'save';
      readonly path: string;
      readonly note: string;
      readonly text: string;
      readonly revision: number;
    }
  /** Both were changed: the file's text becomes a note of its own, and the note gets a file of its own. */
  | { readonly do: 'part'; readonly path: string; readonly note: string; readonly text: string }
  /** A file nobody knows: a new note. */
  | { readonly do: 'bring in'; readonly path: string; readonly text: string }
  /** A note without a file gets one. */
  | { readonly do: 'new file'; readonly note: string }
  /** The file was removed and the note not changed since: it goes into the bin, from where it can come back. */
  | { readonly do: 'trash'; readonly path: string; readonly note: string }
  /** Both are alike already. */
  | { readonly do: 'link'; readonly path: string; readonly note: string; readonly seen: string }
  | { readonly do: 'forget'; readonly path: string };

export interface Sides {
  readonly files: readonly DiskFile[];
  /** Those in the bin included. */
  readonly notes: readonly NoteRecord[];
  readonly links: readonly LinkRecord[];
}

/**
 * What brings shelf and folder into step, from the text both had when they were last alike. Undefined when every linked file
 * is gone at once: that is another folder, or an empty drive, and not a wish.
 */
export function planSteps({ files, notes, links }: Sides): Step[] | undefined {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const byId = new Map(notes.map((note) => [note.id, note]));
  if (links.length > 1 && links.every(({ path }) => !byPath.has(path))) return undefined;

  const steps: Step[] = [];
  const linkedNotes = new Set<string>();
  for (const link of links) {
    linkedNotes.add(link.note);
    const file = byPath.get(link.path);
    byPath.delete(link.path);
    if (file !== undefined && file.text === undefined) continue;
    const step = stepFor(link, file?.text, byId.get(link.note));
    if (step !== undefined) steps.push(step);
  }

  const free = new Map(
    notes.filter(({ id, trashed }) => trashed === 0 && !linkedNotes.has(id)).map((note) => [note.text, note]),
  );
  const matched = new Set<string>();
  for (const { path, text } of byPath.values()) {
    if (text === undefined) continue;
    const twin = free.get(text);
    if (twin !== undefined && !matched.has(twin.id)) {
      matched.add(twin.id);
      steps.push({ do: 'link', path, note: twin.id, seen: text });
    } else steps.push({ do: 'bring in', path, text });
  }
  for (const { id, trashed } of notes) {
    if (trashed === 0 && !linkedNotes.has(id) && !matched.has(id)) steps.push({ do: 'new file', note: id });
  }
  return steps;
}

function stepFor(link: LinkRecord, text: string | undefined, note: NoteRecord | undefined): Step | undefined {
  const { path, note: id, seen } = link;
  if (note === undefined || note.trashed > 0) {
    // Thrown away here: the file stays, as a disk has no bin, and is a new note if it is ever changed.
    if (text === undefined) return { do: 'forget', path };
    return text === seen ? undefined : { do: 'bring in', path, text };
  }
  if (text === undefined) {
    return note.text === seen ? { do: 'trash', path, note: id } : { do: 'write', path, note: id, was: '' };
  }
  if (text === note.text) return text === seen ? undefined : { do: 'link', path, note: id, seen: text };
  if (text === seen) return { do: 'write', path, note: id, was: text };
  if (note.text === seen) return { do: 'save', path, note: id, text, revision: note.revision };
  return { do: 'part', path, note: id, text };
}
