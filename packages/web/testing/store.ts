import 'fake-indexeddb/auto';
import { openStore } from '../src/storage/db.ts';
import { createRepository, type Repository } from '../src/storage/repository.ts';

let made = 0;

/** A clock under the test's hand, in milliseconds. */
export interface HandClock {
  time: number;
}

/** An empty shelf of its own for one test. */
export function freshRepository(clock: HandClock = { time: 1_000_000 }): Repository {
  made += 1;
  return createRepository(openStore(`test-${made}`, () => clock.time));
}

/** A part of `localStorage` in memory; it can be made to refuse. */
export function memoryStorage(): Storage & { refuses: boolean } {
  const items = new Map<string, string>();
  return {
    refuses: false,
    get length() {
      return items.size;
    },
    key: (index) => [...items.keys()][index] ?? null,
    getItem: (key) => items.get(key) ?? null,
    setItem(key, value) {
      if (this.refuses) throw new DOMException('full', 'QuotaExceededError');
      items.set(key, value);
    },
    removeItem: (key) => void items.delete(key),
    clear: () => items.clear(),
  };
}
