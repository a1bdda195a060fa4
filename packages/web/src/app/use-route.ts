import { useSyncExternalStore } from 'react';
import { routeOf, type Route } from '../ui/routes.ts';

function subscribe(listener: () => void): () => void {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
}

/** The room the address bar names. */
export function useRoute(): Route {
  return routeOf(useSyncExternalStore(subscribe, () => window.location.hash));
}
