import { createStore, useStore } from './store.ts';

/** What a person may set about the look; each is an attribute of the page's root that the style sheets read. */
export const PREFERENCES = {
  theme: ['system', 'light', 'dark'],
  suits: ['two', 'four'],
  print: ['usual', 'large'],
  motion: ['system', 'reduced', 'full'],
} as const;

export type PreferenceName = keyof typeof PREFERENCES;
export type Preferences = { readonly [Name in PreferenceName]: (typeof PREFERENCES)[Name][number] };

const KEY = 'foregone.preferences';
const store = createStore<Preferences>(readPreferences(stored()));

/** Preferences from stored text; what is missing or unknown becomes the first choice of its kind. */
export function readPreferences(text: string | null): Preferences {
  const found = parsed(text);
  return {
    theme: one(PREFERENCES.theme, found['theme']),
    suits: one(PREFERENCES.suits, found['suits']),
    print: one(PREFERENCES.print, found['print']),
    motion: one(PREFERENCES.motion, found['motion']),
  };
}

export function usePreferences(): Preferences {
  return useStore(store);
}

export function getPreferences(): Preferences {
  return store.get();
}

/** Sets one preference; a value it does not have sets it back to its first choice. */
export function setPreference(name: PreferenceName, value: string): void {
  store.set(readPreferences(JSON.stringify({ ...store.get(), [name]: value })));
  try {
    localStorage.setItem(KEY, JSON.stringify(store.get()));
  } catch {
    // A browser that refuses storage still shows what was asked for, until the page is closed.
  }
  applyPreferences();
}

/** Writes the preferences where the style sheets look for them. */
export function applyPreferences(): void {
  for (const [name, value] of Object.entries(store.get())) document.documentElement.dataset[name] = value;
}

/** Whether cards should change place without travelling. */
export function prefersStillness(): boolean {
  const { motion } = store.get();
  return motion === 'system' ? matchMedia('(prefers-reduced-motion: reduce)').matches : motion === 'reduced';
}

// Another tab of the same browser follows at once.
if (typeof window !== 'undefined') {
  window.addEventListener('storage', ({ key, newValue }) => {
    if (key !== KEY) return;
    store.set(readPreferences(newValue));
    applyPreferences();
  });
}

function one<Choice extends string>(choices: readonly [Choice, ...Choice[]], value: unknown): Choice {
  return choices.find((choice) => choice === value) ?? choices[0];
}

function stored(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function parsed(text: string | null): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}
