import { useId, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { faceOf } from '../../ui/card-face.ts';
import { Dialog, DialogActions } from '../../ui/dialog.tsx';
import { applied, setPacket, type TextChange } from '../steps.ts';
import {
  CARD_WAYS,
  FACINGS,
  hasCount,
  mostOf,
  PACK,
  packetLine,
  SUITS,
  type CardsPicked,
} from './cards-form.ts';
import { sayTrouble, useTrouble } from './use-trouble.ts';

interface CardsDialogProps {
  readonly text: string;
  readonly onPut: (change: TextChange) => void;
  readonly onClose: () => void;
}

/** Picks the cards of the packet and how they lie at the start. */
export function CardsDialog({ text, onPut, onClose }: CardsDialogProps) {
  const [picked, setPicked] = useState<CardsPicked>({
    way: 'any cards',
    count: 10,
    facing: 'face down',
    listed: '',
  });
  const id = useId();
  const { way, count, facing, listed } = picked;
  const change = (part: Partial<CardsPicked>) => setPicked({ ...picked, ...part });
  const line = packetLine(picked);
  const made = setPacket(text, line);
  const trouble = useTrouble(applied(text, made), line);
  const isEmpty = way === 'cards one by one' && listed === '';
  return (
    <Dialog title="Which cards, and how do they lie?" isOpen onClose={onClose} wide>
      <form
        className="palette-form"
        onSubmit={(event) => {
          event.preventDefault();
          onPut(made);
        }}
      >
        <div className="palette-fields">
          <div className="field">
            <label htmlFor={`${id}way`}>the packet</label>
            <select
              id={`${id}way`}
              className="input"
              autoFocus
              value={way}
              onChange={({ target }) =>
                change({ way: CARD_WAYS.find((one) => one === target.value) ?? 'any cards' })
              }
            >
              {CARD_WAYS.map((one) => (
                <option key={one}>{one}</option>
              ))}
            </select>
          </div>
          {hasCount(way) && (
            <div className="field">
              <label htmlFor={`${id}count`}>how many</label>
              <input
                id={`${id}count`}
                className="input"
                type="number"
                min={1}
                max={mostOf(way)}
                value={count}
                onChange={({ target }) => change({ count: Math.trunc(Number(target.value)) || 1 })}
              />
            </div>
          )}
          <div className="field">
            <label htmlFor={`${id}facing`}>lying</label>
            <select
              id={`${id}facing`}
              className="input"
              value={facing}
              onChange={({ target }) =>
                change({ facing: FACINGS.find((one) => one === target.value) ?? 'face down' })
              }
            >
              {FACINGS.map((one) => (
                <option key={one}>{one}</option>
              ))}
            </select>
          </div>
        </div>
        {way === 'cards one by one' && (
          <Pack listed={listed} onListed={(cards) => change({ listed: cards })} />
        )}
        <output className="palette-sentence">{line}</output>
        <p className={trouble === '' || trouble === undefined ? 'second' : 'brick'} role="status">
          {isEmpty ? 'Press the cards in their order, the top one first.' : sayTrouble(trouble)}
        </p>
        <DialogActions>
          <Button onPress={onClose}>Close</Button>
          <Button tone="pencil" type="submit" isDisabled={isEmpty}>
            Lay these cards
          </Button>
        </DialogActions>
      </form>
    </Dialog>
  );
}

/** The whole pack to be pressed card by card; what was pressed goes on at the end. */
function Pack({
  listed,
  onListed,
}: {
  readonly listed: string;
  readonly onListed: (listed: string) => void;
}) {
  const chosen = listed.split(' ').filter((card) => card !== '');
  return (
    <div className="pack">
      {SUITS.map(([suit, name]) => (
        <div key={suit} className="pack-suit" role="group" aria-label={name}>
          {PACK.filter((card) => card.endsWith(suit)).map((card) => {
            const at = chosen.indexOf(card);
            const rank = card.slice(0, -1);
            return (
              <button
                key={card}
                type="button"
                className="pack-card"
                aria-pressed={at !== -1}
                aria-label={`${rank} of ${name}${at === -1 ? '' : `, place ${at + 1}`}`}
                onClick={() =>
                  onListed(
                    (at === -1 ? [...chosen, card] : chosen.filter((other) => other !== card)).join(' '),
                  )
                }
              >
                <Card
                  face={faceOf({ name: card, attributes: { rank, suit: name } })}
                  up
                  end={false}
                  label=""
                />
                {at !== -1 && <b>{at + 1}</b>}
              </button>
            );
          })}
        </div>
      ))}
    </div>
  );
}
