/** The rooms and their addresses; the part behind `#` is the whole address, so any server can hold the files. */
export type Route =
  | { readonly room: 'shelf' }
  | { readonly room: 'note' | 'table' | 'laboratory' | 'print'; readonly id: string | undefined }
  | { readonly room: 'help'; readonly page: string };

/** A room's address. Without a note, the rooms that need one open the note last looked at. */
export function addressOf(route: Route): string {
  if (route.room === 'shelf') return '#/';
  const rest = route.room === 'help' ? route.page : (route.id ?? '');
  const path = rest.split('/').map(encodeURIComponent).join('/');
  return path === '' ? `#/${route.room}` : `#/${route.room}/${path}`;
}

/** Reads an address; one that leads nowhere leads to the shelf. */
export function routeOf(hash: string): Route {
  const [room = '', ...rest] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decoded);
  const words = rest.filter((word) => word !== '');
  switch (room) {
    case 'note':
    case 'table':
    case 'laboratory':
    case 'print':
      return { room, id: words[0] };
    case 'help':
      return { room, page: words.join('/') };
    default:
      return { room: 'shelf' };
  }
}

/** Goes to a room. */
export function go(route: Route): void {
  window.location.hash = addressOf(route);
}

function decoded(word: string): string {
  try {
    return decodeURIComponent(word);
  } catch {
    return word;
  }
}
