import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { askedAsCase } from './as-case';

test.each([
  'Factory tow package | 5,000 lb, can I tow a trailer of 4,000 lb?',
  'Facts | GVWR 5,000 lb | tongue 500 lb: does it fit?',
  'Expecting a second child | 2 adults, is the payload enough?',
  '| Fact | Value |\n| --- | --- |\n| GVWR | 5,000 lb |',
  '`trailer.gvwr` | 5,000 lb',
  'trailer.gvwr | 5,000 lb',
  '<table><tr><td>5,000 lb</td></tr></table> fits?',
  '    Fact | Value',
  ':::predict\nFits?\n:::',
])('a customer’s words never keep their case from being judged: %s', (words) => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('There is no tow fit.');
  const read = readCase(askedAsCase(topic, words, { 'trailer.gvwr': '5,000 lb' }, []));
  expect(read.troubles).toEqual([]);
  expect(judgeCaseNow(read).outcome).toBe('cannot-say');
});
