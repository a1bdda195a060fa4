import { useEffect, useState } from 'react';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { isNearlyFull, measureRoom } from '../storage/room.ts';
import type { Settings } from '../storage/settings.ts';
import { useLive } from '../storage/use-live.ts';

const DAY = 86_400_000;
/** A copy outside the browser is asked for after this many days and this many changed notes. */
const DAYS = 14;
const CHANGED = 3;
/** How long a reminder that was sent away stays away. */
const PEACE = 7 * DAY;

export type Reminder =
  /** Notes changed since the last copy outside this browser. */
  { readonly about: 'copy'; readonly changed: number; readonly since: number } | { readonly about: 'room' };

/** What the shelf has to say before it is too late. */
export function useReminder(notes: readonly NoteRecord[] | undefined): Reminder | undefined {
  const settings = useLive(() => repository.getSettings(), []);
  const [isFull, setFull] = useState(false);
  useEffect(() => {
    void measureRoom().then((room) => setFull(room !== undefined && isNearlyFull(room)));
  }, [notes]);
  if (isFull) return { about: 'room' };
  return notes === undefined || settings === undefined
    ? undefined
    : copyReminder(notes, settings, Date.now());
}

/** Whether a copy outside the browser is due. A person who has written nothing is left alone. */
export function copyReminder(
  notes: readonly Pick<NoteRecord, 'changed' | 'created'>[],
  { backedUp, reminded }: Pick<Settings, 'backedUp' | 'reminded'>,
  now: number,
): Reminder | undefined {
  const changed = notes.filter((note) => note.changed > Math.max(note.created, backedUp));
  const since = backedUp > 0 ? backedUp : Math.min(...notes.map(({ created }) => created));
  const isDue = changed.length >= CHANGED && now - since > DAYS * DAY && now - reminded > PEACE;
  return isDue ? { about: 'copy', changed: changed.length, since: backedUp } : undefined;
}
