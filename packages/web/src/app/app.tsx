import { lazy, Suspense, useEffect, useMemo, useRef } from 'react';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { ShelfRoom } from '../shelf/shelf-room.tsx';
import { pressKey, useKeys } from '../ui/keys.ts';
import { LiveRegion, say } from '../ui/live.tsx';
import { Notices } from '../ui/notices.tsx';
import { go, type Route } from '../ui/routes.ts';
import { AppHeader, roomsFor } from './header.tsx';
import { useRoute } from './use-route.ts';

// The shelf is what opens first; the other rooms, with the editor and the table's motion, come when they are entered.
const NoteRoom = lazy(async () => ({ default: (await import('../editor/note-room.tsx')).NoteRoom }));
const HelpRoom = lazy(async () => ({ default: (await import('../help/help-room.tsx')).HelpRoom }));
const TableRoom = lazy(async () => ({ default: (await import('../table/table-room.tsx')).TableRoom }));

export function App() {
  const route = useRoute();
  const last = useLive(async () => (await repository.getSettings()).lastNote, []);
  const asked = 'id' in route ? route.id : undefined;
  const note = asked ?? (last === '' ? undefined : last);

  useEffect(() => {
    if (asked !== undefined) void repository.setSetting('lastNote', asked);
  }, [asked]);

  useEffect(() => {
    window.addEventListener('keydown', pressKey);
    return () => window.removeEventListener('keydown', pressKey);
  }, []);

  const keys = useMemo(
    () =>
      roomsFor(note).map((room) => ({
        keys: room.key,
        what: `Go to the ${room.name.toLowerCase()}`,
        always: true,
        run: () => go(room.route),
      })),
    [note],
  );
  useKeys(keys);

  // Coming into another room starts reading at its head, as on any new page.
  const main = useRef<HTMLElement>(null);
  const room = route.room;
  const entered = useRef(room);
  useEffect(() => {
    if (entered.current === room) return;
    entered.current = room;
    window.scrollTo(0, 0);
    main.current?.focus({ preventScroll: true });
    say(`${room} room`);
  }, [room]);

  return (
    <>
      <a className="skip" href="#main" onClick={skipTo(main)}>
        Skip to the room
      </a>
      <AppHeader route={route} note={note} />
      <main id="main" ref={main} tabIndex={-1}>
        <Suspense fallback={<p className="waiting second">Opening …</p>}>
          <Room route={route} note={note} />
        </Suspense>
      </main>
      <Notices />
      <LiveRegion />
    </>
  );
}

function Room({ route, note }: { readonly route: Route; readonly note: string | undefined }) {
  switch (route.room) {
    case 'note':
      return <NoteRoom key={note} id={note} />;
    case 'table':
      return <TableRoom key={note} id={note} />;
    case 'help':
      return <HelpRoom page={route.page} />;
    // Rooms that are not open yet lead back to the shelf.
    case 'laboratory':
    case 'print':
    case 'shelf':
      return <ShelfRoom />;
  }
}

// The hash is the address of the room, so a link within the page must not change it.
function skipTo(place: { readonly current: HTMLElement | null }) {
  return (event: { preventDefault(): void }) => {
    event.preventDefault();
    place.current?.focus();
  };
}
