export type { Routine } from './routine/routine.ts';
