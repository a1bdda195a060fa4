import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { doJob, type Answer, type Job } from './jobs.ts';
import { Progress } from './progress.ts';

/** Work of the processor that is enough for most notes, and a wait after which Ctrl-C must act. */
const HERE_WORK_MS = 500;
const HERE_WAIT_MS = 900;

type Told = { readonly spent: number } | { readonly answer: unknown } | { readonly fault: string };

/** Called first thing: true in a thread that was started to do a job, which it then does. */
export function servedAsWorker(): boolean {
  if (isMainThread) return false;
  const tell = (told: Told): void => parentPort?.postMessage(told);
  try {
    const answer = doJob(workerData as Job, (spent) => {
      tell({ spent });
      return true;
    });
    tell({ answer });
  } catch (error) {
    tell({ fault: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
  return true;
}

/**
 * Does a job: short ones on this thread, which saves the start of another, long ones on a thread of their own, so that Ctrl-C
 * works at any time and progress can be shown.
 */
export async function runJob<J extends Job>(job: J): Promise<Answer<J>> {
  const here = tryHere(job);
  if (here !== null) return here.answer as Answer<J>;
  const worker = new Worker(new URL(import.meta.url), { workerData: job });
  const progress = new Progress();
  try {
    return await new Promise<Answer<J>>((resolve, reject) => {
      worker.on('message', (told: Told) => {
        if ('spent' in told) progress.show(told.spent);
        else if ('answer' in told) resolve(told.answer as Answer<J>);
        else reject(new Error(told.fault));
      });
      worker.on('error', reject);
      worker.on('exit', (code) => reject(new Error(`the working thread ended early with ${code}`)));
    });
  } finally {
    progress.clear();
    await worker.terminate();
  }
}

function tryHere(job: Job): { answer: unknown } | null {
  const started = performance.now();
  const before = process.cpuUsage();
  let late = false;
  const goOn = (): boolean => {
    const { user, system } = process.cpuUsage(before);
    late ||= (user + system) / 1000 > HERE_WORK_MS || performance.now() - started > HERE_WAIT_MS;
    return !late;
  };
  try {
    const answer = doJob(job, goOn);
    return late ? null : { answer };
  } catch (error) {
    // Ended by the clock in the middle: the other thread begins again.
    if (late) return null;
    throw error;
  }
}
