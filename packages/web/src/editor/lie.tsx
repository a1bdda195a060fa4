import type { Performance, TableData } from '@foregone/engine';
import { memo, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { Card } from '../ui/card.tsx';
import { faceOf } from '../ui/card-face.ts';
import { Icon } from '../ui/icons.tsx';
import { addressOf } from '../ui/routes.ts';
import { tableAfter, tableBefore } from './moments.ts';
import type { Tried } from './use-tried.ts';

interface LieProps {
  readonly id: string;
  readonly performance: Performance | undefined;
  /** A performance that fails, where the report has one. */
  readonly failing: Performance | undefined;
  /** Something that is tried out and breaks the note; its performance is undefined where none was found. */
  readonly tried: Tried | undefined;
  readonly onLeaveTried: () => void;
  readonly step: string | undefined;
  readonly onAnother: () => void;
}

/** Under the page: the cards as they lie before the step at the caret, in one performance of many. */
export const Lie = memo(function Lie({
  id,
  performance,
  failing,
  tried,
  onLeaveTried,
  step,
  onAnother,
}: LieProps) {
  const [showsFailing, setShowsFailing] = useState(false);
  const [moved, setMoved] = useState<{ readonly at: string; readonly done: number }>();
  const fails = showsFailing && failing !== undefined;
  const shown = tried?.performance ?? (fails ? failing : performance);
  const steps = shown?.steps ?? [];
  const found = shown === undefined || step === undefined ? undefined : tableBefore(shown, step);
  // What is tried out has a plus for its number, or is a slip.
  const triedAt = steps.findIndex(({ number, slip }) => number === '+' || slip !== undefined);
  const begin = tried?.performance === undefined ? (found?.done ?? 0) : Math.max(0, triedAt);
  const at = `${tried?.words ?? ''} ${step ?? ''}`;
  const done = Math.min(moved?.at === at ? moved.done : begin, steps.length);
  const table = shown === undefined ? undefined : tableAfter(shown, done);
  const next = steps[done];
  const last = steps[done - 1];
  const go = (to: number) => setMoved({ at, done: to });
  const place =
    next === undefined ? 'At the end' : next.number === '+' ? 'Before it' : `Before step ${next.number}`;
  const which = fails ? 'in a performance that fails' : 'in one performance of many';
  const chosen = last === undefined || last.choice === '' ? '' : `. Just chosen: ${last.choice}`;
  return (
    <section className="lie" aria-label="The cards at the caret">
      {tried !== undefined && (
        <p className="lie-tried" role="status">
          {tried.performance !== undefined
            ? `${tried.words}, this performance fails. Step through it.`
            : tried.isKnown
              ? `${tried.words}, no single performance was found that fails.`
              : `${tried.words}: looking for a performance that fails …`}{' '}
          <Button tone="quiet" onPress={onLeaveTried}>
            Back to the note as it is
          </Button>
        </p>
      )}
      <div className="lie-head">
        <p className="second">
          {shown === undefined
            ? 'The cards will lie here once the note is understood.'
            : `${place}, ${tried?.performance === undefined ? which : 'in that performance'}${chosen}`}
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
            {failing !== undefined && tried === undefined && (
              <Button tone={fails ? 'pencil' : 'brick'} onPress={() => setShowsFailing(!showsFailing)}>
                {fails ? 'One that works or may not' : 'The failing one'}
              </Button>
            )}
            {!fails && tried === undefined && (
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
      {table !== undefined && shown !== undefined && <Cards table={table} performance={shown} />}
    </section>
  );
});

/** The piles of a table, card by card; made anew only when they change. */
const Cards = memo(function Cards({
  table,
  performance,
}: {
  readonly table: TableData;
  readonly performance: Performance;
}) {
  const piles = table.piles.filter(({ cards }) => cards.length > 0);
  return (
    <>
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
                  face={faceOf({ name: card.name, attributes: attributesOf(performance, card.id) })}
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
    </>
  );
});

function attributesOf(
  performance: Performance | undefined,
  id: number,
): Readonly<Record<string, string | number>> {
  return performance?.cards.find((card) => card.id === id)?.attributes ?? {};
}
