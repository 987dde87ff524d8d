import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import {
  compared,
  foundWords,
  leftOpen,
  type Question,
  questionOf,
  readPrediction,
} from './predict';

const folder = new URL('../../../cases/', import.meta.url);
/** No cases of one topic. */
const apart = ['note', 'refused', 'rig'];

const topics = readdirSync(folder, { withFileTypes: true })
  .filter((each) => each.isDirectory() && !apart.includes(each.name))
  .map(({ name }) => name);

const isOneSided = (question: Question): boolean =>
  question.kind === 'number' && !Number.isFinite(question.found.lo + question.found.hi);

test.each(topics)(
  '%s: of every filed case the right guess can be made and is met',
  async (topic) => {
    await Promise.all([openTopic(topic), openReader()]);
    const wrong: string[] = [];
    for (const file of readdirSync(new URL(`${topic}/`, folder)).filter((f) => f.endsWith('.md'))) {
      const { doc, answer } = judge(readFileSync(new URL(`${topic}/${file}`, folder), 'utf8'));
      if (!answer) throw new Error(`${topic}/${file} cannot be judged.`);
      const question = questionOf(doc, answer);
      const says = isOneSided(question) ? leftOpen : foundWords(question, 'us');
      const read = readPrediction(says, question, 'us');
      if ('wrong' in read || !compared(read.said, question, 'us').met) {
        wrong.push(`${file}: ${question.result} came out as “${says}”`);
      }
      const asked = doc.blocks.find((block) => block.kind === 'predict');
      if (asked?.kind === 'predict' && asked.result !== question.result) {
        wrong.push(`${file}: asks ${asked.result}, and the class would ask ${question.result}`);
      }
      if (question.kind !== 'word') continue;
      if (new Set(question.words).size !== question.words.length)
        wrong.push(`${file}: a choice twice`);
    }
    expect(wrong).toEqual([]);
  },
);
