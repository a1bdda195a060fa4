interface RoomKeys {
  readonly room: string;
  readonly keys: readonly (readonly [string, string])[];
}

/** Keys by room, for the help; under `?` every room lists those that work just now. */
export const KEYS: readonly RoomKeys[] = [
  {
    room: 'Everywhere',
    keys: [
      ['Alt+1', 'Shelf'],
      ['Alt+2', 'Note'],
      ['Alt+3', 'Table'],
      ['Tab', 'From thing to thing; arrows go about inside it'],
      ['Escape', 'Close what lies on top'],
    ],
  },
  {
    room: 'Note',
    keys: [
      ['Ctrl+Space', 'Offer sentences where one begins'],
      ['Tab', 'From blank to blank of a sentence just taken'],
      ['Alt+ArrowUp', 'Move the step at the caret up'],
      ['Alt+ArrowDown', 'Move the step at the caret down'],
      ['Alt+Enter', 'Mend the trouble at the caret'],
      ['Ctrl+Enter', 'Put in the first mix that is also safe here'],
      ['Ctrl+Shift+F', 'Write the sentences as they are printed'],
      ['Ctrl+Shift+M', 'List every trouble of the note'],
      ['Ctrl+F', 'Find in the note'],
      ['Ctrl+Z', 'Undo'],
      ['Ctrl+Y', 'Do it again after all'],
      ['Escape, then Tab', 'Leave the page by the keyboard'],
    ],
  },
];
