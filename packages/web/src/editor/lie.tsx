import type { Performance } from '@foregone/engine';
import { useState } from 'react';
import { Button } from '../ui/button.tsx';
import { Card } from '../ui/card.tsx';
import { faceOf } from '../ui/card-face.ts';
import { Icon } from '../ui/icons.tsx';
import { addressOf } from '../ui/routes.ts';
import { tableAfter, tableBefore } from './moments.ts';

interface LieProps {
  readonly id: string;
  readonly performance: Performance | undefined;
  /** A performance that fails, where the report has one. */
  readonly failing: Performance | undefined;
  readonly step: string | undefined;
  readonly onAnother: () => void;
}

/** Under the page: the cards as they lie before the step at the caret, in one performance of many. */
export function Lie({ id, performance, failing, step, onAnother }: LieProps) {
  const [showsFailing, setShowsFailing] = useState(false);
  const [moved, setMoved] = useState<{ readonly step: string | undefined; readonly done: number }>();
  const shown = showsFailing && failing !== undefined ? failing : performance;
  const steps = shown?.steps ?? [];
  const found = shown === undefined || step === undefined ? undefined : tableBefore(shown, step);
  const done = Math.min(moved?.step === step ? (moved?.done ?? 0) : (found?.done ?? 0), steps.length);
  const table = shown === undefined ? undefined : tableAfter(shown, done);
  const next = steps[done];
  const last = steps[done - 1];
  const go = (to: number) => setMoved({ step, done: to });
  const piles = table?.piles.filter(({ cards }) => cards.length > 0) ?? [];
  return (
    <section className="lie" aria-label="The cards at the caret">
      <div className="lie-head">
        <p className="second">
          {shown === undefined
            ? 'The cards will lie here once the note is understood.'
            : `${next === undefined ? 'At the end' : `Before step ${next.number}`}, ${showsFailing && failing !== undefined ? 'in a performance that fails' : 'in one performance of many'}${last === undefined || last.choice === '' ? '' : `. Just chosen: ${last.choice}`}`}
        </p>
        {shown !== undefined && (
          <div className="lie-tools">
            <Button tone="icon" label="Step back" isDisabled={done === 0} onPress={() => go(done - 1)}>
              <Icon name="left" />
            </Button>
            <span className="second">
              {done} of {steps.length}
            </span>
            <Button
              tone="icon"
              label="Step on"
              isDisabled={done >= steps.length}
              onPress={() => go(done + 1)}
            >
              <Icon name="right" />
            </Button>
            {failing !== undefined && (
              <Button tone={showsFailing ? 'pencil' : 'brick'} onPress={() => setShowsFailing(!showsFailing)}>
                {showsFailing ? 'One that works or may not' : 'The failing one'}
              </Button>
            )}
            {!showsFailing && (
              <Button tone="quiet" onPress={onAnother}>
                Another
              </Button>
            )}
            <a className="button" data-tone="quiet" href={addressOf({ room: 'table', id })}>
              Play on the table
            </a>
          </div>
        )}
      </div>
      {piles.map(({ name, cards }) => (
        <div key={name} className="lie-pile">
          {(piles.length > 1 || name !== 'packet') && <h3 className="lie-name">{name}</h3>}
          <ol
            className="lie-cards"
            data-many={cards.length > 20 ? '' : undefined}
            aria-label={`${name}, from the top`}
          >
            {cards.map((card) => (
              <li key={card.id}>
                <Card
                  face={faceOf({ name: card.name, attributes: attributesOf(shown, card.id) })}
                  up={card.up}
                  end={card.end}
                  ghost
                />
                {card.marks.length > 0 && <span className="lie-mark">{card.marks.join(', ')}</span>}
              </li>
            ))}
          </ol>
        </div>
      ))}
    </section>
  );
}

function attributesOf(
  performance: Performance | undefined,
  id: number,
): Readonly<Record<string, string | number>> {
  return performance?.cards.find((card) => card.id === id)?.attributes ?? {};
}
