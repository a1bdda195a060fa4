import { liveQuery } from 'dexie';
import { useEffect, useRef, useState } from 'react';

/**
 * The answer to a question to the database, asked again whenever what it read changes, in this tab or another. Undefined
 * until the first answer; `deps` are what the question depends on.
 */
export function useLive<T>(question: () => Promise<T>, deps: readonly unknown[]): T | undefined {
  const [answer, setAnswer] = useState<{ readonly value: T; readonly to: string }>();
  const latest = useRef(question);
  latest.current = question;
  const to = JSON.stringify(deps);
  useEffect(() => {
    const subscription = liveQuery(() => latest.current()).subscribe({
      next: (value) => setAnswer({ value, to }),
      // A database that cannot be read is shown by the error boundary.
      error: (error: unknown) =>
        setAnswer(() => {
          throw error;
        }),
    });
    return () => subscription.unsubscribe();
  }, [to]);
  return answer?.to === to ? answer.value : undefined;
}
