import { useMemo } from 'react';
import { Button } from '../ui/button.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import { useKeyList, useKeys } from '../ui/keys.ts';

interface KeyListProps {
  readonly isOpen: boolean;
  readonly onOpenChange: (open: boolean) => void;
}

/** Every key that does something here, under `?`. */
export function KeyList({ isOpen, onOpenChange }: KeyListProps) {
  const own = useMemo(
    () => [{ keys: '?', what: 'This list of keys', run: () => onOpenChange(true) }],
    [onOpenChange],
  );
  useKeys(own);
  const bindings = useKeyList();
  return (
    <Dialog title="Keys" isOpen={isOpen} onClose={() => onOpenChange(false)}>
      <dl className="keys">
        {bindings.map(({ keys, what }) => (
          <div key={`${keys} ${what}`}>
            <dt>
              <kbd>{keys}</kbd>
            </dt>
            <dd>{what}</dd>
          </div>
        ))}
        <div>
          <dt>
            <kbd>Tab</kbd>, arrows
          </dt>
          <dd>Go from thing to thing, and about inside it</dd>
        </div>
        <div>
          <dt>
            <kbd>Escape</kbd>
          </dt>
          <dd>Close what lies on top</dd>
        </div>
      </dl>
      <DialogActions>
        <Button autoFocus onPress={() => onOpenChange(false)}>
          Close
        </Button>
      </DialogActions>
    </Dialog>
  );
}
