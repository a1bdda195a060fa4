import type { Scene } from '@foregone/engine';
import type { ReactNode } from 'react';
import { Button } from '../ui/button.tsx';
import { sceneAt, type Timeline } from './timeline.ts';
import type { Playhead } from './use-playhead.ts';

interface TimeBarProps {
  readonly timeline: Timeline;
  readonly playhead: Playhead;
  readonly scenes: readonly Scene[];
  readonly hideNext: boolean;
  readonly onHideNext: (hide: boolean) => void;
  readonly children: ReactNode;
}

const SPEEDS = [0.5, 1, 2] as const;

/** Play, stop, scrub, and a bead for each step that was done. */
export function TimeBar({ timeline, playhead, scenes, hideNext, onHideNext, children }: TimeBarProps) {
  const now = sceneAt(timeline, playhead.time);
  return (
    <footer className="time-bar">
      <div className="time-row">
        <Button
          tone="quiet"
          isDisabled={timeline.length === 0}
          onPress={playhead.moving ? playhead.pause : playhead.play}
        >
          {playhead.moving ? 'pause' : 'play'}
        </Button>
        <input
          type="range"
          className="scrub"
          aria-label="Moment of the performance"
          aria-valuetext={now < 0 ? 'before the first step' : `after step ${scenes[now]?.number ?? ''}`}
          min={0}
          max={Math.max(1, timeline.length)}
          step={1}
          value={playhead.time}
          onChange={({ target }) => playhead.scrub(Number(target.value))}
        />
        <label className="speed">
          <span className="said-only">Speed</span>
          <select value={playhead.speed} onChange={({ target }) => playhead.setSpeed(Number(target.value))}>
            {SPEEDS.map((speed) => (
              <option key={speed} value={speed}>
                {speed === 1 ? 'usual speed' : speed < 1 ? 'slow' : 'fast'}
              </option>
            ))}
          </select>
        </label>
        <label className="hide-next">
          <input type="checkbox" checked={hideNext} onChange={({ target }) => onHideNext(target.checked)} />{' '}
          hide next step
        </label>
      </div>
      <ol className="beads" aria-label="Steps done">
        {scenes.map(({ number, sentence, choice }, i) => (
          <li key={`${i}${number}`}>
            <button
              type="button"
              className="bead"
              aria-current={i === now ? 'step' : undefined}
              aria-label={`Step ${number}: ${sentence}${choice === '' ? '' : `, ${choice}`}`}
              onClick={() => playhead.scrub(timeline.scenes[i + 1] ?? timeline.length)}
            />
          </li>
        ))}
      </ol>
      <div className="time-row">{children}</div>
    </footer>
  );
}
