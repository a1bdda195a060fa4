import { keepInStep } from '../shelf/folder.ts';
import { page } from '../storage/page.ts';
import { announcePage, recoverLater, recoverTyping } from '../storage/recover.ts';
import { repository } from '../storage/repository.ts';
import { notify } from '../ui/notices.tsx';

/** What happens once when the page opens: nothing typed in a page that was killed is lost. */
export async function start(): Promise<void> {
  announcePage(page);
  tell(await recoverTyping(repository, localStorage));
  recoverLater(repository, localStorage, page, tell);
  keepInStep();
}

function tell(saved: number): void {
  if (saved === 0) return;
  const what = saved === 1 ? 'one note' : `${saved} notes`;
  notify({ text: `What you typed last in ${what} has been brought back.`, lasts: 8000 });
}
