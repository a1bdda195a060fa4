import { useState } from 'react';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { Button } from '../ui/button.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import { counted, endForGood, putBack } from './actions.ts';
import { sayMoment } from './when.ts';

/** What was thrown away. Nothing leaves the bin by itself. */
export function BinDialog({ onClose }: { readonly onClose: () => void }) {
  const notes = useLive(() => repository.listTrash(), []);
  const [isSure, setSure] = useState(false);
  if (notes === undefined) return null;
  const ids = notes.map(({ id }) => id);
  return (
    <Dialog title="Bin" isOpen onClose={onClose}>
      {notes.length === 0 ? (
        <p>The bin is empty.</p>
      ) : (
        <ul className="bin-list">
          {notes.map(({ id, title, trashed }) => (
            <li key={id}>
              <span>
                {title}
                <br />
                <span className="second">thrown away {sayMoment(trashed)}</span>
              </span>
              <Button tone="quiet" label={`Put back ${title}`} onPress={() => void putBack([id])}>
                Put back
              </Button>
            </li>
          ))}
        </ul>
      )}
      {isSure && (
        <p className="brick" role="alert">
          {counted(notes.length)} and {notes.length === 1 ? 'its' : 'their'} history will be gone for good.
        </p>
      )}
      <DialogActions>
        {notes.length > 0 && (
          <Button
            tone="brick"
            onPress={() => {
              if (isSure) void endForGood(ids);
              setSure(!isSure);
            }}
          >
            {isSure ? 'Yes, empty it' : 'Empty the bin'}
          </Button>
        )}
        <Button onPress={onClose}>Close</Button>
      </DialogActions>
    </Dialog>
  );
}
