import type { Performance, SlipRow } from '@foregone/engine';
import { memo, useEffect, useState, type ReactNode } from 'react';
import { createEngine } from '../worker/client.ts';
import type { Insight, Topic } from '../worker/protocol.ts';

interface AskMoreProps {
  readonly text: string;
  /** Shows how the ending fails with a slip. */
  readonly onShow: (words: string, performance: Performance) => void;
}

const QUESTIONS: readonly (readonly [topic: Topic, words: string])[] = [
  ['set-up', 'What must the cards be like at the start?'],
  ['sizes', 'Does it work with other numbers of cards?'],
  ['mixing', 'How mixed are the cards at the end?'],
];

/** Milliseconds that a question of this kind may take: somebody asked for it. */
const PATIENCE = 60_000;

/** Questions about the note that are answered when somebody asks. */
export const AskMore = memo(function AskMore({ text, onShow }: AskMoreProps) {
  return (
    <section className="ask-more" aria-label="More about this note">
      {QUESTIONS.map(([topic, words]) => (
        <Asked key={topic} words={words}>
          <TopicAnswer key={text} topic={topic} text={text} />
        </Asked>
      ))}
      <Asked words="What if something goes wrong?">
        <SlipsAnswer key={text} text={text} onShow={onShow} />
      </Asked>
    </section>
  );
});

function Asked({ words, children }: { readonly words: string; readonly children: ReactNode }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>{words}</summary>
      {isOpen && children}
    </details>
  );
}

function TopicAnswer({ topic, text }: { readonly topic: Topic; readonly text: string }) {
  const [insight, setInsight] = useState<Insight>();
  useEffect(() => {
    const engine = createEngine();
    engine
      .ask('insight', text, { about: topic, time: PATIENCE })
      .then(setInsight, () =>
        setInsight({ words: 'The engine has stumbled over this question.', lines: [] }),
      );
    return () => engine.stop();
  }, [topic, text]);
  if (insight === undefined) return <p className="second">Working it out …</p>;
  return (
    <div role="status">
      <p>{insight.words}</p>
      {insight.lines.length > 0 && (
        <ul className="ask-lines">
          {insight.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** The verdict on a slip, told by sign and word. */
const SLIP_WORDS: Readonly<Record<SlipRow['verdict'], string>> = {
  harmless: 'harmless',
  sometimes: 'sometimes fatal',
  harmful: 'harmful',
  fatal: 'fatal',
  undecided: 'not settled',
};

function SlipsAnswer({ text, onShow }: AskMoreProps) {
  const [rows, setRows] = useState<readonly SlipRow[]>([]);
  const [ended, setEnded] = useState<string>();
  useEffect(() => {
    const engine = createEngine();
    engine
      .ask('slips', text, { time: PATIENCE, onBit: (row) => setRows((before) => [...before, row]) })
      .then(setEnded, () => setEnded('The engine has stumbled over this question.'));
    return () => engine.stop();
  }, [text]);
  return (
    <div aria-busy={ended === undefined}>
      <ul className="ask-lines">
        {rows.map((row) => {
          const { step, slip, title, verdict, words, notice, failure } = row;
          const isHarmless = verdict === 'harmless';
          return (
            <li key={`${step} ${slip}`}>
              <b>
                Step {step}, {title}:
              </b>{' '}
              <span className={isHarmless ? 'pencil' : 'brick'}>{SLIP_WORDS[verdict]}</span>. {words}{' '}
              {!isHarmless && notice.words !== '' && <span className="second">{notice.words} </span>}
              {failure !== null && (
                <button
                  type="button"
                  className="link"
                  aria-label={`Show it: ${title} in step ${step}`}
                  onClick={() => onShow(`With ${title} in step ${step}`, failure.performance)}
                >
                  show it
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {ended === undefined && <p className="second">Trying out slips …</p>}
      {ended === '' && rows.length === 0 && <p>There is nothing to slip in.</p>}
      {ended !== undefined && ended !== '' && <p>{ended}</p>}
    </div>
  );
}
