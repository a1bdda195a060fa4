import { useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Icon } from '../../ui/icons.tsx';
import { say } from '../../ui/live.tsx';
import {
  endingsIn,
  insertEnding,
  insertStep,
  moveStep,
  removeEnding,
  removeStep,
  replaceEnding,
  replaceSentence,
  sectionIn,
  stepsIn,
  type EndingPlace,
  type TextChange,
} from '../steps.ts';
import { CardsDialog } from './cards-dialog.tsx';
import { Palette } from './palette.tsx';

interface BuilderProps {
  readonly text: string;
  readonly piles: readonly string[];
  readonly onChange: (change: TextChange) => void;
  readonly onGo: (at: number) => void;
}

type Open =
  | { readonly for: 'before'; readonly number: string }
  | { readonly for: 'instead'; readonly number: string }
  | { readonly for: 'end' }
  | { readonly for: 'ending' }
  | { readonly for: 'other ending'; readonly place: EndingPlace };

/** The words of the packet's line; empty where there is none. */
function packetIn(text: string): string {
  const section = sectionIn(text, 'set-up');
  if (section === undefined) return '';
  return /^[ \t]*[-*+][ \t]+packet:[ \t]*(.*)$/im.exec(text.slice(section.from, section.to))?.[1] ?? '';
}

/** The same note in buttons: its steps to be moved, taken out, changed and added to. */
export function Builder({ text, piles, onChange, onGo }: BuilderProps) {
  const [open, setOpen] = useState<Open>();
  const [picksCards, setPicksCards] = useState(false);
  const steps = stepsIn(text);
  const packet = packetIn(text);
  const endings = endingsIn(text);
  const make = (change: TextChange | undefined, said: string) => {
    if (change === undefined) return;
    onChange(change);
    say(said);
  };
  return (
    <section className="builder" aria-label="Build with buttons">
      <h2>The cards</h2>
      <div className="builder-cards">
        <p>{packet === '' ? 'No cards are named yet.' : packet}</p>
        <Button onPress={() => setPicksCards(true)}>
          {packet === '' ? 'Choose the cards' : 'Change the cards'}
        </Button>
      </div>
      <h2>The working, step by step</h2>
      {steps.length === 0 && <p className="second">There are no steps yet. Put the first one in.</p>}
      <ol>
        {steps.map(({ number, depth, sentence, at }) => {
          const up = moveStep(text, number, -1);
          const down = moveStep(text, number, 1);
          return (
            <li key={number} className="builder-step" data-depth={Math.min(depth, 3)}>
              <span className="builder-number">{number}</span>
              <button type="button" className="link builder-sentence" onClick={() => onGo(at)}>
                {sentence}
              </button>
              <span className="builder-tools">
                <Button
                  tone="icon"
                  label={`Move step ${number} up`}
                  isDisabled={up === undefined}
                  onPress={() => make(up, 'Moved up')}
                >
                  <Icon name="up" />
                </Button>
                <Button
                  tone="icon"
                  label={`Move step ${number} down`}
                  isDisabled={down === undefined}
                  onPress={() => make(down, 'Moved down')}
                >
                  <Icon name="down" />
                </Button>
                <Button
                  tone="icon"
                  label={`Put a step in before ${number}`}
                  onPress={() => setOpen({ for: 'before', number })}
                >
                  <Icon name="add" />
                </Button>
                <Button
                  tone="icon"
                  label={`Change step ${number}`}
                  onPress={() => setOpen({ for: 'instead', number })}
                >
                  <Icon name="pen" />
                </Button>
                <Button
                  tone="icon"
                  label={`Take step ${number} out`}
                  onPress={() => make(removeStep(text, number), `Step ${number} taken out`)}
                >
                  <Icon name="bin" />
                </Button>
              </span>
            </li>
          );
        })}
      </ol>
      <div className="builder-more">
        <Button tone="pencil" onPress={() => setOpen({ for: 'end' })}>
          Add a step
        </Button>
      </div>
      <h2>What is certain at the end</h2>
      <ul>
        {endings.map((place, index) => (
          <li key={place.from} className="builder-step builder-ending">
            <button type="button" className="link builder-sentence" onClick={() => onGo(place.from)}>
              {place.sentence}
            </button>
            <span className="builder-tools">
              <Button
                tone="icon"
                label={`Change ending ${index + 1}`}
                onPress={() => setOpen({ for: 'other ending', place })}
              >
                <Icon name="pen" />
              </Button>
              <Button
                tone="icon"
                label={`Take ending ${index + 1} out`}
                onPress={() => make(removeEnding(text, place), 'Ending taken out')}
              >
                <Icon name="bin" />
              </Button>
            </span>
          </li>
        ))}
      </ul>
      <div className="builder-more">
        <Button onPress={() => setOpen({ for: 'ending' })}>Add an ending</Button>
      </div>
      {picksCards && (
        <CardsDialog
          text={text}
          onPut={(change) => {
            make(change, 'The cards are laid');
            setPicksCards(false);
          }}
          onClose={() => setPicksCards(false)}
        />
      )}
      {open !== undefined && (
        <Palette
          text={text}
          piles={piles}
          isEnding={open.for === 'ending' || open.for === 'other ending'}
          where={whereOf(open)}
          changeFor={(sentence) => {
            switch (open.for) {
              case 'before':
                return insertStep(text, sentence, open.number);
              case 'instead':
                return replaceSentence(text, open.number, sentence);
              case 'end':
                return insertStep(text, sentence, undefined);
              case 'ending':
                return insertEnding(text, sentence);
              case 'other ending':
                return replaceEnding(open.place, sentence);
            }
          }}
          onPut={(change) => {
            make(change, 'Put in');
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

function whereOf(open: Open): string {
  switch (open.for) {
    case 'before':
      return `before step ${open.number}`;
    case 'instead':
      return `in place of step ${open.number}`;
    case 'end':
      return 'as the last step';
    case 'ending':
      return 'under the ending';
    case 'other ending':
      return 'in its place';
  }
}
