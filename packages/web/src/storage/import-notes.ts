import {
  IMPORT_LIMITS,
  isNoteName,
  textIn,
  type Imported,
  type ImportLimits,
  type Refusal,
  type Refused,
} from './import-limits.ts';
import { unzip } from './unzip.ts';

/** A file with the folders it lay in, as far as the browser tells. */
export interface Incoming {
  readonly path: string;
  readonly file: Blob;
}

/** Reads notes from files, folders and zips, within limits. Never throws for what lies in them. */
export async function readIncoming(
  files: Iterable<Incoming> | AsyncIterable<Incoming>,
  {
    limits = IMPORT_LIMITS,
    clock = () => performance.now(),
  }: { limits?: ImportLimits; clock?: () => number } = {},
): Promise<Imported> {
  const texts: string[] = [];
  const refused: Refused[] = [];
  let others = 0;
  let total = 0;
  let looked = 0;
  const started = clock();
  const elapsed = () => clock() - started;

  const take = (name: string, bytes: Uint8Array): Refusal | undefined => {
    const text = textIn(bytes);
    if (text === undefined) return 'not text';
    if (text.trim() === '') return 'empty';
    if (texts.length >= limits.count) return 'too many';
    total += bytes.length;
    if (total > limits.total) return 'too much';
    texts.push(text);
    return undefined;
  };
  const refuse = (name: string, why: Refusal | undefined) => {
    if (why !== undefined) refused.push({ name, why });
  };

  for await (const { path, file } of files) {
    looked += 1;
    const ended = looked > limits.entries ? 'too many' : elapsed() > limits.time ? 'too slow' : undefined;
    if (ended !== undefined) {
      refuse(path, ended);
      break;
    }
    try {
      if (/\.zip$/i.test(path)) {
        if (file.size > limits.zip) {
          refuse(path, 'too long');
          continue;
        }
        const zip = new Uint8Array(await file.arrayBuffer());
        if (!looksLikeZip(zip)) {
          refuse(path, 'damaged');
          continue;
        }
        const { entries, others: passed, stopped } = await unzip(zip, limits, elapsed);
        others += passed;
        for (const { name, bytes } of entries) {
          refuse(name, typeof bytes === 'string' ? bytes : take(name, bytes));
        }
        refuse(path, stopped);
      } else if (!isNoteName(path)) others += 1;
      else if (file.size > limits.note) refuse(path, 'too long');
      else refuse(path, take(path, new Uint8Array(await file.arrayBuffer())));
    } catch {
      // The browser could not read it: gone meanwhile, or not allowed.
      refuse(path, 'damaged');
    }
  }
  return { texts, refused, others };
}

// A zip begins with its first file, or, without any, with its end.
function looksLikeZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 0x03 || bytes[2] === 0x05);
}
