import type { UnzipDecoder, UnzipInflate } from 'fflate';
import { isNoteName, type ImportLimits, type Refusal } from './import-limits.ts';

export interface Entry {
  readonly name: string;
  readonly bytes: Uint8Array | Refusal;
}

export interface Unzipped {
  readonly entries: readonly Entry[];
  readonly others: number;
  /** Why it was not read to its end; undefined when it was. */
  readonly stopped: Refusal | undefined;
}

// Small enough that even the best packed piece unpacks to a few megabytes at once.
const CHUNK = 4_096;

/**
 * The notes in a zip, unpacked piece by piece and counted as they grow, so that a small file that would unpack to a huge one
 * is let go as soon as it shows. What sizes the zip itself names is never believed.
 *
 * @param elapsed milliseconds since the import began
 */
export async function unzip(zip: Uint8Array, limits: ImportLimits, elapsed: () => number): Promise<Unzipped> {
  const { Unzip, UnzipInflate: Inflate } = await import('fflate');
  const entries: Entry[] = [];
  let others = 0;
  let seen = 0;
  let total = 0;
  let notes = 0;
  let stopped: Refusal | undefined;

  const reader = new Unzip((file) => {
    seen += 1;
    if (seen > limits.entries) stopped = 'too many';
    if (stopped !== undefined || file.name.endsWith('/')) return;
    if (!isNoteName(file.name)) {
      others += 1;
      return;
    }
    notes += 1;
    if (notes > limits.count) {
      stopped = 'too many';
      return;
    }
    const pieces: Uint8Array[] = [];
    let size = 0;
    let over = false;
    const end = (bytes: Uint8Array | Refusal) => {
      over = true;
      entries.push({ name: file.name, bytes });
    };
    file.ondata = (error, piece, final) => {
      if (over) return;
      if (error !== null) {
        end('damaged');
        return;
      }
      size += piece.length;
      total += piece.length;
      if (total > limits.total) stopped = 'too much';
      if (size > limits.note || stopped !== undefined) {
        end('too long');
        file.terminate();
        return;
      }
      pieces.push(piece);
      if (final) end(joined(pieces, size));
    };
    try {
      file.start();
    } catch {
      // A way of packing that nobody uses for text.
      end('damaged');
    }
  });
  reader.register(
    class extends Bounded {
      constructor() {
        super(new Inflate(), limits.note);
      }
    },
  );

  try {
    for (let at = 0; at < zip.length && stopped === undefined; at += CHUNK) {
      reader.push(zip.subarray(at, at + CHUNK), at + CHUNK >= zip.length);
      if (elapsed() > limits.time) stopped = 'too slow';
      // The page stays alive between the pieces.
      if ((at / CHUNK) % 256 === 255) await new Promise((resolve) => setTimeout(resolve));
    }
  } catch {
    stopped ??= 'damaged';
  }
  return { entries, others, stopped };
}

/** Unpacks until it has unpacked too much; the library would go on to the end. */
class Bounded implements UnzipDecoder {
  static readonly compression = 8;
  ondata: UnzipDecoder['ondata'] = () => {};
  private size = 0;
  private readonly inner: UnzipInflate;
  private readonly most: number;

  constructor(inner: UnzipInflate, most: number) {
    this.inner = inner;
    this.most = most;
    inner.ondata = (error, piece, final) => {
      this.size += error === null ? piece.length : 0;
      this.ondata(error, piece, final);
    };
  }

  push(piece: Uint8Array, final: boolean): void {
    if (this.size <= this.most) this.inner.push(piece, final);
  }
}

function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
