import type { DirectoryDropItem, DropItem, FileDropItem } from 'react-aria-components';
import type { Incoming } from '../storage/import-notes.ts';
import { readIncoming } from '../storage/import-notes.ts';
import { takeIn } from './actions.ts';

/** Asks for files, or for a folder with everything in it, and brings in the notes among them. */
export function chooseFiles({ folder }: { readonly folder: boolean }): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  if (folder) input.webkitdirectory = true;
  else input.accept = '.md,.markdown,.txt,.zip,text/markdown,text/plain,application/zip';
  input.addEventListener('change', () => {
    const files = [...(input.files ?? [])].map((file) => ({
      path: file.webkitRelativePath === '' ? file.name : file.webkitRelativePath,
      file,
    }));
    void bringIn(files);
  });
  input.click();
}

/** Brings in what was dropped on the shelf. */
export function bringInDropped(items: readonly DropItem[]): Promise<void> {
  return bringIn(walk(items, ''));
}

async function bringIn(files: Iterable<Incoming> | AsyncIterable<Incoming>): Promise<void> {
  await takeIn(await readIncoming(files));
}

async function* walk(
  items: Iterable<DropItem> | AsyncIterable<FileDropItem | DirectoryDropItem>,
  folder: string,
): AsyncGenerator<Incoming> {
  for await (const item of items) {
    if (item.kind === 'file') yield { path: `${folder}${item.name}`, file: await item.getFile() };
    else if (item.kind === 'directory') yield* walk(item.getEntries(), `${folder}${item.name}/`);
  }
}
