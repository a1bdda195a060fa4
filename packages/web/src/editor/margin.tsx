import { memo, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Packet } from '../ui/packet.tsx';
import { sayChoice } from './code/understood.ts';
import type { MarginEntry } from './moments.ts';
import { picturesOf } from '../ui/picture.ts';

interface MarginProps {
  readonly entries: readonly MarginEntry[];
  /** Where a place of the text stands, in pixels below the head of the page. */
  readonly topOf: (at: number) => number;
  /** Changes whenever lines stand elsewhere. */
  readonly lines: object;
  readonly caretStep: string | undefined;
  readonly onGo: (at: number) => void;
}

/** Beside each step: what is certain, what is needed, and who chooses. */
export const Margin = memo(function Margin({ entries, topOf, lines, caretStep, onGo }: MarginProps) {
  const column = useRef<HTMLOListElement>(null);
  const [tops, setTops] = useState<readonly number[]>([]);
  const [bottom, setBottom] = useState(0);

  const settle = () => {
    const items = [...(column.current?.children ?? [])];
    let free = 0;
    const next = entries.map(({ at }, index) => {
      const top = Math.max(free, topOf(at));
      free = top + (items[index]?.getBoundingClientRect().height ?? 0) + 10;
      return Math.round(top);
    });
    setBottom(Math.ceil(free));
    setTops((before) => (before.join() === next.join() ? before : next));
  };
  const latest = useRef(settle);
  latest.current = settle;
  useLayoutEffect(settle, [entries, lines, caretStep]);
  // Pictures and fonts change heights after the first drawing.
  useEffect(() => {
    const watch = new ResizeObserver(() => latest.current());
    if (column.current !== null) for (const item of column.current.children) watch.observe(item);
    return () => watch.disconnect();
  }, [entries]);

  return (
    <ol className="margin" ref={column} aria-label="Beside each step" style={{ minHeight: bottom }}>
      {entries.map((entry, index) => (
        <li
          key={`${entry.number} ${entry.at}`}
          className="margin-entry"
          data-current={entry.number === caretStep ? '' : undefined}
          style={{ top: tops[index] ?? 0 }}
        >
          <button type="button" className="margin-number" onClick={() => onGo(entry.at)}>
            <span className="said-only">Go to step </span>
            {entry.number}
          </button>
          <StepMoment
            entry={entry}
            isFull={entry.number === caretStep}
            isAsBefore={
              index > 0 && entry.moments.length > 0 && sayMoments(entry) === sayMoments(entries[index - 1])
            }
          />
        </li>
      ))}
    </ol>
  );
});

interface StepMomentProps {
  readonly entry: MarginEntry;
  /** Everything that is known; else what fits beside a line. */
  readonly isFull: boolean;
  /** The same is certain and needed as at the step above. */
  readonly isAsBefore?: boolean;
}

/** Have and need at one step, as pictures and in words; made anew only for another entry, as there may be many. */
export const StepMoment = memo(function StepMoment({ entry, isFull, isAsBefore = false }: StepMomentProps) {
  const { moments, choice, table } = entry;
  const said = choice === undefined || (choice.ways < 2 && !isFull) ? '' : sayChoice(choice);
  if (isAsBefore && !isFull) {
    return (
      <p className="moment-choice moment-brief">
        as above{said === '' ? '' : ` · ${said.slice(0, 1).toLowerCase()}${said.slice(1)}`}
      </p>
    );
  }
  const shown = new Set<string>();
  return (
    <div className="moment" data-full={isFull ? '' : undefined}>
      {moments.map(({ ending, moment, others }) => {
        const have = wordsOf(moment.have);
        const need = wordsOf(moment.need);
        const key = `${have} / ${need}`;
        if (shown.has(key)) return null;
        shown.add(key);
        return (
          <div key={ending}>
            {picturesOf(moment, table).map(({ pile, picture }) => (
              <Packet key={pile} picture={picture} label="" />
            ))}
            {have === need && have !== '' ? (
              <p className="moment-words">
                <b>Certain, and just what is needed:</b> {have}.
              </p>
            ) : (
              <>
                {have !== '' && (
                  <p className="moment-words moment-have">
                    <b>Certain:</b> {have}.
                  </p>
                )}
                <p className="moment-words">
                  <b>Needed from here:</b> {need === '' ? 'nothing of the cards' : need}.
                </p>
              </>
            )}
            {isFull && others > 0 && (
              <p className="second">One of {others + 1} moments this step may begin at.</p>
            )}
            {isFull && moments.length > 1 && <p className="second">For: {ending}.</p>}
          </div>
        );
      })}
      {said !== '' && <p className="moment-choice">{said}</p>}
    </div>
  );
});

function sayMoments(entry: MarginEntry | undefined): string {
  if (entry === undefined || entry.moments.length === 0) return '';
  return JSON.stringify(
    entry.moments.map(({ moment }) => [moment.sizes, wordsOf(moment.have), wordsOf(moment.need)]),
  );
}

const MOST_WORDS = 3;

function wordsOf(statements: readonly { readonly words: string }[]): string {
  const shown = statements.slice(0, MOST_WORDS).map(({ words }) => words);
  const more = statements.length - shown.length;
  return [...shown, ...(more > 0 ? [`and ${more} more`] : [])].join('; ');
}
