import { addressOf } from './routes.ts';

/** Shown by a room that needs a note when there is none. */
export function NoNote() {
  return (
    <section className="empty-room">
      <h1>No note is open here.</h1>
      <p>
        <a href={addressOf({ room: 'shelf' })}>Take one from the shelf</a>
      </p>
    </section>
  );
}
