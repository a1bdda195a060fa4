import { answer } from './answer.ts';
import type { Reply, Request } from './protocol.ts';

const reply = (message: Reply) => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  const { id, ask, text, about, bounds } = data;
  try {
    const found = answer(
      ask,
      text,
      bounds,
      () => performance.now(),
      (spent) => {
        reply({ id, kind: 'progress', spent });
      },
      about,
    );
    reply({ id, kind: 'answer', answer: found });
  } catch (error) {
    reply({
      id,
      kind: 'fault',
      message: error instanceof Error ? (error.stack ?? error.message) : String(error),
    });
  }
});
