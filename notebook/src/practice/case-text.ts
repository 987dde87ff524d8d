import { type Block, type CaseDocument, compareWithExpect } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { titleLine } from '../state/front-line';

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
const bar = (cell: string): string =>
  cell.replace(/\s*[\r\n]+\s*/g, ' ').replace(/(?<!\\)\|/g, '\\|');

/** The tables of a case, each as Markdown. */
export function tablesOf({ topic, blocks }: CaseDocument): readonly string[] {
  return blocks.flatMap((block: Block) => {
    if (block.kind === 'facts') {
      const rows = block.rows.map(({ id, words, value, readFrom }) =>
        row([
          `\`${id}\` ${bar(words || topic?.facts[id]?.label || '')}`,
          bar(value),
          bar(readFrom),
        ]),
      );
      return [
        [row(['Fact', 'Value', 'Read from']), row(['---', '---', '---']), ...rows].join('\n'),
      ];
    }
    if (block.kind !== 'list') return [];
    const declared = topic?.facts[block.fact];
    const labels = declared?.kind === 'rows' ? declared.columns : {};
    const head = [`\`${block.fact}\``, ...block.columns.map((id) => labels[id]?.label ?? id)];
    const rows = block.rows.map(({ label, cells }) =>
      row([bar(label), ...block.columns.map((id) => bar(cells[id]?.text ?? ''))]),
    );
    return [[row(head), row(head.map(() => '---')), ...rows].join('\n')];
  });
}

/** What a case document would say that came out, under a name that an Expect table knows. */
export function expectedOf(answer: Answer, name: string): string {
  const nowhere = { line: 0, column: 0, offset: 0 };
  const span = { start: nowhere, end: nowhere };
  const asked = { name, text: '', place: nowhere, valueSpan: span };
  const [difference] = compareWithExpect({ expectations: [asked] }, answer);
  const ends = answer.values[name];
  if (ends && !Number.isFinite(ends.lo + ends.hi)) return 'unknown';
  return difference?.found ?? '';
}

/** A case document out of its parts. */
export type Parts = {
  readonly title: string;
  readonly topic: string;
  readonly level?: string | undefined;
  readonly asOf?: string | undefined;
  /** Markdown. */
  readonly question: string;
  readonly tables: readonly string[];
  readonly predict?: { readonly result: string; readonly within: string; readonly prompt: string };
  /** Markdown. */
  readonly why: string;
  readonly expect: readonly (readonly [name: string, value: string])[];
  readonly last?: string;
};

export function caseText(parts: Parts): string {
  const { predict, expect } = parts;
  const within = predict?.within ? ` within=${JSON.stringify(predict.within)}` : '';
  const front = [
    '---',
    titleLine(parts.title),
    `topic: ${parts.topic}`,
    ...(parts.level ? [`level: ${parts.level}`] : []),
    ...(parts.asOf ? [`as-of: ${parts.asOf}`] : []),
    '---',
  ].join('\n');
  const rows = expect.map(([name, value]) => row([`\`${name}\``, bar(value)]));
  return `${[
    front,
    parts.question,
    ...parts.tables,
    ...(predict ? [`:::predict{result="${predict.result}"${within}}\n${predict.prompt}\n:::`] : []),
    ...(parts.why ? [parts.why] : []),
    ...(rows.length > 0
      ? [[row(['Expect', 'Value']), row(['---', '---']), ...rows].join('\n')]
      : []),
    ...(parts.last ? [parts.last] : []),
  ].join('\n\n')}\n`;
}
