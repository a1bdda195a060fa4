import type { Store } from './db.ts';
import type { NoteRecord, VersionKind, VersionRecord } from './records.ts';
import { APART, thinned } from './thinning.ts';

/** The earlier texts of a note, newest first. */
export async function versionsOf({ db }: Store, note: string): Promise<VersionRecord[]> {
  const versions = await db.versions
    .where('[note+made]')
    .between([note, -Infinity], [note, Infinity])
    .toArray();
  return versions.reverse();
}

/** Keeps a text for good, under a name or for a reason; a twin of the newest version of its kind is not kept twice. */
export async function keepVersion(
  { db, now }: Store,
  note: string,
  text: string,
  kind: Exclude<VersionKind, 'automatic'>,
  name = '',
): Promise<void> {
  await db.transaction('rw', db.versions, async () => {
    const newest = await newestOf(db, note);
    if (newest !== undefined && newest.text === text && newest.kind === kind && newest.name === name) return;
    await db.versions.add({ note, made: now(), kind, name, text });
  });
}

/** Names an earlier text, which keeps it from being thinned out; an empty name gives it back to the thinning. */
export async function nameVersion({ db }: Store, key: number, name: string): Promise<void> {
  await db.versions.update(key, { name, kind: name === '' ? 'automatic' : 'named' });
}

/**
 * Inside a save: keeps the text that is being replaced, unless the history already has it or something almost as young,
 * and thins out what has grown old.
 */
export async function keepOutgoing({ db, now }: Store, outgoing: NoteRecord): Promise<void> {
  const newest = await newestOf(db, outgoing.id);
  // While somebody writes, one text of every two minutes is enough; the last of a sitting is always kept.
  const isSameSitting =
    newest !== undefined && outgoing.changed - newest.made < APART && now() - outgoing.changed < APART;
  if (isSameSitting || newest?.text === outgoing.text || outgoing.text === '') return;
  const { id: note, changed: made, text } = outgoing;
  await db.versions.add({ note, made, kind: 'automatic', name: '', text });
  const all = await db.versions.where('note').equals(note).toArray();
  await db.versions.bulkDelete([...thinned(all, now())]);
}

function newestOf(db: Store['db'], note: string): Promise<VersionRecord | undefined> {
  return db.versions.where('[note+made]').between([note, -Infinity], [note, Infinity]).last();
}
