import { createLogUpdate } from 'log-update';
import { grouped } from '@foregone/engine';

/** Told on standard error when something takes longer than that. */
const AFTER_MS = 1000;

/** One line that says how far a long job is; only on a terminal, and gone when the job is done. */
export class Progress {
  private readonly started = performance.now();
  private readonly line = process.stderr.isTTY === true ? createLogUpdate(process.stderr) : undefined;
  private shown = 0;

  show(spent: number): void {
    const now = performance.now();
    if (this.line === undefined || now - this.started < AFTER_MS || now - this.shown < 100) return;
    this.shown = now;
    const seconds = Math.round((now - this.started) / 1000);
    this.line(`${seconds} s, ${grouped(spent)} steps of work; Ctrl-C stops`);
  }

  clear(): void {
    this.line?.clear();
    this.line?.done();
  }
}
