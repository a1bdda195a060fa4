import { useState } from 'react';
import {
  Button as AriaButton,
  Checkbox,
  GridList,
  GridListItem,
  Menu,
  MenuItem,
  MenuTrigger,
  Popover,
  type Selection,
} from 'react-aria-components';
import type { NoteRecord } from '../storage/records.ts';
import { Button } from '../ui/button.tsx';
import { Icon, type IconName } from '../ui/icons.tsx';
import { Verdict } from '../ui/verdict.tsx';
import { counted, duplicate, exportChosen, openNote, throwAway } from './actions.ts';
import { firstWords } from './first-words.ts';
import { sayDay } from './when.ts';

interface NoteListProps {
  readonly notes: readonly NoteRecord[];
  readonly onRename: (note: NoteRecord) => void;
  readonly onHistory: (note: NoteRecord) => void;
}

/** More rows than this come on demand, so that a shelf of thousands opens at once. */
const PORTION = 100;

export function NoteList({ notes, onRename, onHistory }: NoteListProps) {
  const [most, setMost] = useState(PORTION);
  const [selection, setSelection] = useState<Selection>(new Set());
  const rows = notes.slice(0, most);
  const chosen = notes.filter(({ id }) => selection === 'all' || selection.has(id));
  const now = Date.now();
  return (
    <>
      {chosen.length > 0 && (
        <div className="chosen" role="group" aria-label="The chosen notes">
          <span>{counted(chosen.length)} chosen</span>
          <Button tone="quiet" onPress={() => void exportChosen(chosen)}>
            <Icon name="out" />
            Export
          </Button>
          <Button
            tone="quiet"
            onPress={() => {
              setSelection(new Set());
              void throwAway(chosen);
            }}
          >
            <Icon name="bin" />
            Throw away
          </Button>
          <Button tone="quiet" onPress={() => setSelection(new Set())}>
            Choose none
          </Button>
        </div>
      )}
      <GridList
        className="notes"
        aria-label="Notes"
        selectionMode="multiple"
        selectionBehavior="toggle"
        selectedKeys={selection}
        onSelectionChange={setSelection}
        onAction={(id) => openNote(String(id))}
      >
        {rows.map((note) => (
          <GridListItem key={note.id} id={note.id} textValue={note.title} className="note-row">
            <Checkbox slot="selection" className="check">
              {({ isSelected }) => <span className="box">{isSelected && <Icon name="tick" />}</span>}
            </Checkbox>
            <div className="note-words">
              <span className="note-title">{note.title}</span>
              <span className="note-first second">{firstWords(note.text)}</span>
            </div>
            <div className="note-facts">
              <Verdict verdict={verdictOf(note)} />
              <span className="second">{factsOf(note, now)}</span>
            </div>
            <RowMenu note={note} onRename={onRename} onHistory={onHistory} />
          </GridListItem>
        ))}
      </GridList>
      {notes.length > most && (
        <Button tone="quiet" onPress={() => setMost(most + PORTION)}>
          Show more ({notes.length - most} left)
        </Button>
      )}
    </>
  );
}

function verdictOf({ summary, revision }: NoteRecord) {
  return summary?.revision === revision ? summary.verdict : undefined;
}

function factsOf({ summary, changed }: NoteRecord, now: number): string {
  const { cards = null, minutes = null } = summary ?? {};
  return [
    cards === null ? '' : `${cards} ${cards === 1 ? 'card' : 'cards'}`,
    minutes === null ? '' : `${minutes} min`,
    sayDay(changed, now),
  ]
    .filter((fact) => fact !== '')
    .join(' · ');
}

interface RowAction {
  readonly label: string;
  readonly icon: IconName;
  readonly run: () => void;
}

function RowMenu({
  note,
  onRename,
  onHistory,
}: Omit<NoteListProps, 'notes'> & { readonly note: NoteRecord }) {
  const actions: readonly RowAction[] = [
    { label: 'Open', icon: 'right', run: () => openNote(note.id) },
    { label: 'Rename …', icon: 'pen', run: () => onRename(note) },
    { label: 'Duplicate', icon: 'copy', run: () => void duplicate(note) },
    { label: 'History …', icon: 'past', run: () => onHistory(note) },
    { label: 'Export', icon: 'out', run: () => void exportChosen([note]) },
    { label: 'Throw away', icon: 'bin', run: () => void throwAway([note]) },
  ];
  return (
    <MenuTrigger>
      <AriaButton className="button" data-tone="icon" aria-label={`What to do with ${note.title}`}>
        <Icon name="more" />
      </AriaButton>
      <Popover className="popover" placement="bottom end">
        <Menu className="menu" aria-label={note.title}>
          {actions.map(({ label, icon, run }) => (
            <MenuItem key={label} className="menu-item" onAction={run}>
              <Icon name={icon} />
              {label}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
