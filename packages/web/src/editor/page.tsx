import { ensureSyntaxTree } from '@codemirror/language';
import { openSearchPanel } from '@codemirror/search';
import type { EditorView } from '@codemirror/view';
import type { Performance } from '@foregone/engine';
import { useEffect, useMemo, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import type { NoteRecord } from '../storage/records.ts';
import { useAutosave } from '../storage/use-autosave.ts';
import { Button } from '../ui/button.tsx';
import { ConflictDialog } from '../ui/conflict-dialog.tsx';
import { InHeader } from '../ui/header-slot.tsx';
import { useKeys } from '../ui/keys.ts';
import { useLatest } from '../ui/use-latest.ts';
import { say } from '../ui/live.tsx';
import { notify } from '../ui/notices.tsx';
import { prefersStillness } from '../ui/preferences.ts';
import { SaveMark } from '../ui/save-mark.tsx';
import { createEngine } from '../worker/client.ts';
import { AlsoSafe } from './also-safe.tsx';
import { AskMore } from './ask-more.tsx';
import { Builder } from './build/builder.tsx';
import { apply, replaceText } from './code/commands.ts';
import { setDrawer } from './code/drawer.ts';
import { troubles } from './code/trouble.ts';
import { setUnderlined } from './code/understood.ts';
import { Head } from './head.tsx';
import { Lie } from './lie.tsx';
import { Margin, StepMoment } from './margin.tsx';
import { marginOf, type MarginEntry } from './moments.ts';
import { lined, pilesOf, sentenceAt, topIn } from './page-text.ts';
import { firstSafe, putIn, sentenceFor } from './safe.ts';
import { removeStep, stepAt } from './steps.ts';
import { TextEditor } from './text-editor.tsx';
import { useDesk } from './use-desk.ts';
import { useNarrow } from './use-narrow.ts';
import { useTrying } from './use-tried.ts';

/** One note open on the desk: head, page, margin, and the cards under it. */
export function Page({ note }: { readonly note: NoteRecord }) {
  const [text, setText] = useState(() => lined(note.text));
  const [caret, setCaret] = useState(0);
  const [performance, setPerformance] = useState(0);
  // A new object whenever lines stand elsewhere.
  const [lines, setLines] = useState({ from: 0, to: Infinity });
  const [builds, setBuilds] = useState(false);
  const [view, setView] = useState<EditorView>();
  const [drawerPlace] = useState(() => {
    const place = document.createElement('div');
    place.className = 'drawer';
    return place;
  });
  const narrow = useNarrow();
  const step = useMemo(() => {
    // The editor goes on from the tree it had before the key.
    const tree =
      view?.state.doc.length === text.length ? ensureSyntaxTree(view.state, text.length, 10) : null;
    return stepAt(text, caret, tree)?.number;
  }, [text, caret, view]);
  const trying = useTrying(text);
  const known = useDesk({ text, performance, step, breaking: trying.row });
  const kept = useAutosave(note, (theirs) => {
    if (view !== undefined) replaceText(view, lined(theirs), 'input.outside');
  });

  const report = known.report?.value;
  const reading = known.reading;
  const play = known.play?.value;
  const isOld = known.report?.text !== text;

  // What the engine said of this very text is drawn in it; what it said of an earlier one is left to drift along.
  useEffect(() => {
    if (view === undefined || reading?.text !== view.state.doc.toString()) return;
    const settled = known.report?.text === reading.text ? known.report.value : reading.value.report;
    const choices = known.play?.text === reading.text ? (known.play.value?.choices ?? []) : [];
    view.dispatch(troubles(view.state, settled));
    view.dispatch({
      effects: setUnderlined.of({ understood: reading.value.understood, choices, report: settled }),
    });
  }, [view, reading, known.report, known.play]);

  const moments = known.moments?.value;
  const entries = useMemo(
    () =>
      reading === undefined || reading.text !== text
        ? undefined
        : marginOf(reading.value.understood, play, moments?.ok === true ? moments.value : undefined),
    [reading, text, play, moments],
  );
  const lastEntries = useRef(entries ?? []);
  if (entries !== undefined) lastEntries.current = entries;
  const shown = lastEntries.current;

  // Only lines in sight have a place on the page.
  const lastInSight = useRef<readonly MarginEntry[]>([]);
  const inSight = useMemo(() => {
    const next = shown.filter(({ at }) => at >= lines.from && at <= lines.to);
    const before = lastInSight.current;
    if (next.length === before.length && next.every((one, i) => one === before[i])) return before;
    return (lastInSight.current = next);
  }, [shown, lines]);
  const entry = shown.find(({ number }) => number === step);

  // On a narrow page the margin is a drawer beneath the step at the caret.
  useEffect(() => {
    if (view === undefined) return;
    const at = narrow && entry !== undefined ? Math.min(entry.at, view.state.doc.length) : null;
    view.dispatch({ effects: setDrawer.of(at) });
  }, [view, narrow, entry]);

  const go = useLatest((at: number) => {
    if (view === undefined) return;
    view.dispatch({ selection: { anchor: Math.min(at, view.state.doc.length) }, scrollIntoView: true });
    view.focus();
  });

  // Rows about an earlier text stay, out of reach, until the new ones come.
  const isSafeOld = known.safe?.text !== text;
  const verdict = isOld ? undefined : report?.verdict;
  const isSafeShown = verdict === undefined || verdict === 'proved' || verdict === 'refuted';
  const safe = isSafeShown ? known.safe?.value : undefined;
  const put = useLatest((sentence: string) => {
    if (view === undefined || safe === undefined || isSafeOld || sentence === '') return;
    apply(view, putIn(text, safe.at, sentence), 'input.step');
    view.focus();
    say(`Put in: ${sentence}`);
  });
  // Far below the step at the caret on a long page.
  const show = useLatest((part: string) =>
    view?.dom
      .closest('.note-page')
      ?.querySelector(part)
      ?.scrollIntoView({
        block: 'nearest',
        behavior: prefersStillness() ? 'auto' : 'smooth',
      }),
  );

  const mend = useLatest(() => show('.also-safe'));
  const tryRow = useLatest((sentence: string) => {
    trying.tryRow(sentence);
    show('.lie');
  });
  const trySlip = useLatest((words: string, shown: Performance) => {
    trying.trySlip(words, shown);
    show('.lie');
  });
  const leaveTried = useLatest(trying.leave);
  const another = useLatest(() => setPerformance((which) => which + 1));
  const takeOut = useLatest(() => {
    const number = safe?.at.step;
    if (view === undefined || isSafeOld || number === undefined) return;
    apply(view, removeStep(text, number), 'delete.step');
    view.focus();
    say(`Step ${number} taken out`);
  });
  const top = useLatest((at: number) => (view === undefined ? 0 : topIn(view, at)));

  const format = async () => {
    if (view === undefined) return;
    const before = view.state.doc.toString();
    const engine = createEngine();
    try {
      const after = await engine.ask('format', before);
      // Words typed meanwhile are worth more than their layout.
      if (after === undefined || view.state.doc.toString() !== before) return;
      replaceText(view, after, 'input.format');
      say(
        after === before
          ? 'Every sentence is written as it is printed'
          : 'Sentences written as they are printed',
      );
    } catch {
      notify({ text: 'The sentences could not be written out just now.', tone: 'brick' });
    } finally {
      engine.stop();
    }
  };

  const keys = useMemo(
    () => [
      { keys: 'Alt+ArrowUp', what: 'Move the step at the caret up', run: () => {} },
      { keys: 'Alt+ArrowDown', what: 'Move the step at the caret down', run: () => {} },
      { keys: 'Alt+Enter', what: 'Mend the trouble at the caret', run: () => {} },
      { keys: 'Ctrl+Enter', what: 'Put in the first mix that is also safe here', run: () => {} },
      { keys: 'Ctrl+Space', what: 'Offer sentences', run: () => {} },
      { keys: 'Ctrl+Shift+F', what: 'Write the sentences as they are printed', run: () => {} },
      { keys: 'Ctrl+F', what: 'Find in the note', run: () => {} },
      { keys: 'Ctrl+Z', what: 'Undo', run: () => {} },
      { keys: 'B', what: 'Build with buttons', run: () => setBuilds((is) => !is) },
    ],
    [],
  );
  useKeys(keys);

  const failing = report?.sentences.find(({ failure }) => failure !== null)?.failure?.performance;
  const piles = useMemo(() => pilesOf(play?.performance.steps.map(({ after }) => after) ?? []), [play]);

  return (
    <>
      <InHeader>
        <SaveMark state={kept.state.kind} />
        <Button tone="quiet" onPress={() => view !== undefined && openSearchPanel(view)}>
          Find
        </Button>
      </InHeader>
      <article
        className="note-page paper"
        data-busy={known.report?.text === text ? (known.busy ?? '') : 'check'}
      >
        <div className="note-columns">
          <div className="note-main">
            <Head
              title={report?.title ?? note.title}
              report={report}
              isOld={isOld}
              fault={known.fault}
              breaker={safe?.at.isInstead === true && !isSafeOld ? (safe.at.step ?? '') : ''}
              onMend={mend}
              onGo={go}
            />
            <div className="note-tools">
              <Button tone={builds ? 'pencil' : 'ink'} onPress={() => setBuilds(!builds)}>
                {builds ? 'Close the buttons' : 'Build with buttons'}
              </Button>
              <Button tone="quiet" onPress={() => void format()}>
                Write out
              </Button>
            </div>
            {builds && (
              <Builder
                text={text}
                piles={piles}
                onGo={go}
                onChange={(change) => {
                  if (view !== undefined) apply(view, change);
                }}
              />
            )}
            <TextEditor
              text={lined(note.text)}
              drawerPlace={drawerPlace}
              onReady={setView}
              onText={(next) => {
                setText(next);
                kept.edit(next);
              }}
              onCaret={setCaret}
              onLines={({ from, to }) => setLines({ from, to })}
              onFormat={() => void format()}
              onSafe={() => {
                const first = firstSafe(safe?.rows ?? []);
                if (first !== undefined) put(sentenceFor(first));
              }}
            />
          </div>
          {!narrow && view !== undefined && (
            <Margin entries={inSight} lines={lines} caretStep={step} topOf={top} onGo={go} />
          )}
        </div>
        {narrow && entry !== undefined && createPortal(<StepMoment entry={entry} isFull />, drawerPlace)}
        {safe !== undefined && (
          <AlsoSafe
            safe={safe}
            isOld={isSafeOld}
            instead={safe.at.isInstead ? sentenceAt(known.safe?.text ?? text, safe.at.step) : ''}
            onPut={put}
            onShow={tryRow}
            onTakeOut={takeOut}
          />
        )}
        {report !== undefined && report.verdict !== 'not understood' && (
          <AskMore text={known.report?.text ?? text} onShow={trySlip} />
        )}
        <Lie
          id={note.id}
          performance={play?.performance}
          failing={failing}
          tried={trying.triedIn(known)}
          onLeaveTried={leaveTried}
          step={step}
          onAnother={another}
        />
      </article>
      {kept.state.kind === 'conflict' && (
        <ConflictDialog
          mine={kept.state.mine}
          theirs={kept.state.theirs.text}
          onSettle={(choice) => void kept.settle(choice)}
        />
      )}
    </>
  );
}
