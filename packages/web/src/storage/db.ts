import { Dexie, type Table } from 'dexie';
import type { LinkRecord, NoteRecord, SettingRecord, VersionRecord } from './records.ts';

export class NotesDatabase extends Dexie {
  declare readonly notes: Table<NoteRecord, string>;
  declare readonly versions: Table<VersionRecord, number, Omit<VersionRecord, 'key'>>;
  declare readonly settings: Table<SettingRecord, string>;
  declare readonly links: Table<LinkRecord, string>;

  constructor(name: string) {
    super(name);
    // Numbered steps, never edited once released: whoever opens an older shelf walks through all that follow.

    this.version(1).stores({ notes: 'id, changed' });

    // Two tabs could overwrite each other, and throwing away was final: notes count their revisions and can lie in the
    // bin, and earlier texts are kept.
    this.version(2)
      .stores({ notes: 'id, changed, trashed', versions: '++key, note, [note+made]' })
      .upgrade((step) =>
        step
          .table('notes')
          .toCollection()
          .modify((note: Record<string, unknown>) => {
            note['revision'] = 1;
            note['trashed'] = 0;
          }),
      );

    // The shelf shows verdicts without asking the engine again, keeps settings, and can follow a folder on disk.
    // Earlier texts say why they are kept: those with a name were named by a person.
    this.version(3)
      .stores({ settings: 'name', links: 'path, note' })
      .upgrade(async (step) => {
        await step
          .table('notes')
          .toCollection()
          .modify((note: Record<string, unknown>) => {
            note['summary'] = null;
          });
        await step
          .table('versions')
          .toCollection()
          .modify((version: Record<string, unknown>) => {
            version['name'] ??= '';
            version['kind'] = version['name'] === '' ? 'automatic' : 'named';
          });
      });
  }
}

/** Where notes live, and the clock they are dated by. */
export interface Store {
  readonly db: NotesDatabase;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

export function openStore(name = 'foregone', now: () => number = Date.now): Store {
  return { db: new NotesDatabase(name), now };
}
