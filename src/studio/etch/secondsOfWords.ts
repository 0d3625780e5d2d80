/** Seconds that words such as "90 s", "2 min" or "2:30" stand for; null where they say no time. */
export function secondsOfWords(words: string): number | null {
  const text = words.trim().toLowerCase();
  const clock = /^(\d+):([0-5]\d)$/.exec(text);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2]);
  const told = /^(\d+(?:\.\d+)?)\s*(s|sec|seconds?|min|minutes?)?$/.exec(text);
  if (!told || told[2] === undefined) return null;
  const seconds = Math.round(Number(told[1]) * (told[2].startsWith('m') ? 60 : 1));
  return seconds > 0 ? seconds : null;
}
