import type { Scene } from '@foregone/engine';
import { useState } from 'react';
import { Button } from '../ui/button.tsx';
import type { Performing } from './use-stage.ts';

// More ways than this are offered in a list instead of as buttons.
const MOST_BUTTONS = 8;

/** What is to be chosen now, as a sentence with plain buttons; or the way to the next step. */
export function Choices({
  performing,
  hidden,
}: {
  readonly performing: Performing;
  readonly hidden: boolean;
}) {
  const { next, between } = performing;
  const { ways, step } = next;
  if (performing.ended || performing.stuck || step === null) return null;
  if (ways.length < 2)
    return (
      <div className="choices">
        <Button tone="ink" onPress={performing.step}>
          {between ? 'Next step' : 'Go on'}
        </Button>
      </div>
    );
  const who = step.who === 'performer' ? 'You choose' : 'Spectator chooses';
  return (
    <div className="choices" role="group" aria-label={who}>
      <span className="who">{who}</span>
      {ways.length <= MOST_BUTTONS
        ? ways.map(({ key, words }) => (
            <Button key={key} tone="ink" onPress={() => performing.take(key)}>
              {words === '' ? String(key) : words}
            </Button>
          ))
        : !hidden && <LongChoice performing={performing} />}
      <Button tone="pencil" onPress={performing.stepAtRandom}>
        at random
      </Button>
      <Button tone="pencil" onPress={performing.stepAwkwardly}>
        awkwardly
      </Button>
    </div>
  );
}

/** For cards in the hands: what to do, and what the spectator chose, large enough to be read over them. */
export function Calls({
  performing,
  told,
}: {
  readonly performing: Performing;
  readonly told: Scene | undefined;
}) {
  const isOver = performing.ended || performing.stuck;
  return (
    <div className="calls">
      {told === undefined ? (
        <p className="called">Lay the cards out as the set-up says.</p>
      ) : (
        <>
          <p className="call-step">{told.sentence}</p>
          <p className="called" aria-live="polite">
            {told.choice === ''
              ? 'nothing is chosen'
              : `${told.who === 'performer' ? 'You' : 'Spectator'}: ${told.choice}`}
          </p>
        </>
      )}
      {!isOver && (
        <Button tone="pencil" onPress={performing.stepAtRandom}>
          Call the next step
        </Button>
      )}
    </div>
  );
}

function LongChoice({ performing }: { readonly performing: Performing }) {
  const { ways } = performing.next;
  const [chosen, setChosen] = useState('0');
  const way = ways[Number(chosen)] ?? ways[0];
  return (
    <span className="long-choice">
      <select aria-label="The choice" value={chosen} onChange={({ target }) => setChosen(target.value)}>
        {ways.map(({ key, words }, i) => (
          <option key={key} value={i}>
            {words === '' ? String(key) : words}
          </option>
        ))}
      </select>
      <Button tone="ink" onPress={() => way !== undefined && performing.take(way.key)}>
        do it
      </Button>
    </span>
  );
}
