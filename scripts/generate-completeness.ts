import type { Claim } from '../packages/engine/src/claims/claim.ts';
import type { Message } from '../packages/engine/src/note/messages/message.ts';
import type { Move } from '../packages/engine/src/moves/move.ts';

/** Modules without a part that the reference shows, one line for each part. */
export function missingParts(
  moves: readonly Move[],
  claims: readonly Claim[],
  messages: readonly Message[],
): string[] {
  return [
    ...moves.flatMap((move) => lacks(`move ${move.id}`, { ...spoken(move), procedures: move.procedures })),
    ...claims.flatMap((claim) =>
      lacks(`ending ${claim.id}`, {
        ...spoken(claim),
        endings: claim.endings,
        'example that is true': claim.examples.filter(({ holds }) => holds),
        'example that is false': claim.examples.filter(({ holds }) => !holds),
      }),
    ),
    ...messages.flatMap((message) => lacks(`message ${message.code}`, told(message))),
    ...twice(
      'move',
      moves.map(({ title }) => title),
    ),
    ...twice(
      'ending',
      claims.map(({ title }) => title),
    ),
  ];
}

type Part = string | readonly unknown[];

function spoken({ title, phrases, help, caution, examples }: Move | Claim): Record<string, Part> {
  return { title, phrases, help, caution, examples };
}

function told({ words, remedy, shown }: Message): Record<string, Part> {
  return {
    words: words(shown.facts),
    remedy: remedy(shown.facts),
    ...(shown.by === 'program' ? {} : { 'note that brings it about': shown.note }),
  };
}

function lacks(module: string, parts: Record<string, Part>): string[] {
  return Object.entries(parts)
    .filter(([, part]) => (typeof part === 'string' ? part.trim() === '' : part.length === 0))
    .map(([name]) => `${module} has no ${name}`);
}

/** A heading that stands on a page twice has no address of its own. */
function twice(kind: string, titles: readonly string[]): string[] {
  return [...new Set(titles.filter((title, i) => titles.indexOf(title) !== i))].map(
    (title) => `two modules are called ${kind} "${title}"`,
  );
}
