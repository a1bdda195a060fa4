import type { Journal } from './journal.ts';
import type { NoteRecord } from './records.ts';
import type { Repository } from './repository.ts';

/** How the text on the page stands to the text that is kept. */
export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  /** Changed elsewhere meanwhile. Both texts are kept; the author says which one the page goes on with. */
  | { readonly kind: 'conflict'; readonly mine: string; readonly theirs: NoteRecord }
  /** The browser would not take it: no room, or a fault of its own. It is tried again with the next change. */
  | { readonly kind: 'refused'; readonly full: boolean }
  /** The note was ended for good in another tab. */
  | { readonly kind: 'gone' };

export interface AutosaveOptions {
  readonly repository: Repository;
  readonly journal: Journal;
  readonly note: NoteRecord;
  readonly onState: (state: SaveState) => void;
  /** The text was changed elsewhere while nothing was unsaved here: show it. */
  readonly onOutside: (text: string) => void;
}

export interface Autosave {
  /** Tells of a change; cheap enough for every keystroke. */
  edit(text: string): void;
  /** Saves at once; resolves when the text is kept, or when it is known why not. */
  flush(): Promise<void>;
  /** Ends a conflict: go on with this page's text, or with the other one. */
  settle(choice: 'mine' | 'theirs'): Promise<void>;
  /** Tells that the note was seen at a later revision, as another tab saved it. */
  seen(note: NoteRecord): void;
  /** Saves what is left and lets go. */
  stop(): Promise<void>;
}

/** A pause in typing that starts a save. */
const QUIET = 150;
/** The longest that a change waits, so that what is lost is never as old as a second. */
const LATEST = 300;
/** The journal is written at most this often while somebody types. */
const JOURNAL_APART = 120;

/** Keeps a note's text as it is typed. The browser's timers are its only clock. */
export function startAutosave({ repository, journal, note, onState, onOutside }: AutosaveOptions): Autosave {
  const { id } = note;
  let kept = note.text;
  let revision = note.revision;
  let text = note.text;
  let conflict: NoteRecord | undefined;
  let quiet: ReturnType<typeof setTimeout> | undefined;
  let latest: ReturnType<typeof setTimeout> | undefined;
  let journalPause: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | undefined;
  let inFlight = false;
  let elsewhere: NoteRecord | undefined;

  const forgetTimers = () => {
    clearTimeout(quiet);
    clearTimeout(latest);
    quiet = latest = undefined;
  };

  const writeJournal = () => {
    clearTimeout(journalPause);
    journalPause = undefined;
    if (text !== kept) journal.write(id, { text, revision });
  };

  const saveOnce = async (): Promise<void> => {
    forgetTimers();
    if (text === kept || conflict !== undefined) return;
    const sent = text;
    onState({ kind: 'saving' });
    inFlight = true;
    try {
      const outcome = await repository.saveNote(id, sent, revision);
      if (outcome.kind === 'saved') {
        ({ revision } = outcome);
        kept = sent;
        if (text === sent) {
          journal.clear(id);
          onState({ kind: 'saved' });
        } else writeJournal();
      } else if (outcome.kind === 'conflict') {
        conflict = outcome.theirs;
        onState({ kind: 'conflict', mine: text, theirs: conflict });
      } else onState({ kind: 'gone' });
    } catch (error) {
      onState({ kind: 'refused', full: isFull(error) });
    } finally {
      inFlight = false;
    }
    consider();
  };

  // One save after the other, so that a later text never arrives before an earlier one.
  const save = (): Promise<void> => {
    const next = (running ?? Promise.resolve()).then(saveOnce);
    running = next;
    return next;
  };

  const schedule = () => {
    clearTimeout(quiet);
    quiet = setTimeout(() => void save(), QUIET);
    latest ??= setTimeout(() => void save(), LATEST);
  };

  const adopt = (theirs: NoteRecord) => {
    ({ revision, text } = theirs);
    kept = text;
    journal.clear(id);
    onOutside(text);
    onState({ kind: 'saved' });
  };

  /** Brings in what another page saved, as soon as nothing here stands in its way. */
  const consider = () => {
    const theirs = elsewhere;
    // While a save of our own is under way, what is seen may be that very save.
    if (theirs === undefined || inFlight || conflict !== undefined || text !== kept) return;
    elsewhere = undefined;
    if (theirs.revision <= revision) return;
    if (theirs.text === text) ({ revision } = theirs);
    else adopt(theirs);
  };

  return {
    edit(next) {
      if (next === text) return;
      text = next;
      if (journalPause === undefined) {
        writeJournal();
        journalPause = setTimeout(writeJournal, JOURNAL_APART);
      }
      if (conflict === undefined) schedule();
    },
    async flush() {
      writeJournal();
      await save();
    },
    async settle(choice) {
      if (conflict === undefined) return;
      const theirs = conflict;
      conflict = undefined;
      if (choice === 'theirs') {
        // The text on the page may have grown since the refused one was kept.
        if (text !== theirs.text) await repository.keepVersion(id, text, 'conflict');
        adopt(theirs);
        return;
      }
      await repository.keepVersion(id, theirs.text, 'conflict');
      ({ revision } = theirs);
      kept = theirs.text;
      await save();
    },
    seen(theirs) {
      elsewhere = theirs;
      consider();
    },
    async stop() {
      writeJournal();
      await save();
      clearTimeout(journalPause);
    },
  };
}

/** Whether an error means that the browser has no more room. */
export function isFull(error: unknown): boolean {
  for (let cause = error; typeof cause === 'object' && cause !== null;) {
    if ('name' in cause && cause.name === 'QuotaExceededError') return true;
    cause = 'inner' in cause ? cause.inner : undefined;
  }
  return false;
}
