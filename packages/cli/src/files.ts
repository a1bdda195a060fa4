import { readFileSync, statSync, writeFileSync } from 'node:fs';
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
    return failed(reasonOf(error));
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

/** Writes a text file; why it could not be written, or undefined. */
export function writeTextFile(path: string, text: string): string | undefined {
  try {
    writeFileSync(path, text);
    return undefined;
  } catch (error) {
    const reason = codeOf(error) === 'ENOENT' ? 'its folder is not there' : `it ${reasonOf(error)}`;
    return `${path} cannot be written: ${reason}`;
  }
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error ? String(error.code) : undefined;
}

function reasonOf(error: unknown): string {
  const code = codeOf(error);
  switch (code) {
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
      return 'has no space left for it';
    case 'EROFS':
      return 'is in a place that can only be read';
    default:
      return `cannot be used (${code ?? String(error)})`;
  }
}
