import type { Block, CaseDocument } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { questionOf, splitAtPredict } from '../class/predict';
import { judge } from '../state/judged';
import { levelOf } from '../state/level';
import { caseText, expectedOf, tablesOf } from './case-text';
import { freshFigure } from './fresh-figure';
import { type Drawer, seeded } from './seeded';

/** A case with figures of its own, judged. */
export type Variant = {
  readonly text: string;
  readonly seed: number;
  readonly doc: CaseDocument;
  readonly answer: Answer;
};

/** So many are made before a case is given up: some kinds of question come out open again and again. */
const tries = 12;

/** All weights of a case grow or shrink together by up to a tenth, and each a little by itself. */
function timesOf(draw: Drawer): () => number {
  const all = 1 + draw(-100, 100) / 1000;
  return () => all * (1 + draw(-60, 60) / 1000);
}

/** The blocks with every figure that may move made anew, and how many did. */
function withFresh({ topic, blocks }: CaseDocument, draw: Drawer) {
  const next = timesOf(draw);
  let moved = 0;
  const fresh = (text: string, unit: string): string => {
    const made = freshFigure(text, unit, next());
    if (made !== undefined && made !== text) moved += 1;
    return made ?? text;
  };
  const made = blocks.map((block): Block => {
    if (block.kind === 'facts') {
      const rows = block.rows.map((row) => {
        const declared = topic?.facts[row.id];
        return declared?.kind === 'quantity'
          ? { ...row, value: fresh(row.value, declared.unit) }
          : row;
      });
      return { ...block, rows };
    }
    if (block.kind !== 'list') return block;
    const declared = topic?.facts[block.fact];
    if (declared?.kind !== 'rows') return block;
    const rows = block.rows.map((row) => {
      const cells = Object.entries(row.cells).map(([id, cell]) => {
        const column = declared.columns[id];
        const text = column?.unit ? fresh(cell.text, column.unit) : cell.text;
        return [id, { ...cell, text }] as const;
      });
      return { ...row, cells: Object.fromEntries(cells) };
    });
    return { ...block, rows };
  });
  return { blocks: made, moved };
}

/** The author's own words to predict by, unless they speak of figures that are no more. */
function promptOf(doc: CaseDocument, label: string): string {
  const { asked } = splitAtPredict(doc);
  const [first, last] = [asked?.children[0], asked?.children.at(-1)];
  const [from, to] = [first?.position?.start.offset, last?.position?.end.offset];
  const own = from === undefined || to === undefined ? '' : doc.text.slice(from, to);
  return own === '' || /\d/.test(own) ? `${label}: what will come out?` : own;
}

/**
 * A case with fresh figures, drawn from a seed: what is asked, which things are known and how stays;
 * the author's prose, which speaks of the old figures, goes. What comes out is found by judging.
 *
 * @returns undefined where no figure of the case may move, or what came out stays open
 */
export function variantOf(doc: CaseDocument, answer: Answer, seed: number): Variant | undefined {
  const { topic } = doc;
  if (!topic) return undefined;
  const outcomes = topic.outcomes;
  const question = questionOf(doc, answer);
  const mayBeOpen = levelOf(outcomes, answer.outcome) === 'unknown';
  for (let at = 0; at < tries; at += 1) {
    const draw = seeded(seed * tries + at);
    const { blocks, moved } = withFresh(doc, draw);
    if (moved === 0) return undefined;
    const { asked } = splitAtPredict(doc);
    const parts = {
      title: `${doc.front.title}, other figures`,
      topic: topic.id,
      level: doc.front.level,
      asOf: doc.front.asOf,
      question: topic.question,
      tables: tablesOf({ ...doc, blocks }),
      predict: {
        result: question.result,
        within: asked?.within ?? '',
        prompt: promptOf(doc, question.label),
      },
      why: answer.values[question.result] ? `${question.label}: \`= ${question.result}\`.` : '',
      last: `*The figures are made up, by the seed ${seed}.*`,
    };
    const judged = judge(caseText({ ...parts, expect: [] }));
    const came = judged.answer;
    if (!came || !judged.current || judged.doc.troubles.length > 0) continue;
    if (!mayBeOpen && levelOf(outcomes, came.outcome) === 'unknown') continue;
    const names = [...new Set(['verdict', question.result])];
    const expect = names.map((name) => [name, expectedOf(came, name)] as const);
    const text = caseText({ ...parts, expect });
    const whole = judge(text);
    if (whole.answer && whole.current) return { text, seed, doc: whole.doc, answer: whole.answer };
  }
  return undefined;
}
