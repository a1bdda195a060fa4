import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { Button } from '../ui/button.tsx';
import { useKeys } from '../ui/keys.ts';
import { say } from '../ui/live.tsx';
import { NoNote } from '../ui/no-note.tsx';
import { addressOf } from '../ui/routes.ts';
import { createEngine } from '../worker/client.ts';
import { CardsLayer } from './cards-layer.tsx';
import { Choices } from './choices.tsx';
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

type View = 'performer' | 'audience' | 'in hand';

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
  const failure = useFailure(text);
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
    (pile: string, at: number) => {
      const keys = next.ways.map(({ key }) => key);
      const wanted = [at + 1, String(at + 1), pile].find((key) => keys.includes(key));
      if (wanted !== undefined && !playhead.moving) performing.take(wanted);
    },
    [next, performing, playhead.moving],
  );
  const touchable = view !== 'in hand' && next.ways.length > 1;

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
              {one === 'in hand' ? 'Cards in hand' : `${one[0]!.toUpperCase()}${one.slice(1)} view`}
            </button>
          ))}
          <span className="clock" aria-label="Time since the first step">
            {clock}
          </span>
        </div>
      </header>
      <div className="table-paper paper">
        <p className="patter-line">{line}</p>
        {view !== 'audience' && !hideNext && next.step !== null && (
          <p className="next-step">
            <span className="number">{next.step.number}</span> {next.step.sentence}
          </p>
        )}
        {told !== undefined && told.choice !== '' && view !== 'audience' && (
          <p className={view === 'in hand' ? 'called' : 'last-choice second'}>
            {told.who === 'performer' ? 'You' : 'Spectator'}: {told.choice}
          </p>
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
            />
          )}
        </div>
        <Summary performing={performing} />
        <Choices performing={performing} hidden={hideNext} />
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
        {failure !== null && (
          <Button tone="brick" onPress={() => performing.follow(failure)}>
            show how it fails
          </Button>
        )}
      </TimeBar>
    </section>
  );
}

/** Choices of the note's failing performance, once the engine has said whether there is one. */
function useFailure(text: string): readonly string[] | null {
  const [found, setFound] = useState<readonly string[] | null>(null);
  useEffect(() => {
    setFound(null);
    const engine = createEngine();
    const ask = async () => {
      const answer = await engine.ask('check', text);
      const failing = answer?.report.sentences.find(({ failure }) => failure !== null)?.failure;
      if (failing !== undefined && failing !== null) setFound(failing.choices.map(String));
    };
    void ask();
    return () => engine.stop();
  }, [text]);
  return found;
}
