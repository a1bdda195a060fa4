import { useSyncExternalStore } from 'react';

const NARROW = '(max-width: 62rem)';

let asked: MediaQueryList | undefined;
// Asked for again with every key otherwise.
const query = () => (asked ??= matchMedia(NARROW));

/** Whether there is no room for a margin beside the page. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    (listener) => {
      query().addEventListener('change', listener);
      return () => query().removeEventListener('change', listener);
    },
    () => query().matches,
  );
}
