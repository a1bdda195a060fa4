import { openSync, readSync } from 'node:fs';

/**
 * Time that this thread has spent on a processor, in milliseconds: other programs on the machine do not count. Linux tells it for
 * one thread; elsewhere it is the whole process's, the collector of garbage and the compiler included.
 */
export const cpuMs: () => number = threadClock() ?? processMs;

export const CLOCK = cpuMs === processMs ? 'processor time of the process' : 'processor time of the thread';

function processMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function threadClock(): (() => number) | undefined {
  try {
    // The main thread bears the number of the process.
    const file = openSync(`/proc/self/task/${process.pid}/schedstat`, 'r');
    const buffer = Buffer.alloc(96);
    const read = (): number =>
      Number(buffer.toString('latin1', 0, readSync(file, buffer, 0, buffer.length, 0)).split(' ')[0]) / 1e6;
    return Number.isFinite(read()) ? read : undefined;
  } catch {
    return undefined;
  }
}
