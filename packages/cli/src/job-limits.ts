import type { Limits } from '@foregone/engine';

/** How much work a job may spend; when it has to end by the clock is the thread's own affair. */
export type JobLimits = Omit<Limits, 'goOn'>;
