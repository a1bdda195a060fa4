import { useSyncExternalStore } from 'react';

const NARROW = '(max-width: 62rem)';

/** Whether there is no room for a margin beside the page. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    (listener) => {
      const query = matchMedia(NARROW);
      query.addEventListener('change', listener);
      return () => query.removeEventListener('change', listener);
    },
    () => matchMedia(NARROW).matches,
  );
}
