import { Icon, type IconName } from './icons.tsx';

/** How each end of a check is drawn and worded; told apart by sign and word, never by colour alone. */
const VERDICTS = {
  proved: { icon: 'proved', words: 'Always works', tone: 'pencil' },
  refuted: { icon: 'refuted', words: 'Can fail', tone: 'brick' },
  undecided: { icon: 'undecided', words: 'Undecided', tone: 'second' },
  empty: { icon: 'empty', words: 'Empty', tone: 'second' },
  'not understood': { icon: 'unread', words: 'Not understood', tone: 'brick' },
} as const satisfies Record<string, { icon: IconName; words: string; tone: string }>;

export type VerdictWords = keyof typeof VERDICTS;

export function sayVerdict(verdict: VerdictWords): string {
  return VERDICTS[verdict].words;
}

/** The verdict as a sign and its words; `undefined` while the engine is still at it. */
export function Verdict({ verdict }: { readonly verdict: VerdictWords | undefined }) {
  if (verdict === undefined) return <span className="verdict second">Checking …</span>;
  const { icon, words, tone } = VERDICTS[verdict];
  return (
    <span className={`verdict ${tone}`}>
      <Icon name={icon} />
      {words}
    </span>
  );
}
