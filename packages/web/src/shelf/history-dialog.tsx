import { useState } from 'react';
import { ListBox, ListBoxItem, Text } from 'react-aria-components';
import type { NoteRecord, VersionRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { Button } from '../ui/button.tsx';
import { Comparison } from '../ui/comparison.tsx';
import { Dialog, DialogActions } from '../ui/dialog.tsx';
import { say } from '../ui/live.tsx';
import { attempt } from './actions.ts';
import { NameField } from './name-field.tsx';
import { sayMoment } from './when.ts';

const KIND_WORDS = {
  automatic: '',
  named: '',
  conflict: 'changed in two places',
  recovered: 'brought back',
  folder: 'from the folder',
} as const;

interface HistoryDialogProps {
  readonly note: NoteRecord;
  readonly onClose: () => void;
}

/** The earlier texts of a note, each beside the present one or beside another, and the way back. */
export function HistoryDialog({ note: opened, onClose }: HistoryDialogProps) {
  const { id } = opened;
  const note = useLive(() => repository.getNote(id), [id]) ?? opened;
  const versions = useLive(() => repository.versionsOf(id), [id]);
  const [keys, setKeys] = useState<readonly number[]>([]);
  if (versions === undefined) return null;
  // The two chosen last, the older one on the left; one alone stands beside the present text.
  const chosen = versions.filter(({ key }) => keys.includes(key)).reverse();
  const [older, newer] = chosen;
  return (
    <Dialog title={`History of “${note.title}”`} isOpen onClose={onClose} wide>
      {versions.length === 0 ? (
        <p>There are no earlier texts yet. They are kept by themselves while you write.</p>
      ) : (
        <ListBox
          className="versions"
          aria-label="Earlier texts"
          selectionMode="multiple"
          selectionBehavior="toggle"
          escapeKeyBehavior="none"
          selectedKeys={keys}
          onSelectionChange={(selection) => {
            const now = selection === 'all' ? [] : [...selection].map(Number);
            const kept = keys.filter((key) => now.includes(key));
            setKeys([...kept, ...now.filter((key) => !kept.includes(key))].slice(-2));
          }}
        >
          {versions.map((version) => (
            <ListBoxItem key={version.key} id={version.key} textValue={wordsOf(version)} className="version">
              <Text slot="label">{version.name === '' ? sayMoment(version.made) : version.name}</Text>
              <Text slot="description" className="second">
                {version.name === '' ? KIND_WORDS[version.kind] : sayMoment(version.made)}
              </Text>
            </ListBoxItem>
          ))}
        </ListBox>
      )}
      {older !== undefined && (
        <Comparison
          before={older.text}
          after={newer?.text ?? note.text}
          beforeName={wordsOf(older)}
          afterName={newer === undefined ? 'Now' : wordsOf(newer)}
        />
      )}
      {older !== undefined && newer === undefined && (
        <NameField
          key={older.key}
          label="Name of this text"
          value={older.name}
          onSave={(name) => attempt(() => repository.nameVersion(older.key, name))}
        />
      )}
      {older === undefined && (
        <NameField
          label="Keep the text as it is now, under a name"
          value=""
          onSave={(name) => attempt(() => repository.keepVersion(id, note.text, 'named', name))}
        />
      )}
      <DialogActions>
        {older !== undefined && newer === undefined && (
          <Button
            tone="pencil"
            onPress={() =>
              void attempt(async () => {
                await repository.restoreVersion(id, older.text);
                setKeys([]);
                say('Gone back. The text until now is kept in the history.');
              })
            }
          >
            Go back to this text
          </Button>
        )}
        <Button onPress={onClose}>Close</Button>
      </DialogActions>
    </Dialog>
  );
}

function wordsOf({ name, made }: VersionRecord): string {
  return name === '' ? sayMoment(made) : name;
}
