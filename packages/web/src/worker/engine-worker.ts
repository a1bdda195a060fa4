import { answering } from './answer.ts';
import type { Reply, Request } from './protocol.ts';

const reply = (message: Reply) => self.postMessage(message);

/** The question being answered; a newer one ends an older one between two of its bits. */
let current = 0;

// Messages to oneself: unlike timers they come round at once, and a question that has come in meanwhile is heard before.
const { port1: heard, port2: said } = new MessageChannel();
let goOn = () => {};
heard.onmessage = () => goOn();

self.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  const { id, ask, text, about, bounds } = data;
  current = id;
  reply({ id, kind: 'begun' });
  const task = answering(ask, text, {
    bounds,
    clock: () => performance.now(),
    progress: (spent) => reply({ id, kind: 'progress', spent }),
    about,
  });
  let over = false;
  goOn = () => {
    if (over || current !== id) return;
    try {
      const next = task.next();
      over = next.done === true;
      if (next.done === true) reply({ id, kind: 'answer', answer: next.value });
      else {
        reply({ id, kind: 'bit', bit: next.value });
        said.postMessage(0);
      }
    } catch (error) {
      over = true;
      reply({
        id,
        kind: 'fault',
        message: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
  };
  goOn();
});
