import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { Button } from '../ui/button.tsx';
import { useKeys } from '../ui/keys.ts';
import { say } from '../ui/live.tsx';
import { NoNote } from '../ui/no-note.tsx';
import { addressOf } from '../ui/routes.ts';
import { CardsLayer } from './cards-layer.tsx';
import { Calls, Choices } from './choices.tsx';
import { momentsAt, useKnowledge } from './knowledge.ts';
import { TiesLayer } from './ties-layer.tsx';
import { SlipDialog } from './slip-dialog.tsx';
import { patterAt, patterOf } from './patter.ts';
import { Summary } from './summary.tsx';
import { TimeBar } from './time-bar.tsx';
import { pilesAt, sceneAt, timelineOf } from './timeline.ts';
import { useClock, useWidth } from './use-measures.ts';
import { usePlayhead } from './use-playhead.ts';
import { useStage, type Performing } from './use-stage.ts';
import './table.css';

/** The Table room: the note's cards, moved by the same actions that were proved. */
export function TableRoom({ id }: { readonly id: string | undefined }) {
  const note = useLive(
    async () => (id === undefined ? null : ((await repository.getNote(id)) ?? null)),
    [id],
  );
  if (note === undefined) return null;
  if (note === null) return <NoNote />;
  return <Table key={note.id} id={note.id} title={note.title} text={note.text} />;
}

function Table({ id, title, text }: { readonly id: string; readonly title: string; readonly text: string }) {
  const performing = useStage(text);
  if (performing === null)
    return (
      <section className="empty-room">
        <h1>{title}</h1>
        <p>This note has a sentence that is not understood yet, so there is nothing to perform.</p>
        <p>
          <a href={addressOf({ room: 'note', id })}>Mend it in the note</a>
        </p>
      </section>
    );
  return <Performance performing={performing} title={title} text={text} />;
}

/** Statements of what is needed that are told at once. */
const MOST_NEEDS = 2;

type View = 'performer' | 'audience' | 'in hand';

const VIEW_WORDS: Readonly<Record<View, string>> = {
  performer: 'Performer view',
  audience: 'Audience view',
  'in hand': 'Cards in hand',
};

function Performance({
  performing,
  title,
  text,
}: {
  readonly performing: Performing;
  readonly title: string;
  readonly text: string;
}) {
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place);
  const { start, scenes, next } = performing;
  const timeline = useMemo(() => timelineOf(start, scenes, width), [start, scenes, width]);
  const playhead = usePlayhead(timeline);
  const [view, setView] = useState<View>('performer');
  const [hideNext, setHideNext] = useState(false);
  const { failure, moments } = useKnowledge(text);
  const [slips, setSlips] = useState(false);
  const clock = useClock(scenes.length > 0 && !performing.ended);
  const patter = useMemo(() => patterOf(text), [text]);

  const scene = scenes[sceneAt(timeline, playhead.time)];
  const told = scenes.at(-1);
  useEffect(() => {
    if (told !== undefined) say(`${told.sentence}. ${told.choice}`);
  }, [told]);

  const number = next.step?.number ?? told?.number ?? '';
  const line = patterAt(patter, number);
  const table = scene?.after ?? start;

  const touch = useCallback(
    (pile: string, at: number, card: number) => {
      if (!playhead.moving) performing.touch({ pile, place: at + 1, id: card });
    },
    [performing, playhead.moving],
  );
  const touchable = view !== 'in hand' && next.ways.length > 1;
  const isAtEnd = !playhead.moving && playhead.time >= timeline.length;
  // In the middle of a mix, and while the past is looked at, nothing is said of what is needed.
  const here =
    view === 'performer' && isAtEnd && (performing.between || performing.ended)
      ? momentsAt(moments, performing.ended ? '' : (next.step?.number ?? ''), performing.now)
      : [];
  const needs = [...new Set(here.flatMap(({ need }) => need.map(({ words }) => words)))];

  useKeys(
    useMemo(
      () => [
        { keys: 'ArrowRight', what: 'Next step', run: performing.step },
        { keys: 'ArrowLeft', what: 'One step back', run: performing.back },
        { keys: 'R', what: 'Finish the step at random', run: performing.stepAtRandom },
        { keys: 'A', what: 'Finish the step awkwardly', run: performing.stepAwkwardly },
      ],
      [performing],
    ),
  );

  return (
    <section className="table-room">
      <header className="table-head">
        <h1>{title}</h1>
        <div className="views" role="group" aria-label="View">
          {(['performer', 'audience', 'in hand'] as const).map((one) => (
            <button key={one} type="button" aria-pressed={view === one} onClick={() => setView(one)}>
              {VIEW_WORDS[one]}
            </button>
          ))}
          <span className="clock" aria-label="Time since the first step">
            {clock}
          </span>
        </div>
      </header>
      <div className="table-paper paper">
        <div className="table-words">
          {line !== '' && <p className="patter-line">{line}</p>}
          {needs.length > 0 && !hideNext && (
            <p className="table-needs pencil">
              <b>Needed here:</b> {needs.slice(0, MOST_NEEDS).join('; ')}
              {needs.length > MOST_NEEDS ? `; and ${needs.length - MOST_NEEDS} more` : ''}.
            </p>
          )}
        </div>
        {view !== 'audience' && !hideNext && next.step !== null && (
          <p className="next-step">
            <span className="number">{next.step.number}</span> {next.step.sentence}
          </p>
        )}
        {told !== undefined && told.choice !== '' && view === 'performer' && (
          <p className="last-choice second">
            {told.who === 'performer' ? 'You' : 'Spectator'}: {told.choice}
          </p>
        )}
        {told?.slip !== undefined && view !== 'audience' && (
          <p className="last-choice brick">Slip: {told.slip}</p>
        )}
        <div ref={place} className="table-place">
          {view !== 'in hand' && (
            <CardsLayer
              cards={performing.cards}
              table={table}
              piles={pilesAt(timeline, playhead.time).piles}
              width={width}
              height={Math.max(timeline.last.height, 160)}
              ghosts={view === 'performer'}
              onPainter={playhead.setPainter}
              onTouch={touchable ? touch : undefined}
            >
              {here.map((moment, index) => (
                <TiesLayer
                  key={index}
                  moment={moment}
                  table={performing.now}
                  placed={timeline.last}
                  width={width}
                />
              ))}
            </CardsLayer>
          )}
          {view === 'in hand' && <Calls performing={performing} told={told} />}
        </div>
        <Summary performing={performing} />
        {view !== 'in hand' && <Choices performing={performing} hidden={hideNext} />}
      </div>
      <TimeBar
        timeline={timeline}
        playhead={playhead}
        scenes={scenes}
        hideNext={hideNext}
        onHideNext={setHideNext}
      >
        <Button tone="quiet" isDisabled={!performing.canGoBack} onPress={performing.back}>
          back
        </Button>
        <Button tone="quiet" onPress={performing.reset}>
          from the start
        </Button>
        <Button tone="quiet" onPress={performing.wholeAtRandom}>
          all at random
        </Button>
        {!performing.ended && !performing.stuck && view !== 'audience' && (
          <Button tone="brick" onPress={() => setSlips(true)}>
            make a slip
          </Button>
        )}
        {failure !== undefined && (
          <Button tone="brick" onPress={() => performing.follow(failure)}>
            show how it fails
          </Button>
        )}
      </TimeBar>
      {slips && <SlipDialog performing={performing} onClose={() => setSlips(false)} />}
    </section>
  );
}
