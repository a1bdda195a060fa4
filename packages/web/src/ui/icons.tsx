// Drawn by us on a grid of 24, as strokes of one weight.
const STROKES = {
  add: 'M12 5v14M5 12h14',
  close: 'M6 6l12 12M18 6L6 18',
  more: 'M5 12h.01M12 12h.01M19 12h.01',
  tick: 'M5 13l4.5 4.5L19 7',
  find: 'M10.5 17a6.5 6.5 0 1 0 0-13 6.5 6.5 0 0 0 0 13zM15.5 15.5L20 20',
  into: 'M12 4v11M7.5 11L12 15.5 16.5 11M4 20h16',
  out: 'M12 16V5M7.5 9L12 4.5 16.5 9M4 20h16',
  pen: 'M4 20l1-4.5L16.5 4l3.5 3.5L8.5 19z',
  copy: 'M8 8h12v12H8zM16 8V4H4v12h4',
  past: 'M4 12a8 8 0 1 0 2.5-5.8M6 3v3.5h3.5M12 8v4.5l3 2',
  bin: 'M5 7h14M9.5 7V4.5h5V7M7 7l1 13h8l1-13',
  folder: 'M3.5 18.5v-13h6l2 2.5h9v10.5z',
  left: 'M15 5l-7 7 7 7',
  right: 'M9 5l7 7-7 7',
  down: 'M5 9l7 7 7-7',
  up: 'M5 15l7-7 7 7',
  proved: 'M4 12.5l5 5L20 6.5',
  refuted: 'M6 6l12 12M18 6L6 18',
  undecided: 'M4 12c2.5-4 5.5-4 8 0s5.5 4 8 0',
  empty: 'M12 19a7 7 0 1 0 0-14 7 7 0 0 0 0 14z',
  unread: 'M4 16l3-3 3 3 3-3 3 3 3-3M5 8h14',
} as const;

export type IconName = keyof typeof STROKES;

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth={name === 'more' ? 3 : 1.8}
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      <path d={STROKES[name]} />
    </svg>
  );
}
