import { cpus, loadavg, platform, release, totalmem } from 'node:os';
import { CLOCK } from './clock.ts';

/** The machine in a few lines; figures mean nothing without it. */
export function machine(): string[] {
  const all = cpus();
  return [
    `${all.length} cores of ${all[0]?.model.trim() ?? 'unknown make'}, ${Math.round(totalmem() / 2 ** 30)} GiB of memory`,
    `Node ${process.versions.node} (V8 ${process.versions.v8}), ${platform()} ${release()}`,
    `${CLOCK}; load when it began ${loadavg()[0].toFixed(1)}`,
  ];
}
