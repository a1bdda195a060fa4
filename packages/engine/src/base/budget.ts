/**
 * Counted work. The engine has no clock: it counts, and the caller who owns time answers `goOn` with false to stop it.
 * `spend` says whether to continue; once it has said no it keeps saying no.
 */
export class Budget {
  spent = 0;
  stopped = false;
  private nextCall: number;
  private readonly limit: number;
  private readonly goOn: ((spent: number) => boolean) | undefined;
  private readonly every: number;

  constructor(limit: number, goOn?: (spent: number) => boolean, every = 2000) {
    this.limit = limit;
    this.goOn = goOn;
    this.every = every;
    this.nextCall = every;
  }

  spend(work = 1): boolean {
    if (this.stopped) return false;
    this.spent += work;
    if (this.spent > this.limit) this.stopped = true;
    else if (this.spent >= this.nextCall) {
      this.nextCall = this.spent + this.every;
      if (this.goOn !== undefined && !this.goOn(this.spent)) this.stopped = true;
    }
    return !this.stopped;
  }
}
