/** A note written out in the guide, with the verdict it is there to show. */
export interface GuideNote {
  readonly text: string;
  readonly verdict: string;
}

/** Every note of a page of the guide: a fence marked `note` and the verdict. */
export function guideNotes(page: string): GuideNote[] {
  return [...page.matchAll(/^```note ([a-z ]+)\n([\s\S]*?)^```$/gm)].map(([, verdict = '', text = '']) => ({
    text,
    verdict,
  }));
}
