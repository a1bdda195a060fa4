import { useEffect, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import { startNote } from './actions.ts';
import { firstWords } from './first-words.ts';
import { namedExamples, type Example } from './new-note-button.tsx';

/** The finished notes that come with the app; taking one makes a note of one's own. */
export function ExamplesDialog({ onClose }: { readonly onClose: () => void }) {
  const [examples, setExamples] = useState<readonly Example[]>([]);
  useEffect(() => {
    void namedExamples().then(setExamples);
  }, []);
  return (
    <Dialog title="Begin with an example" isOpen onClose={onClose}>
      <ul className="example-list">
        {examples.map(({ title, text }) => (
          <li key={title}>
            <Button
              tone="quiet"
              onPress={() => {
                onClose();
                void startNote(text);
              }}
            >
              {title}
            </Button>
            <span className="second">{firstWords(text)}</span>
          </li>
        ))}
      </ul>
      <DialogActions>
        <Button onPress={onClose}>Close</Button>
      </DialogActions>
    </Dialog>
  );
}
