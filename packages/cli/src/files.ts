import { readFileSync, statSync } from 'node:fs';
import type { Result } from '@foregone/engine';

/** A file that was read, or why it could not be. */
export interface ReadFile {
  /** As the user named it; `-` is what comes in. */
  readonly path: string;
  readonly text: string;
}

export interface Unreadable {
  readonly path: string;
  readonly words: string;
  /** A file that is there and is no text is a note that is not understood; the others are wrong usage. */
  readonly isText: boolean;
}

// Far more than any note or certificate needs; keeps a wrong file from filling the memory.
const MOST_BYTES = 256 * 1024 * 1024;

/** Reads a text file in UTF-8, or standard input for `-`. */
export async function readTextFile(path: string): Promise<Result<ReadFile, Unreadable>> {
  const failed = (words: string, isText = true): Result<ReadFile, Unreadable> => ({
    ok: false,
    error: { path, words, isText },
  });
  let bytes: Uint8Array;
  try {
    if (path === '-') bytes = await readStandardInput();
    else {
      const { size } = statSync(path);
      if (size > MOST_BYTES) return failed('is too large for a note');
      bytes = readFileSync(path);
    }
  } catch (error) {
    return failed(reasonOf(error as NodeJS.ErrnoException));
  }
  if (bytes.includes(0)) return failed('is no text: it has bytes that no note has', false);
  try {
    return {
      ok: true,
      value: { path, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) },
    };
  } catch {
    return failed('is not in UTF-8', false);
  }
}

async function readStandardInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
    chunks.push(chunk);
    size += chunk.length;
    if (size > MOST_BYTES) break;
  }
  return Buffer.concat(chunks);
}

export function reasonOf(error: NodeJS.ErrnoException): string {
  switch (error.code) {
    case 'ENOENT':
      return 'is not there';
    case 'EISDIR':
      return 'is a folder, not a file';
    case 'EACCES':
    case 'EPERM':
      return 'may not be opened';
    case 'ENOTDIR':
      return 'is not there: part of its path is a file';
    case 'ENOSPC':
      return 'cannot be written: there is no space left';
    case 'EROFS':
      return 'cannot be written: the place is read-only';
    default:
      return `cannot be used (${error.code ?? error.message})`;
  }
}
