/** How much of the browser's room is used. */
export interface Room {
  /** Bytes. */
  readonly used: number;
  readonly quota: number;
}

const NEARLY = 0.85;
/** Less than this free, in bytes, and a longer note or its history may not fit. */
const LITTLE = 5_000_000;

/** Undefined where the browser does not tell. */
export async function measureRoom(): Promise<Room | undefined> {
  const { usage, quota } = (await navigator.storage?.estimate?.()) ?? {};
  return usage === undefined || quota === undefined || quota === 0 ? undefined : { used: usage, quota };
}

/** Whether to speak up before the room runs out. */
export function isNearlyFull({ used, quota }: Room): boolean {
  return used > quota * NEARLY || quota - used < LITTLE;
}

let asked = false;

/** Asks the browser, once a visit, not to clear the notes away when it needs room. */
export async function askToStay(): Promise<void> {
  if (asked) return;
  asked = true;
  if ((await navigator.storage?.persisted?.()) === false) await navigator.storage.persist();
}
