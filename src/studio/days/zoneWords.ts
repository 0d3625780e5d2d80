import { wallClock, weekdayOf } from '../../science/calendar/zonedTime.ts';

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** An ISO day as `Fri 27 Nov`. */
export function dayWords(date: string): string {
  const [, month, day] = date.split('-').map(Number);
  return `${weekdays[weekdayOf(date)]} ${day} ${months[month! - 1]}`;
}

/** A moment, ms since 1970, as `Fri 27 Nov 17:00` by the clock of a zone. */
export function momentWords(zone: string, ms: number): string {
  return `${dayWords(wallClock(zone, ms).date)} ${clockWords(zone, ms)}`;
}

/** A moment, ms since 1970 UTC, as `17:00` by the clock of a zone such as `Europe/London`. */
export function clockWords(zone: string, ms: number): string {
  const { minutes } = wallClock(zone, ms);
  const two = (figure: number) => String(figure).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** Minutes as `45 min`, `3 h 20 min` or `2 d 4 h`. */
export function lengthWords(minutes: number): string {
  const whole = Math.round(Math.abs(minutes));
  const [days, hours, rest] = [Math.floor(whole / 1440), Math.floor((whole % 1440) / 60), whole % 60];
  if (days > 0) return hours > 0 ? `${days} d ${hours} h` : `${days} d`;
  if (hours > 0) return rest > 0 ? `${hours} h ${rest} min` : `${hours} h`;
  return `${rest} min`;
}

/** A range of minutes as `20 to 45 min`; both as hours where they are long. */
export function rangeWords(low: number | null, high: number | null): string {
  if (low === null || high === null) return 'not known';
  if (low === high) return lengthWords(low);
  return high < 60 ? `${low} to ${high} min` : `${lengthWords(low)} to ${lengthWords(high)}`;
}
