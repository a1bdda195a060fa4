import type { DiskFile } from './folder-plan.ts';
import { IMPORT_LIMITS, isNoteName, textIn } from './import-limits.ts';

/** A folder of notes on disk. */
export interface Disk {
  list(): Promise<DiskFile[]>;
  /** Writes a file if it still holds `was` (empty: if it is not there). Gives back whether it did. */
  write(path: string, text: string, was: string): Promise<boolean>;
}

/** How deep folders in folders are looked at. */
const DEEPEST = 4;

/** The folder behind a handle the person has chosen. */
export function diskOf(root: FileSystemDirectoryHandle): Disk {
  return {
    async list() {
      const files: DiskFile[] = [];
      await collect(root, '', 0, files);
      return files;
    },
    async write(path, text, was) {
      const names = path.split('/');
      const name = names.pop() ?? '';
      let folder = root;
      for (const each of names) folder = await folder.getDirectoryHandle(each, { create: true });
      // Somebody may have written since the folder was listed.
      const present = await textOf(folder, name);
      if (present !== was && present !== text) return false;
      const file = await folder.getFileHandle(name, { create: true });
      // What is written takes the file's place only when it is closed, all at once.
      const writer = await file.createWritable();
      await writer.write(text);
      await writer.close();
      return true;
    },
  };
}

async function collect(
  folder: FileSystemDirectoryHandle,
  prefix: string,
  depth: number,
  files: DiskFile[],
): Promise<void> {
  for await (const [name, handle] of folder.entries()) {
    if (files.length >= IMPORT_LIMITS.count) return;
    const path = `${prefix}${name}`;
    if (isFolder(handle)) {
      const isOurs = depth < DEEPEST && !name.startsWith('.') && name !== 'node_modules';
      if (isOurs) await collect(handle, `${path}/`, depth + 1, files);
    } else if (isNoteName(path)) files.push({ path, text: await readNote(folder, name) });
  }
}

async function readNote(folder: FileSystemDirectoryHandle, name: string): Promise<string | undefined> {
  const file = await (await folder.getFileHandle(name)).getFile();
  return file.size > IMPORT_LIMITS.note ? undefined : textIn(new Uint8Array(await file.arrayBuffer()));
}

/** Empty for a file that is not there. */
async function textOf(folder: FileSystemDirectoryHandle, name: string): Promise<string | undefined> {
  try {
    return await readNote(folder, name);
  } catch (error) {
    if (error instanceof DOMException && error.name === 'NotFoundError') return '';
    throw error;
  }
}

function isFolder(handle: FileSystemHandle): handle is FileSystemDirectoryHandle {
  return handle.kind === 'directory';
}
