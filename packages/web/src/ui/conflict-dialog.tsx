import { Button } from './button.tsx';
import { Comparison } from './comparison.tsx';
import { Dialog, DialogActions } from './dialog.tsx';

interface ConflictDialogProps {
  readonly mine: string;
  readonly theirs: string;
  readonly onSettle: (choice: 'mine' | 'theirs') => void;
}

/** Asks which of two texts to go on with, when a note was changed in two places at once. */
export function ConflictDialog({ mine, theirs, onSettle }: ConflictDialogProps) {
  return (
    <Dialog title="This note was changed in two places" isOpen onClose={() => {}} wide mustAnswer>
      <p>Both texts are kept in the note’s history, whichever you go on with.</p>
      <Comparison before={theirs} after={mine} beforeName="Changed elsewhere" afterName="On this page" />
      <DialogActions>
        <Button onPress={() => onSettle('theirs')}>Go on with the other one</Button>
        <Button tone="pencil" autoFocus onPress={() => onSettle('mine')}>
          Go on with this page
        </Button>
      </DialogActions>
    </Dialog>
  );
}
