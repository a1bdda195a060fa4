/**
 * Counted work. The engine has no clock: it counts, and the caller who owns time answers `goOn` with false to stop it.
 * `spend` says whether to continue; once it has said no it keeps saying no.
 */
export class Budget {
  spent = 0;
  stopped = false;
  /** Work since the caller was asked. */
  private unasked = 0;
  private readonly limit: number;
  private readonly goOn: ((spent: number) => boolean) | undefined;
  private readonly every: number;

  constructor(limit: number, goOn?: (spent: number) => boolean, every = 2000) {
    this.limit = limit;
    this.goOn = goOn;
    this.every = every;
  }

  spend(work = 1): boolean {
    if (this.stopped) return false;
    this.spent += work;
    if (this.spent > this.limit) this.stopped = true;
    return this.tick(work);
  }

  /** Work that the limit does not count, but that takes time: the caller is asked all the same. */
  tick(work = 1): boolean {
    if (this.stopped) return false;
    this.unasked += work;
    if (this.unasked >= this.every) {
      this.unasked = 0;
      if (this.goOn !== undefined && !this.goOn(this.spent)) this.stopped = true;
    }
    return !this.stopped;
  }
}
