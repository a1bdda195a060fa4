import { useEffect, useState } from 'react';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { NoNote } from '../ui/no-note.tsx';
import { Page } from './page.tsx';
import './note-room.css';
import './editor.css';
import './build/build.css';

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
