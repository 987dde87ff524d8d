import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import type { QuestionsTold } from '../questions/answer-shapes';
import type { ReadPart } from '../questions/told-so-far';
import { recordsOf } from '../state/questions';
import { hearQuestions } from './questions';

test('a question whose facts its rules refuse says so, and all others are read', async () => {
  const texts = [
    'Can I tow 3,900 lb dry with a crossover rated 5,000 lb?',
    'What tire pressure should I run?',
  ];
  const [first, second] = recordsOf(
    texts.map((text) => ({ channel: '', asker: '', askedOn: '', text })),
    1,
  );
  if (!first || !second) throw new Error('Two messages make two records.');
  // As a record of before has it: of other rules, and without their name.
  const strange = { ...first, back: { [texts[0] ?? '']: { 'battery.capacity': '100 Ah' } } };
  const read: ReadMessage[] = [];
  const tell = (told: QuestionsTold): void => {
    if (told.told === 'read' && !told.near) read.push(...told.read);
  };
  await hearQuestions({ ask: 'read', messages: [strange, second], turn: 1, filed: {} }, tell);
  expect(read.map(({ id }) => id)).toEqual([first.id, second.id]);
  const parts: readonly ReadPart[] = read.flatMap((each) => each.parts);
  expect(parts[0]?.refused).toContain('battery.capacity');
  expect(parts[1]?.refused).toBe(undefined);
  expect(parts[1]?.topic).not.toBe(null);
});

test('of two readings the later one is told, in whichever order they are heard', async () => {
  const [only] = recordsOf(
    [{ channel: '', asker: '', askedOn: '', text: 'What tire pressure should I run?' }],
    1,
  );
  if (!only) throw new Error('A message makes a record.');
  const turns: number[] = [];
  const tell = (told: QuestionsTold): void => {
    if (told.told === 'read') turns.push(told.turn);
  };
  const asked = { ask: 'read', messages: [only], filed: {} } as const;
  const later = hearQuestions({ ...asked, turn: 3 }, tell);
  await Promise.all([later, hearQuestions({ ...asked, turn: 2 }, tell)]);
  expect(new Set(turns)).toEqual(new Set([3]));
});

test('a question put to other rules keeps no doubt about what these do not know', async () => {
  const text =
    'do i need a weight distributing hitch for a 4200 lb trailer, tongue 510, towing with an suv that the receiver sticker says 500/5000 without';
  const [only] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
  if (!only) throw new Error('A message makes a record.');
  const among: string[] = [];
  const tell = (told: QuestionsTold): void => {
    if (told.told !== 'read' || told.near) return;
    const opens = told.read.flatMap(({ parts }) => parts.flatMap(({ open = [] }) => open));
    among.push(...opens.flatMap((each) => each.among));
  };
  const chosen = { ...only, topics: { [text]: 'hitch-setup' } };
  await hearQuestions({ ask: 'read', messages: [chosen], turn: 4, filed: {} }, tell);
  expect(among).not.toContain('vehicle.placardPayload');
});
