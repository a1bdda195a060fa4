import { useId, useMemo, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Dialog, DialogActions } from '../../ui/dialog.tsx';
import { applied, type TextChange } from '../steps.ts';
import { catalogue, lookedFor, type Entry } from './catalogue.ts';
import { FieldControl } from './field.tsx';
import { fieldsOf, firstWording, repeated, REPEATS, sentenceOf, type Filled } from './phrase-form.ts';
import { sayTrouble, useTrouble } from './use-trouble.ts';

interface PaletteProps {
  readonly text: string;
  readonly piles: readonly string[];
  /** Where the sentence will go, in words: `before step 2`. */
  readonly where: string;
  /** Only forms of ending, or only moves. */
  readonly isEnding: boolean;
  readonly changeFor: (sentence: string) => TextChange | undefined;
  readonly onPut: (change: TextChange) => void;
  readonly onClose: () => void;
}

/** Picks a move by what hands do and fills its blanks; nothing has to be typed. */
export function Palette({ text, piles, where, isEnding, changeFor, onPut, onClose }: PaletteProps) {
  const groups = useMemo(
    () => catalogue().filter(({ name }) => (name === 'Endings') === isEnding),
    [isEnding],
  );
  const [looked, setLooked] = useState('');
  const [entry, setEntry] = useState<Entry>();
  const search = useId();
  const shown = lookedFor(groups, looked);
  return (
    <Dialog
      title={isEnding ? 'What is certain at the end?' : 'What do the hands do?'}
      isOpen
      onClose={onClose}
      wide
    >
      {entry === undefined ? (
        <>
          <div className="field">
            <label htmlFor={search}>Look for</label>
            <input
              id={search}
              className="input"
              type="search"
              autoFocus
              autoComplete="off"
              value={looked}
              onChange={({ target }) => setLooked(target.value)}
            />
          </div>
          <div className="palette">
            {shown.map(({ name, entries }) => (
              <section key={name} className="palette-group">
                <h3>{name}</h3>
                <ul>
                  {entries.map((one) => (
                    <li key={one.id}>
                      <button type="button" className="palette-entry" onClick={() => setEntry(one)}>
                        {one.title}
                      </button>
                    </li>
                  ))}
                </ul>
              </section>
            ))}
            {shown.length === 0 && <p>Nothing here is called that. Take a letter or two away.</p>}
          </div>
          <DialogActions>
            <Button onPress={onClose}>Close</Button>
          </DialogActions>
        </>
      ) : (
        <Form
          key={entry.id}
          entry={entry}
          text={text}
          piles={piles}
          where={where}
          changeFor={changeFor}
          onBack={() => setEntry(undefined)}
          onPut={onPut}
        />
      )}
    </Dialog>
  );
}

interface FormProps extends Pick<PaletteProps, 'text' | 'piles' | 'where' | 'changeFor' | 'onPut'> {
  readonly entry: Entry;
  readonly onBack: () => void;
}

function Form({ entry, text, piles, where, changeFor, onBack, onPut }: FormProps) {
  const [wording, setWording] = useState(() => firstWording(entry.phrases, entry.isEnding));
  const [filled, setFilled] = useState<Filled>({});
  const wordings = useId();
  const [repeat, setRepeat] = useState<(typeof REPEATS)[number]>('once');
  const often = useId();
  const parts = entry.phrases[wording]?.parts ?? [];
  const sentence = repeated(sentenceOf(parts, filled), repeat);
  const change = changeFor(sentence);
  const trouble = useTrouble(change === undefined ? undefined : applied(text, change), sentence);
  return (
    <form
      className="palette-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (change !== undefined) onPut(change);
      }}
    >
      <h3>{entry.title}</h3>
      <p>{entry.help}</p>
      {entry.caution !== '' && <p className="second">{entry.caution}</p>}
      {entry.phrases.length > 1 && (
        <div className="field">
          <label htmlFor={wordings}>Wording</label>
          <select
            id={wordings}
            className="input"
            value={wording}
            onChange={({ target }) => {
              setWording(Number(target.value));
              setFilled({});
            }}
          >
            {entry.phrases.map((phrase, index) => (
              <option key={phrase.template} value={index}>
                {sentenceOf(phrase.parts, {})}
              </option>
            ))}
          </select>
        </div>
      )}
      <div className="palette-fields">
        {fieldsOf(parts, filled).map((field) => (
          <FieldControl
            key={field.key}
            field={field}
            piles={piles}
            onChange={(value) => setFilled({ ...filled, [field.key]: value })}
          />
        ))}
        {!entry.isEnding && (
          <div className="field">
            <label htmlFor={often}>how often</label>
            <select
              id={often}
              className="input"
              value={repeat}
              onChange={({ target }) => setRepeat(REPEATS.find((one) => one === target.value) ?? 'once')}
            >
              {REPEATS.map((one) => (
                <option key={one}>{one}</option>
              ))}
            </select>
          </div>
        )}
      </div>
      <output className="palette-sentence">{sentence}</output>
      <p className={trouble === '' || trouble === undefined ? 'second' : 'brick'} role="status">
        {sayTrouble(trouble)}
      </p>
      <DialogActions>
        <Button onPress={onBack}>Another one</Button>
        <Button tone="pencil" type="submit" isDisabled={change === undefined}>
          Put it in {where}
        </Button>
      </DialogActions>
    </form>
  );
}
