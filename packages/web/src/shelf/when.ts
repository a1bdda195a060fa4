const dayAndTime = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});
const time = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** A moment as it is said on the shelf: the time on the same day, else the date. */
export function sayDay(moment: number, now: number): string {
  return isSameDay(moment, now) ? `today ${time.format(moment)}` : day.format(moment);
}

export function sayMoment(moment: number): string {
  return dayAndTime.format(moment);
}

function isSameDay(a: number, b: number): boolean {
  return new Date(a).toDateString() === new Date(b).toDateString();
}
