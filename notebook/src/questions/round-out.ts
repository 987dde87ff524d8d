import { masked } from '@tarebook/record';
import { secondsOf, wordsIn } from '@tarebook/rules/engine';
import { topicTitle } from '../cases/topics';
import type { Round, Spoken } from '../state/round';

/** What leads from one question to the next: the way it came, as it is written, and who asks. */
export function announced({ channel, name }: Spoken): string {
  const from = [channel, name].filter((each) => each !== '').join(', ');
  return from === '' ? 'The next question:' : `${from}:`;
}

export const secondsToSay = (text: string, pace: number): number => secondsOf(text, pace);

export const secondsFor = (item: Spoken, pace: number): number =>
  secondsToSay(`${announced(item)} ${item.asks} ${item.answer}`, pace);

/** “12:05” */
export const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(Math.round(seconds) % 60).padStart(2, '0')}`;

export type Line = { readonly item: Spoken; readonly from: number; readonly seconds: number };

/** When each question's turn comes, and how long the whole takes, by the speaker's pace. */
export function timed(round: Round): { readonly lines: readonly Line[]; readonly total: number } {
  let now = secondsOf(round.opening, round.pace);
  const lines = round.items.map((item): Line => {
    const seconds = secondsFor(item, round.pace);
    const line = { item, from: now, seconds };
    now += seconds;
    return line;
  });
  return { lines, total: now + secondsOf(round.closing, round.pace) };
}

/** The pace at which a round was spoken, by the times that were tapped; undefined where too few were. */
export function paceOf({ items }: Round): number | undefined {
  const pairs = items.flatMap((item, place) => {
    const next = items[place + 1];
    const seconds = next && item.at >= 0 ? next.at - item.at : 0;
    const words = wordsIn(`${announced(item)} ${item.asks} ${item.answer}`);
    return seconds > 0 ? [{ seconds, words }] : [];
  });
  const seconds = pairs.reduce((sum, each) => sum + each.seconds, 0);
  const words = pairs.reduce((sum, each) => sum + each.words, 0);
  const pace = Math.round((words / seconds) * 60);
  return pairs.length >= 2 && pace >= 60 && pace <= 300 ? pace : undefined;
}

/** The chapters of a round that was spoken, and what each who asked is told. */
export function chapters(round: Round): readonly { readonly at: string; readonly asks: string }[] {
  return round.items
    .filter(({ at }) => at >= 0)
    .map(({ at, asks }) => ({ at: clock(at), asks: masked(asks) }));
}

export const toldWhere = (at: string): string =>
  `Your question is answered at ${at}. The labels on your own rig count first.`;

/** What begins so would be a formula to a spreadsheet; an apostrophe makes it text. */
const isFormula = /^[\s]*[=+\-@]/;

/** A cell as RFC 4180 has it, and never a formula. */
export function cell(text: string): string {
  const safe = isFormula.test(text) || /^[\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');

export function roundAsCsv(round: Round): string {
  const rows = timed(round).lines.map(({ item, from, seconds }, place) => [
    ...[String(place + 1), clock(from), String(seconds), item.channel, item.name],
    ...[masked(item.asks), masked(item.answer), item.topic],
  ]);
  return csvOf([
    ['place', 'from', 'seconds', 'channel', 'name', 'question', 'answer', 'topic'],
    ...rows,
  ]);
}

export function roundAsMarkdown(round: Round): string {
  const { lines, total } = timed(round);
  const parts = lines.map(
    ({ item, from, seconds }, place) =>
      `## ${place + 1}. ${masked(item.asks).replace(/\s+/g, ' ')}\n\n${clock(from)}, ${seconds} s · ${announced(item)} · ${topicTitle(item.topic)}\n\n${masked(item.answer)}\n`,
  );
  return `# Round, ${clock(total)}\n\n${round.opening}\n\n${parts.join('\n')}\n${round.closing}\n`;
}
