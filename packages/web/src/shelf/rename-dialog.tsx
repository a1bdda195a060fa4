import { useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { NoteRecord } from '../storage/records.ts';
import { Button } from '../ui/button.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import { rename } from './actions.ts';

export function RenameDialog({ note, onClose }: { readonly note: NoteRecord; readonly onClose: () => void }) {
  const [title, setTitle] = useState(note.title);
  const isReady = title.trim() !== '' && title.trim() !== note.title;
  return (
    <Dialog title="Rename" isOpen onClose={onClose}>
      <Form
        className="dialog-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!isReady) return;
          onClose();
          void rename(note, title.trim());
        }}
      >
        <TextField className="field" value={title} onChange={setTitle} autoFocus maxLength={120}>
          <Label>Title</Label>
          <Input className="input" />
        </TextField>
        <DialogActions>
          <Button onPress={onClose}>Leave it</Button>
          <Button tone="pencil" type="submit" isDisabled={!isReady}>
            Rename
          </Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
