import { HeaderPlace } from '../ui/header-slot.tsx';
import { addressOf, type Route } from '../ui/routes.ts';
import { PreferencesButton } from './preferences-button.tsx';

interface Room {
  readonly name: string;
  readonly route: Route;
  readonly key: string;
}

/** The rooms in the order of the work. Those that need a note open the one last looked at. */
export function roomsFor(note: string | undefined): readonly Room[] {
  return [
    { name: 'Shelf', route: { room: 'shelf' }, key: 'Alt+1' },
    { name: 'Note', route: { room: 'note', id: note }, key: 'Alt+2' },
    { name: 'Table', route: { room: 'table', id: note }, key: 'Alt+3' },
  ];
}

export function AppHeader({ route, note }: { readonly route: Route; readonly note: string | undefined }) {
  return (
    <header className="header">
      <a className="mark" href={addressOf({ room: 'shelf' })}>
        Foregone
      </a>
      <nav aria-label="Rooms">
        <ul>
          {roomsFor(note).map((room) => (
            <li key={room.name}>
              <a
                className="room"
                href={addressOf(room.route)}
                aria-current={route.room === room.route.room ? 'page' : undefined}
              >
                {room.name}
              </a>
            </li>
          ))}
          <li>
            <a
              className="room"
              href={addressOf({ room: 'help', page: '' })}
              aria-current={route.room === 'help' ? 'page' : undefined}
            >
              Help
            </a>
          </li>
        </ul>
      </nav>
      <HeaderPlace />
      <PreferencesButton />
    </header>
  );
}
