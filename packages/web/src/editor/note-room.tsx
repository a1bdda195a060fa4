import { useEffect, useRef, useState } from 'react';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { useAutosave } from '../storage/use-autosave.ts';
import { ConflictDialog } from '../ui/conflict-dialog.tsx';
import { InHeader } from '../ui/header-slot.tsx';
import { NoNote } from '../ui/no-note.tsx';
import { SaveMark } from '../ui/save-mark.tsx';
import './note-room.css';

/** The Note room: the page in the middle, kept as it is typed. */
export function NoteRoom({ id }: { readonly id: string | undefined }) {
  const [note, setNote] = useState<NoteRecord | null>();
  useEffect(() => {
    let left = false;
    const open = async () => {
      const found = id === undefined ? undefined : await repository.getNote(id);
      if (!left) setNote(found ?? null);
    };
    void open();
    return () => {
      left = true;
    };
  }, [id]);
  if (note === undefined) return null;
  return note === null ? <NoNote /> : <Page key={note.id} note={note} />;
}

function Page({ note }: { readonly note: NoteRecord }) {
  const [text, setText] = useState(note.text);
  const field = useRef<HTMLTextAreaElement>(null);
  const kept = useAutosave(note, setText);
  return (
    <>
      <InHeader>
        <SaveMark state={kept.state.kind} />
      </InHeader>
      <article className="page paper">
        <h1 className="said-only">{note.title}</h1>
        <textarea
          ref={field}
          className="page-text"
          aria-label="Text of the note"
          spellCheck={false}
          value={text}
          onChange={({ target }) => {
            setText(target.value);
            kept.edit(target.value);
          }}
        />
      </article>
      {kept.state.kind === 'conflict' && (
        <ConflictDialog
          mine={kept.state.mine}
          theirs={kept.state.theirs.text}
          onSettle={(choice) => void kept.settle(choice)}
        />
      )}
    </>
  );
}
