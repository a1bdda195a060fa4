import { diskOf } from '../storage/folder-disk.ts';
import { forgetFolder, syncFolder } from '../storage/folder-sync.ts';
import { repository } from '../storage/repository.ts';
import { notify } from '../ui/notices.tsx';
import { createStore } from '../ui/store.ts';

/** How the linked folder stands. */
export type FolderState =
  | { readonly kind: 'none' }
  /** The browser wants to be asked again before it lets us read it. */
  | { readonly kind: 'waiting'; readonly name: string }
  | { readonly kind: 'in step'; readonly name: string }
  | { readonly kind: 'trouble'; readonly name: string; readonly words: string };

export const folderState = createStore<FolderState>({ kind: 'none' });

/** Milliseconds between two looks at the folder. */
const APART = 4_000;

/** The parts of the file system that are not yet in the standard types. */
interface FolderPicker {
  showDirectoryPicker(options: { id: string; mode: 'readwrite' }): Promise<FileSystemDirectoryHandle>;
}
interface Permission {
  queryPermission(options: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(options: { mode: 'readwrite' }): Promise<PermissionState>;
}

export function canLinkFolder(): boolean {
  return hasPicker(window);
}

/** Asks for a folder and keeps it in step from then on. */
export async function linkFolder(): Promise<void> {
  if (!hasPicker(window)) return;
  let folder: FileSystemDirectoryHandle;
  try {
    folder = await window.showDirectoryPicker({ id: 'foregone-notes', mode: 'readwrite' });
  } catch {
    // Thought better of it.
    return;
  }
  await forgetFolder(repository);
  await repository.setSetting('folder', folder);
  await lookOnce();
}

/** Asks the browser for the folder again, as it wants a person's hand for that. */
export async function reopenFolder(): Promise<void> {
  const { folder } = await repository.getSettings();
  if (folder === null) return;
  if (asksPermission(folder)) await folder.requestPermission({ mode: 'readwrite' });
  await lookOnce();
}

export async function letFolderGo(): Promise<void> {
  await forgetFolder(repository);
  folderState.set({ kind: 'none' });
}

/** Looks at the folder now and then while the page is seen; of several tabs only one does. */
export function keepInStep(): void {
  const look = () => {
    if (document.visibilityState === 'visible') void lookOnce();
  };
  look();
  setInterval(look, APART);
  window.addEventListener('focus', look);
}

async function lookOnce(): Promise<void> {
  const { folder } = await repository.getSettings();
  if (folder === null) return;
  const { name } = folder;
  await navigator.locks.request('foregone.folder', { ifAvailable: true }, async (lock) => {
    if (lock === null) return;
    try {
      if (asksPermission(folder) && (await folder.queryPermission({ mode: 'readwrite' })) !== 'granted') {
        folderState.set({ kind: 'waiting', name });
        return;
      }
      const { sameFolder, parted, trashed } = await syncFolder(repository, diskOf(folder));
      folderState.set(
        sameFolder
          ? { kind: 'in step', name }
          : { kind: 'trouble', name, words: 'All its files are gone, so nothing was changed here.' },
      );
      for (const title of parted) {
        notify({
          text: `“${title}” was changed here and in the folder. Both stand on the shelf, and in the folder.`,
        });
      }
      for (const title of trashed)
        notify({ text: `The file of “${title}” was removed; the note lies in the bin.` });
    } catch (error) {
      const words = error instanceof DOMException ? 'It cannot be read or written just now.' : String(error);
      folderState.set({ kind: 'trouble', name, words });
    }
  });
}

function hasPicker(value: object): value is FolderPicker {
  return 'showDirectoryPicker' in value;
}

function asksPermission(value: object): value is Permission {
  return 'queryPermission' in value && 'requestPermission' in value;
}
