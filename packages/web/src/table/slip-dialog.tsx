import { useId, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import type { Performing } from './use-stage.ts';

interface SlipDialogProps {
  readonly performing: Performing;
  readonly onClose: () => void;
}

/** A slip made on purpose in the step about to be done, to see what becomes of the ending. */
export function SlipDialog({ performing, onClose }: SlipDialogProps) {
  const [slips] = useState(() => performing.slips());
  const [kind, setKind] = useState(0);
  const [way, setWay] = useState('');
  const id = useId();
  const chosen = slips[kind];
  const make = () => {
    if (chosen === undefined) return;
    const key = way === '' ? chosen.ways[Math.floor(Math.random() * chosen.ways.length)]?.key : way;
    if (key !== undefined) performing.slip(chosen.slip, key);
    onClose();
  };
  return (
    <Dialog title="A slip on purpose" isOpen onClose={onClose}>
      {chosen === undefined ? (
        <p>Nothing can go wrong here that hands usually do. Finish what is going on, or go a step back.</p>
      ) : (
        <form
          className="slip-form"
          onSubmit={(event) => {
            event.preventDefault();
            make();
          }}
        >
          <fieldset className="slip-kinds">
            <legend>In the next step: {performing.next.step?.sentence}</legend>
            {slips.map(({ slip, title }, index) => (
              <label key={slip} className="tick">
                <input
                  type="radio"
                  name={id}
                  checked={index === kind}
                  onChange={() => {
                    setKind(index);
                    setWay('');
                  }}
                />
                {title}
              </label>
            ))}
          </fieldset>
          <p className="second">{chosen.help}</p>
          <div className="field">
            <label htmlFor={`${id}way`}>just how</label>
            <select
              id={`${id}way`}
              className="input"
              value={way}
              onChange={({ target }) => setWay(target.value)}
            >
              <option value="">any way, by chance</option>
              {chosen.ways.map(({ key, words }) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </select>
          </div>
          <DialogActions>
            <Button onPress={onClose}>Close</Button>
            <Button tone="brick" type="submit">
              Make the slip
            </Button>
          </DialogActions>
        </form>
      )}
      {chosen === undefined && (
        <DialogActions>
          <Button onPress={onClose}>Close</Button>
        </DialogActions>
      )}
    </Dialog>
  );
}
