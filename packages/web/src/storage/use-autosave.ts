import { liveQuery } from 'dexie';
import { useEffect, useRef, useState } from 'react';
import { startAutosave, type Autosave, type SaveState } from './autosave.ts';
import { pageJournal } from './page.ts';
import type { NoteRecord } from './records.ts';
import { repository } from './repository.ts';

export interface KeptText {
  readonly state: SaveState;
  /** Stable for the life of the page; undefined for the very first moment. */
  readonly edit: (text: string) => void;
  readonly settle: (choice: 'mine' | 'theirs') => Promise<void>;
  readonly flush: () => Promise<void>;
}

/**
 * Keeps what is typed into a note, and brings in what other tabs type.
 *
 * @param note as it was when the room opened; another `id` begins anew, later revisions are found by themselves
 * @param onOutside shows a text that was changed elsewhere
 */
export function useAutosave(note: NoteRecord, onOutside: (text: string) => void): KeptText {
  const [state, setState] = useState<SaveState>({ kind: 'saved' });
  const helper = useRef<Autosave>(undefined);
  const outside = useRef(onOutside);
  outside.current = onOutside;
  const opened = useRef(note);
  if (opened.current.id !== note.id) opened.current = note;

  useEffect(() => {
    const autosave = startAutosave({
      repository,
      journal: pageJournal(),
      note: opened.current,
      onState: setState,
      onOutside: (text) => outside.current(text),
    });
    helper.current = autosave;
    const watch = liveQuery(() => repository.getNote(note.id)).subscribe((seen) => {
      if (seen !== undefined) autosave.seen(seen);
    });
    const leave = () => void autosave.flush();
    const hide = () => {
      if (document.visibilityState === 'hidden') leave();
    };
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hide);
    return () => {
      window.removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hide);
      watch.unsubscribe();
      void autosave.stop();
    };
  }, [note.id]);

  return {
    state,
    edit: (text) => helper.current?.edit(text),
    settle: async (choice) => helper.current?.settle(choice),
    flush: async () => helper.current?.flush(),
  };
}
