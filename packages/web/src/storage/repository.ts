import { openStore, type Store } from './db.ts';
import * as history from './history.ts';
import * as notes from './notes.ts';
import type { NoteRecord, NoteSummary, VersionKind, VersionRecord } from './records.ts';
import * as settings from './settings.ts';

/** Everything a room may ask of the notes kept in this browser. */
export interface Repository {
  readonly store: Store;
  listNotes(): Promise<NoteRecord[]>;
  listTrash(): Promise<NoteRecord[]>;
  getNote(id: string): Promise<NoteRecord | undefined>;
  createNote(text: string): Promise<NoteRecord>;
  createNotes(texts: readonly string[]): Promise<NoteRecord[]>;
  saveNote(id: string, text: string, baseRevision: number): Promise<notes.SaveOutcome>;
  renameNote(id: string, title: string): Promise<notes.SaveOutcome>;
  duplicateNote(id: string): Promise<NoteRecord | undefined>;
  trashNotes(ids: readonly string[]): Promise<void>;
  restoreNotes(ids: readonly string[]): Promise<void>;
  endNotes(ids: readonly string[]): Promise<void>;
  saveSummary(id: string, summary: NoteSummary): Promise<void>;
  versionsOf(id: string): Promise<VersionRecord[]>;
  keepVersion(
    id: string,
    text: string,
    kind: Exclude<VersionKind, 'automatic'>,
    name?: string,
  ): Promise<void>;
  nameVersion(key: number, name: string): Promise<void>;
  restoreVersion(id: string, text: string): Promise<notes.SaveOutcome>;
  getSettings(): Promise<settings.Settings>;
  setSetting<Name extends keyof settings.Settings>(name: Name, value: settings.Settings[Name]): Promise<void>;
}

export function createRepository(store: Store): Repository {
  return {
    store,
    listNotes: () => notes.listNotes(store),
    listTrash: () => notes.listTrash(store),
    getNote: (id) => notes.getNote(store, id),
    createNote: (text) => notes.createNote(store, text),
    createNotes: (texts) => notes.createNotes(store, texts),
    saveNote: (id, text, base) => notes.saveNote(store, id, text, base),
    renameNote: (id, title) => notes.renameNote(store, id, title),
    duplicateNote: (id) => notes.duplicateNote(store, id),
    trashNotes: (ids) => notes.trashNotes(store, ids),
    restoreNotes: (ids) => notes.restoreNotes(store, ids),
    endNotes: (ids) => notes.endNotes(store, ids),
    saveSummary: (id, summary) => notes.saveSummary(store, id, summary),
    versionsOf: (id) => history.versionsOf(store, id),
    keepVersion: (id, text, kind, name) => history.keepVersion(store, id, text, kind, name),
    nameVersion: (key, name) => history.nameVersion(store, key, name),
    restoreVersion: (id, text) => notes.restoreVersion(store, id, text),
    getSettings: () => settings.getSettings(store),
    setSetting: (name, value) => settings.setSetting(store, name, value),
  };
}

/** The notes of this browser. Nothing is opened before the first question. */
export const repository: Repository = createRepository(openStore());
