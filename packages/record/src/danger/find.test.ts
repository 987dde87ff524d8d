import { describe, expect, test } from 'vitest';
import { urgentIn } from '../questions/urgent';
import { dangersIn } from './find';

const isUrgent = (text: string): boolean => dangersIn(text).length > 0;

describe('danger is recognized', () => {
  test.each([
    ['spelled wrong', 'i smel propain by the stov'],
    ['with two letters changed about', 'the brakse dont hold at all'],
    ['beside a word that denies it', 'no smell of gas today but it hissed all morning'],
    ['beside a price', 'how much is a new plug end, the old one went brown and soft'],
    ['in understatement', 'probably nothing, but the hub is too hot to touch'],
    ['in capitals', 'TINGLES WHEN I TOUCH THE DOOR'],
    ['mended once and back again', 'the brakes were fixed last year and still drag'],
  ])('%s', (_, text) => {
    expect(isUrgent(text)).toBe(true);
  });
});

describe('what only sounds like it is none', () => {
  test.each([
    ['a harmless name', 'do you have the fire pit in stock'],
    ['a price alone', 'what does a smoke alarm cost'],
    ['long past and mended', 'the hub was hot last year and we got it fixed'],
    ['a word that lies near one', 'since my friend looks at scales'],
    ['tired, and plugged in', 'we are tired and want to know what plugged in costs a night'],
  ])('%s', (_, text) => {
    expect(dangersIn(text)).toEqual([]);
  });
});

test('each sign tells the words it was taken for, and the gravest comes first', () => {
  const text = 'one hub is hot, and it reeks of propane inside';
  expect(dangersIn(text).map(({ because }) => because)).toContainEqual(['reeks', 'propane']);
  expect(urgentIn(text)).toBe('gas');
});
