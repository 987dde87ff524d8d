import { dirname, join, relative } from 'node:path';
import {
  abouts,
  judgeCaseNow,
  judgeNote,
  type Leaning,
  noteEverybody,
  noteForms,
  readCase,
  readNote,
} from '@tarebook/casebook';
import { formNames, wordsIn } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { casesFolder, markdownBelow, notesFolder, refusedFolder } from './files';
import { madeUp, outside } from './made-up';

const cases = new Map(
  markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => [name, text]),
);
const filed = markdownBelow(notesFolder).map(({ name, text }) => ({ name, note: readNote(text) }));

function leaningOf(name: string, path: string | undefined): Leaning | undefined {
  if (path === undefined) return undefined;
  const at = relative(casesFolder, join(casesFolder, dirname(name), path));
  const doc = readCase(cases.get(at) ?? '');
  if (!doc.topic) throw new Error(`${name} leans on ${path}, which is no case.`);
  return { path, title: doc.front.title, topic: doc.topic, answer: judgeCaseNow(doc) };
}

const on = (day: string) =>
  filed.map(({ name, note }) => ({
    name,
    judged: judgeNote(note, day, leaningOf(name, note.leansOn)),
  }));

test('there are at least twelve notes, of all eight kinds, and some lean on a case', () => {
  expect(filed.length).toBeGreaterThanOrEqual(12);
  expect([...new Set(filed.map(({ note }) => note.about))].toSorted()).toEqual(abouts.toSorted());
  expect(filed.filter(({ note }) => note.leansOn !== undefined).length).toBeGreaterThanOrEqual(3);
  expect(new Set(filed.map(({ note }) => note.say)).size).toBe(2);
});

describe.each(filed)('$name', ({ note }) => {
  test('has no troubles, somebody who keeps it, a link and a question as it was asked', () => {
    expect(note.troubles).toEqual([]);
    expect(note.owner).toBeTruthy();
    expect(note.links.length).toBeGreaterThan(0);
    expect(note.links.every(({ address }) => new URL(address).hostname === 'example.org')).toBe(
      true,
    );
    expect(note.blocks[0]?.type).toBe('blockquote');
  });

  test('says that it is invented', () => {
    expect(note.text.trimEnd().split('\n').at(-1)).toMatch(/invented/i);
  });
});

describe.each(['2026-11-28', '2036-01-01'])('on %s', (day) => {
  test.each(on(day))('$name leaves in every form, as long as it may be', ({ judged }) => {
    const forms = noteForms(judged);
    expect(Object.keys(forms)).toEqual([...formNames]);
    const { spoken, post, letter } = forms;
    const everybody = noteEverybody(judged);
    expect(wordsIn(spoken)).toBeGreaterThanOrEqual(30);
    expect(wordsIn(spoken)).toBeLessThanOrEqual(73);
    expect(wordsIn(post)).toBeGreaterThanOrEqual(40);
    expect(wordsIn(post)).toBeLessThanOrEqual(80);
    expect(wordsIn(everybody.text)).toBeGreaterThanOrEqual(60);
    expect(wordsIn(everybody.text)).toBeLessThanOrEqual(190);
    expect(wordsIn(letter)).toBeLessThanOrEqual(350);
    for (const text of [spoken, everybody.text]) {
      expect(text).not.toMatch(/[“”"`]|https?:|[a-z]+\.[a-z]+[A-Z]|undefined/);
    }
    expect(post).not.toContain('cannot be said');
  });

  test.each(on(day))('$name says nothing outside of the words', ({ judged }) => {
    for (const form of Object.values(noteForms(judged, { language: madeUp }))) {
      expect(outside(form).trim()).toBe('');
    }
  });
});

test('the answer stands first while a note holds; afterwards that it has to be checked does', () => {
  for (const { judged } of on('2026-11-28')) {
    if (judged.note.say === 'ask-first') continue;
    const { spoken, post } = noteForms(judged);
    const first = post.split(' ').slice(0, 3).join(' ');
    expect(judged.note.text).toContain(first);
    expect(spoken.startsWith(first.replace(/[“”]/g, ''))).toBe(true);
  }
  for (const { judged } of on('2036-01-01')) {
    for (const form of ['spoken', 'everybody', 'post'] as const) {
      expect(noteForms(judged)[form]).toMatch(/^What we have on this was good until /);
    }
    expect(noteForms(judged).ticket).toMatch(/^Expired\n.*check with/s);
  }
});

test('a note that leans on a case tells its verdict, and the caution that goes with it', () => {
  for (const { judged } of on('2026-11-28')) {
    if (!judged.leaning) continue;
    const { letter, sheet } = noteForms(judged);
    const [caution = 'none'] = judged.leaning.answer.cautions;
    for (const form of [letter, sheet.replaceAll('\u00a0', ' ')]) {
      expect(form).toContain(judged.leaning.answer.sentence);
      expect(form).toContain(caution);
    }
  }
});
