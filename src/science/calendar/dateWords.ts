const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** An ISO day, or the day of an ISO moment by its own clock, as every screen and sheet writes it: `26 Nov 2026`. */
export function isoDayWords(iso: string): string {
  const told = /^(\d{4})-(\d\d)-(\d\d)/.exec(iso);
  const month = told && months[Number(told[2]) - 1];
  return month ? `${Number(told[3])} ${month} ${told[1]}` : iso;
}

/** An ISO moment by its own clock, to the minute: `26 Nov 2026, 17:40`. */
export function isoMomentWords(iso: string): string {
  const time = /T(\d\d:\d\d)/.exec(iso)?.[1];
  return time === undefined ? isoDayWords(iso) : `${isoDayWords(iso)}, ${time}`;
}
