import { useEffect, useMemo, useRef, useState } from 'react';
import {
  DropZone,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Menu,
  MenuItem,
  MenuTrigger,
  Popover,
  SearchField,
  Select,
  SelectValue,
} from 'react-aria-components';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { Button } from '../ui/button.tsx';
import { Icon } from '../ui/icons.tsx';
import { useKeys } from '../ui/keys.ts';
import { counted, exportEverything, startNote } from './actions.ts';
import { Banner } from './banner.tsx';
import { BinDialog } from './bin-dialog.tsx';
import { ExamplesDialog } from './examples-dialog.tsx';
import { FacetBar } from './facet-bar.tsx';
import { NO_FILTER } from './facets.ts';
import { canLinkFolder, linkFolder } from './folder.ts';
import { FolderLine } from './folder-line.tsx';
import { HistoryDialog } from './history-dialog.tsx';
import { bringInDropped, chooseFiles } from './incoming.ts';
import { NewNoteButton } from './new-note-button.tsx';
import { NoteList } from './note-list.tsx';
import { useReminder } from './reminders.ts';
import { RenameDialog } from './rename-dialog.tsx';
import { TEMPLATES } from './texts.ts';
import { ORDERS, useShelf, type Order, type Shelf } from './use-shelf.ts';
import { useVerdicts } from './verdicts.ts';
import { welcome } from './welcome.ts';
import './shelf.css';

type Open =
  { readonly what: 'bin' | 'examples' } | { readonly what: 'rename' | 'history'; readonly note: NoteRecord };

/** The Shelf room: all notes, how to find them, and how they come and go. */
export function ShelfRoom() {
  const shelf = useShelf();
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  const search = useRef<HTMLInputElement>(null);
  const reminder = useReminder(shelf.notes);
  useVerdicts(shelf.notes);

  useEffect(() => {
    void welcome(repository);
  }, []);

  const keys = useMemo(
    () => [
      { keys: '/', what: 'Find a note', run: () => search.current?.focus() },
      { keys: 'N', what: 'New note', run: () => void startNote(TEMPLATES[0]!.text) },
    ],
    [],
  );
  useKeys(keys);

  return (
    <DropZone
      className="shelf"
      onDrop={({ items }) => void bringInDropped(items)}
      getDropOperation={() => 'copy'}
      aria-label="Shelf"
    >
      <h1 className="said-only">Shelf</h1>
      <div className="shelf-bar">
        <SearchField className="search" value={shelf.words} onChange={shelf.setWords}>
          <Label className="said-only">Find a note</Label>
          <Icon name="find" />
          <Input ref={search} placeholder="Find by word, move, structure" />
        </SearchField>
        <NewNoteButton onExamples={() => setOpen({ what: 'examples' })} />
        <InAndOut onBin={() => setOpen({ what: 'bin' })} />
      </div>
      <div className="shelf-bar">
        <FacetBar found={shelf.found} filter={shelf.filter} onChange={shelf.setFilter} />
        <OrderChoice order={shelf.order} onChange={shelf.setOrder} />
      </div>
      {reminder !== undefined && <Banner reminder={reminder} />}
      <section className="sheet paper" aria-label="Notes">
        <Notes shelf={shelf} onOpen={setOpen} />
      </section>
      <FolderLine />
      {open?.what === 'bin' && <BinDialog onClose={close} />}
      {open?.what === 'examples' && <ExamplesDialog onClose={close} />}
      {open?.what === 'rename' && <RenameDialog note={open.note} onClose={close} />}
      {open?.what === 'history' && <HistoryDialog note={open.note} onClose={close} />}
    </DropZone>
  );
}

function Notes({ shelf, onOpen }: { readonly shelf: Shelf; readonly onOpen: (open: Open) => void }) {
  const { notes, shown, words, filter } = shelf;
  if (notes === undefined) return <p className="shelf-says second">Opening the shelf …</p>;
  if (notes.length === 0) {
    return (
      <div className="shelf-says">
        <p>The shelf is empty. A note begins with what the cards should do.</p>
        <Button tone="pencil" onPress={() => void startNote(TEMPLATES[0]!.text)}>
          Begin a note
        </Button>
      </div>
    );
  }
  if (shown.length === 0) {
    return (
      <div className="shelf-says">
        <p>No note fits.</p>
        <Button
          onPress={() => {
            shelf.setWords('');
            shelf.setFilter(NO_FILTER);
          }}
        >
          Show all {notes.length}
        </Button>
      </div>
    );
  }
  const isAll = words.trim() === '' && filter === NO_FILTER;
  return (
    <>
      <p className="said-only" role="status">
        {isAll ? '' : `${counted(shown.length)} found.`}
      </p>
      <NoteList
        notes={shown}
        onRename={(note) => onOpen({ what: 'rename', note })}
        onHistory={(note) => onOpen({ what: 'history', note })}
      />
    </>
  );
}

function InAndOut({ onBin }: { readonly onBin: () => void }) {
  const inBin = useLive(async () => (await repository.listTrash()).length, []) ?? 0;
  return (
    <MenuTrigger>
      <Button>In and out</Button>
      <Popover className="popover" placement="bottom end">
        <Menu className="menu" aria-label="In and out">
          <MenuItem className="menu-item" onAction={() => chooseFiles({ folder: false })}>
            <Icon name="into" />
            Bring in files or a zip …
          </MenuItem>
          <MenuItem className="menu-item" onAction={() => chooseFiles({ folder: true })}>
            <Icon name="folder" />
            Bring in a folder …
          </MenuItem>
          {canLinkFolder() && (
            <MenuItem className="menu-item" onAction={() => void linkFolder()}>
              <Icon name="folder" />
              Keep in step with a folder …
            </MenuItem>
          )}
          <MenuItem className="menu-item" onAction={() => void exportEverything()}>
            <Icon name="out" />
            Export all notes
          </MenuItem>
          <MenuItem className="menu-item" onAction={onBin}>
            <Icon name="bin" />
            Bin{inBin > 0 ? ` (${inBin})` : ''}
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

const ORDER_WORDS: Readonly<Record<Order, string>> = {
  changed: 'last changed',
  title: 'by title',
  cards: 'by cards',
};

function OrderChoice({
  order,
  onChange,
}: {
  readonly order: Order;
  readonly onChange: (order: Order) => void;
}) {
  return (
    <Select
      className="order"
      aria-label="Order"
      value={order}
      onChange={(key) => onChange(ORDERS.find((each) => each === key) ?? 'changed')}
    >
      <Button tone="quiet">
        <SelectValue />
        <Icon name="down" />
      </Button>
      <Popover className="popover">
        <ListBox className="menu">
          {ORDERS.map((each) => (
            <ListBoxItem key={each} id={each} className="menu-item">
              {ORDER_WORDS[each]}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
