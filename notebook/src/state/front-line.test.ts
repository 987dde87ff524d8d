import { readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { frontLine, withTitle } from './front-line';

const text = '---\ntitle: Two people\ntopic: tow-fit\n---\n\ntitle: not this one\n';

test('a line of the front matter is read, and none from below it', () => {
  expect(frontLine(text, 'title')).toBe('Two people');
  expect(frontLine(text, 'asked')).toBe('');
  expect(frontLine('title: bare', 'title')).toBe('');
  expect(frontLine(text.replace('Two people', '"Two: people"'), 'title')).toBe('Two: people');
});

test.each(['Yesterday’s call', 'Ada: the van', '- x', '"quoted"', '  two  spaces ', '#1'])(
  'a case named %j has that name, and all else stays',
  (title) => {
    const named = withTitle(text, title);
    expect(readCase(named).front.title).toBe(title.replace(/\s+/g, ' ').trim());
    expect(named.slice(named.indexOf('\ntopic'))).toBe(text.slice(text.indexOf('\ntopic')));
  },
);

test('a title of several lines goes whole; line ends of another system stay', () => {
  const folded = text.replace('title: Two people', 'title: >\n  Two\n  people');
  expect(withTitle(folded, 'One')).toBe(text.replace('Two people', 'One'));
  const windows = text.replaceAll('\n', '\r\n');
  expect(withTitle(windows, 'One')).toBe(windows.replace('Two people', 'One'));
});

test('a text without a front matter stays as it is', () => {
  expect(withTitle('no case', 'One')).toBe('no case');
});
