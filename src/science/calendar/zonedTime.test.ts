import { Temporal } from '@js-temporal/polyfill';
import { describe, expect, it } from 'vitest';
import { daysAfter, isTimeZone, momentAt, wallClock, weekdayOf, zoneOffsetMs } from './zonedTime.ts';

const zones = [
  'Europe/London',
  'Australia/Sydney',
  'Australia/Lord_Howe',
  'America/Santiago',
  'Africa/Casablanca',
  'Asia/Kathmandu',
  'America/St_Johns',
  'Pacific/Apia',
  'UTC',
];

const at = (iso: string) => Date.parse(iso);

describe('a zone', () => {
  it('is known by its name alone', () => {
    expect(isTimeZone('Europe/London')).toBe(true);
    for (const text of ['+01:00', '', 'Saltreach/Creek', '-03']) expect(isTimeZone(text), text).toBe(false);
  });

  it('leaps an hour in spring and goes through one twice in autumn, by hand for London 2027', () => {
    // clocks go on at 01:00 UTC on 28 March, back at 01:00 UTC on 31 October
    expect(momentAt('Europe/London', '2027-03-28', 59, 'first')).toBe(at('2027-03-28T00:59:00Z'));
    for (const passage of ['first', 'last'] as const) {
      expect(momentAt('Europe/London', '2027-03-28', 60, passage)).toBe(at('2027-03-28T01:00:00Z'));
      expect(momentAt('Europe/London', '2027-03-28', 90, passage)).toBe(at('2027-03-28T01:00:00Z'));
      expect(momentAt('Europe/London', '2027-03-28', 120, passage)).toBe(at('2027-03-28T01:00:00Z'));
    }
    expect(momentAt('Europe/London', '2027-10-31', 90, 'first')).toBe(at('2027-10-31T00:30:00Z'));
    expect(momentAt('Europe/London', '2027-10-31', 90, 'last')).toBe(at('2027-10-31T01:30:00Z'));
    expect(momentAt('Europe/London', '2027-10-31', 1440, 'last')).toBe(at('2027-11-01T00:00:00Z'));
    expect(wallClock('Europe/London', at('2027-10-31T01:30:00Z'))).toEqual({
      date: '2027-10-31',
      minutes: 90,
    });
  });

  it('changes the other way round in the south, by hand for Sydney 2027', () => {
    // clocks go back at 16:00 UTC on 3 April (03:00 to 02:00), on at 16:00 UTC on 2 October (02:00 to 03:00)
    expect(momentAt('Australia/Sydney', '2027-04-04', 150, 'first')).toBe(at('2027-04-03T15:30:00Z'));
    expect(momentAt('Australia/Sydney', '2027-04-04', 150, 'last')).toBe(at('2027-04-03T16:30:00Z'));
    expect(momentAt('Australia/Sydney', '2027-10-03', 150, 'first')).toBe(at('2027-10-02T16:00:00Z'));
    expect(momentAt('Australia/Sydney', '2027-10-03', 180, 'first')).toBe(at('2027-10-02T16:00:00Z'));
  });

  it.each(zones)('agrees with an independent calendar on every day of two years: %s', (zone) => {
    for (let date = '2026-01-01'; date < '2028-01-01'; date = daysAfter(date, 1)) {
      const plain = Temporal.PlainDate.from(date);
      expect(weekdayOf(date)).toBe(plain.dayOfWeek - 1);
      const changes = plain.toZonedDateTime(zone).hoursInDay !== 24;
      for (let minutes = 0; minutes < 1440; minutes += changes ? 10 : 720) {
        const time = plain.toPlainDateTime({ hour: Math.floor(minutes / 60), minute: minutes % 60 });
        const early = time.toZonedDateTime(zone, { disambiguation: 'earlier' });
        const late = time.toZonedDateTime(zone, { disambiguation: 'later' });
        const leapt = !early.toPlainDateTime().equals(time);
        const [first, last] = leapt
          ? Array(2).fill(early.getTimeZoneTransition('next')!.epochMilliseconds)
          : [early.epochMilliseconds, late.epochMilliseconds];
        const where = `${date} ${minutes}`;
        expect(momentAt(zone, date, minutes, 'first'), where).toBe(first);
        expect(momentAt(zone, date, minutes, 'last'), where).toBe(last);
        expect(zoneOffsetMs(zone, late.epochMilliseconds), where).toBe(late.offsetNanoseconds / 1e6);
      }
    }
  });
});
