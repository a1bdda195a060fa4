import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { NoNote } from '../ui/no-note.tsx';
import { addressOf } from '../ui/routes.ts';

/** The Table room: the note's cards, moved. */
export function TableRoom({ id }: { readonly id: string | undefined }) {
  const note = useLive(
    async () => (id === undefined ? null : ((await repository.getNote(id)) ?? null)),
    [id],
  );
  if (note === undefined) return null;
  if (note === null) return <NoNote />;
  return (
    <section className="empty-room">
      <h1>{note.title}</h1>
      <p>
        <a href={addressOf({ room: 'note', id: note.id })}>Read the note</a>
      </p>
    </section>
  );
}
