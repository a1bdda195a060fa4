import type { Report } from '@foregone/engine';
import { counted, grouped } from '@foregone/engine';
import { memo } from 'react';
import { Verdict } from '../ui/verdict.tsx';

interface HeadProps {
  readonly title: string;
  /** Undefined until the first report. */
  readonly report: Report | undefined;
  /** True while the report speaks of an earlier text. */
  readonly isOld: boolean;
  readonly fault: string | undefined;
  /** A step without which the note would always work; empty where none is known. */
  readonly breaker: string;
  /** Shows what would be safe in its place. */
  readonly onMend: () => void;
  readonly onGo: (at: number) => void;
}

/** The title, and the verdict with how it was found, how much it covers and why. */
export const Head = memo(function Head({ title, report, isOld, fault, breaker, onMend, onGo }: HeadProps) {
  return (
    <header className="note-head">
      <h1>{title === '' ? 'Untitled note' : title}</h1>
      <div className="note-verdict" aria-live="polite" aria-busy={isOld}>
        <span className="note-verdict-word">
          <Verdict verdict={isOld && report === undefined ? undefined : report?.verdict} />
        </span>
        <span className="second">
          {report === undefined ? '' : [...facts(report), ...(isOld ? ['checking …'] : [])].join(' · ')}
        </span>
      </div>
      {breaker !== '' && (
        <p className="note-mend">
          <span>Without step {breaker} it always works.</span>
          <button type="button" className="link" onClick={onMend}>
            See what is safe instead
          </button>
        </p>
      )}
      {fault !== undefined && <p className="brick">The engine has stumbled over this text: {fault}</p>}
      {report !== undefined && <Why report={report} onGo={onGo} />}
    </header>
  );
});

function facts({ sentences, coverage }: Report): string[] {
  const ways = [...new Set(sentences.map(({ by }) => by).filter((by) => by !== ''))];
  if (coverage === null) return ways;
  const { cards, performances, starts } = coverage;
  return [
    ...ways,
    counted(cards, 'card'),
    performances === null
      ? 'performances not counted'
      : performances === 'unlimited'
        ? 'unlimited performances'
        : performances === '1'
          ? 'one performance'
          : `${grouped(performances)} performances`,
    ...(starts === '1' ? [] : [`${grouped(starts)} ways to begin`]),
  ];
}

function Why({ report, onGo }: { readonly report: Report; readonly onGo: (at: number) => void }) {
  const { summary, sentences, diagnostics } = report;
  const first = diagnostics.find(({ severity }) => severity === 'error');
  return (
    <details className="why" open={report.verdict === 'not understood'}>
      <summary>{summary}</summary>
      {first !== undefined && (
        <p>
          <button type="button" className="link" onClick={() => onGo(first.range.from)}>
            Line {first.line}
          </button>
          : {first.words} {first.remedy}
        </p>
      )}
      <ul>
        {sentences.map(({ text, why, by, range, failure, trials }) => (
          <li key={range.from}>
            <button type="button" className="link" onClick={() => onGo(range.from)}>
              {text}
            </button>
            : {why}
            {by !== '' && ` (${by})`}
            {trials !== null && ' Tried by chance only: this is no proof.'}
            {failure !== null && failure.shows !== '' && ` ${failure.shows}`}
          </li>
        ))}
      </ul>
    </details>
  );
}
