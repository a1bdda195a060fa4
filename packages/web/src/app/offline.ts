import { Workbox } from 'workbox-window';
import { createStore } from '../ui/store.ts';
import { notify } from '../ui/notices.tsx';

/** What the browser offers when the app can be installed; not yet in the standard types. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

export interface Readiness {
  readonly online: boolean;
  /** Everything needed without a network is here. */
  readonly offlineReady: boolean;
  readonly install: (() => Promise<void>) | undefined;
}

export const readiness = createStore<Readiness>({ online: true, offlineReady: false, install: undefined });

const change = (part: Partial<Readiness>) => readiness.set({ ...readiness.get(), ...part });

/** Makes the app work without a network, offers newer versions and installation as they come. */
export function keepReady(): void {
  change({ online: navigator.onLine });
  window.addEventListener('online', () => change({ online: true }));
  window.addEventListener('offline', () => change({ online: false }));
  window.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    if (!isInstallOffer(event)) return;
    change({
      install: async () => {
        await event.prompt();
        change({ install: undefined });
      },
    });
  });
  window.addEventListener('appinstalled', () => change({ install: undefined }));
  if (import.meta.env.PROD && 'serviceWorker' in navigator) void registerWorker();
}

async function registerWorker(): Promise<void> {
  const workbox = new Workbox(new URL('sw.js', document.baseURI).href);
  workbox.addEventListener('waiting', () => {
    notify({
      text: 'A newer Foregone is ready.',
      action: {
        label: 'Use it now',
        run: () => {
          workbox.addEventListener('controlling', () => window.location.reload());
          workbox.messageSkipWaiting();
        },
      },
    });
  });
  try {
    await workbox.register();
    await navigator.serviceWorker.ready;
    change({ offlineReady: true });
  } catch {
    // Private windows refuse it. The app then needs the network to open, and everything else goes on.
  }
}

function isInstallOffer(event: Event): event is InstallOffer {
  return 'prompt' in event;
}
