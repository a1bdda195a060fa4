import { repository } from '../storage/repository.ts';
import { Button } from '../ui/button.tsx';
import { counted, exportEverything } from './actions.ts';
import type { Reminder } from './reminders.ts';
import { sayMoment } from './when.ts';

/** One plain sentence and one thing to do. */
export function Banner({ reminder }: { readonly reminder: Reminder }) {
  return (
    <aside
      className="banner"
      data-tone={reminder.about === 'room' ? 'brick' : 'pencil'}
      aria-label="Reminder"
    >
      <p>{wordsOf(reminder)}</p>
      <Button tone="pencil" onPress={() => void exportEverything()}>
        Export all notes
      </Button>
      {reminder.about === 'copy' && (
        <Button tone="quiet" onPress={() => void repository.setSetting('reminded', Date.now())}>
          Not now
        </Button>
      )}
    </aside>
  );
}

function wordsOf(reminder: Reminder): string {
  if (reminder.about === 'room') {
    return 'The browser’s room for notes is nearly full. Export all notes, then empty the bin or end what you no longer need.';
  }
  const since =
    reminder.since === 0
      ? 'never copied out of this browser'
      : `last copied out ${sayMoment(reminder.since)}`;
  return `${counted(reminder.changed)} changed and ${since}. A browser can be cleared by mistake.`;
}
