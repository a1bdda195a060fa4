import type { Store } from './db.ts';

/** What the shelf remembers besides notes; each with the value it has before anyone set it. */
export interface Settings {
  /** Whether the examples have been put on the shelf. */
  readonly welcomed: boolean;
  /** When all notes were last exported, in milliseconds since 1970; 0 for never. */
  readonly backedUp: number;
  /** When the reminder was last sent away. */
  readonly reminded: number;
  /** The note last looked at. */
  readonly lastNote: string;
  /** The linked folder on disk, where the browser has such a thing. */
  readonly folder: FileSystemDirectoryHandle | null;
}

export const NO_SETTINGS: Settings = {
  welcomed: false,
  backedUp: 0,
  reminded: 0,
  lastNote: '',
  folder: null,
};

export async function getSettings({ db }: Store): Promise<Settings> {
  const records = await db.settings.toArray();
  // Only `setSetting` writes here, so every value has its name's type.
  return { ...NO_SETTINGS, ...Object.fromEntries(records.map(({ name, value }) => [name, value])) };
}

export async function setSetting<Name extends keyof Settings>(
  { db }: Store,
  name: Name,
  value: Settings[Name],
): Promise<void> {
  await db.settings.put({ name, value });
}
