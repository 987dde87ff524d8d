/** More than this in one go nobody answers. */
const mostInBunch = 5_000;

export const count = (n: number): string => n.toLocaleString('en-US');
export const messages = (n: number): string => `${count(n)} ${n === 1 ? 'message' : 'messages'}`;

/** Why so many are not taken in, in one sentence; undefined where they are. */
export const tooMany = (n: number): string | undefined =>
  n > mostInBunch
    ? `These are ${count(n)} messages, and ${count(mostInBunch)} are taken in at a time; take in a part of them. Nothing was taken in.`
    : undefined;

/** More reasons than these are counted, and not told one by one. */
const mostReasons = 3;

/** What was taken in, what was here already, and which rows were not and why. */
export function takenSaid(fresh: number, before: number, refused: readonly string[] = []): string {
  const here = before > 0 ? `, ${count(before)} were here already` : '';
  const taken = `${messages(fresh)} ${fresh === 1 ? 'was' : 'were'} taken in${here}.`;
  if (refused.length === 0) return taken;
  const told = refused.slice(0, mostReasons).join(' ');
  const more =
    refused.length > mostReasons ? ` And ${count(refused.length - mostReasons)} more.` : '';
  return `${taken} Not taken in: ${told}${more}`;
}
