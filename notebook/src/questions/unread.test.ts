import { expect, test } from 'vitest';
import type { Answered } from './answer-shapes';
import { unreadIn, unreadSaid, withUnread } from './unread';

const part = (text: string, words: Readonly<Record<string, string>> = {}) => ({
  ...{ text, topic: 'add-ons', because: [], ask: [], answeredBy: null, words },
  facts: Object.fromEntries(Object.keys(words).map((fact) => [fact, '1'])),
});

test('figures that nothing was read from are told, in their order and once', () => {
  const read = part('Two e-bikes at 62 lb each and a 48 lb rack on the rear bumper, 62 lb each?', {
    'addon.weight': '48 lb rack',
  });
  expect(unreadIn(read, [])).toEqual(['62 lb']);
  expect(unreadIn(part('rated 5,000 and 3900 dry, 20 gal of water'), [])).toEqual([
    '5,000',
    '3900',
    '20 gal',
  ]);
});

test('years, prices, telephones and what was read are none', () => {
  const text = 'A 2019 wagon for $9,500, call 555-0142: can it pull 3,900 lb?';
  expect(unreadIn(part(text, { 'trailer.dryWeight': '3,900 lb' }), ['555-0142'])).toEqual([]);
  const packed = part('300 lb of firewood in the bed');
  const loads = [
    {
      list: 'load.cargo',
      label: 'Firewood',
      weight: '300 lb',
      words: '300 lb of firewood in the bed',
    },
  ];
  expect(unreadIn({ ...packed, loads }, [])).toEqual([]);
});

test('what is not used is told, and all of it', () => {
  expect(unreadSaid(['62 lb'])).toBe('This answer does not use the 62 lb of the question.');
  expect(unreadSaid(['62 lb', '48 lb'])).toBe(
    'This answer does not use the 62 lb and the 48 lb of the question.',
  );
  expect(unreadSaid([])).toBe('');
});

const answered: Answered = {
  ...{ form: 'everybody', fits: 'everybody', text: '270 lb are left.', cautions: [] },
  ...{ saved: {}, isWarning: false, doc: '# A case', asks: [] },
};
const asks = part('Two bikes of 62 lb, how much is left?');
const beside = 'This answer does not use the 62 lb of the question.';

test('it stands beside what leaves, last in what asks back, and nowhere in a note', () => {
  const post = { ...answered, form: 'post' as const, fits: 'post' as const };
  expect(withUnread(post, asks, [])).toEqual({ ...post, beside });
  const back = { ...answered, form: 'askBack' as const, text: '1. What is the rating?' };
  expect(withUnread(back, asks, []).text).toBe('1. What is the rating?\nAnd what is the 62 lb of?');
  const { doc: _, ...note } = answered;
  expect(withUnread(note, asks, [])).toBe(note);
});

test('no figure of an example is spoken as if it were the one that was told', () => {
  const found = withUnread(answered, asks, []);
  expect(found.text).toBe('The figures in this are an example, not yours. 270 lb are left.');
  expect(found.beside).toBe(beside);
  // Whoever is not decided about may be answered with an example, in whatever form.
  const undecided = { ...answered, form: 'post' as const, fits: 'askBack' as const };
  expect(withUnread(undecided, asks, []).text).toMatch(/^The figures in this are an example/);
  const bare = { ...answered, text: 'Weigh it first.' };
  expect(withUnread(bare, asks, []).text).toBe('Weigh it first.');
});

test('whoever told people, a tongue or what was not read is answered with no supposed figure', () => {
  const short = {
    ...{ ...answered, form: 'short' as const, fits: 'askBack' as const },
    ...{ asks: ['What does the tongue weigh, loaded?'] },
    text: 'Say 370 lb of people and a tongue of 610 lb: of your label’s 1,480 lb then 500 lb are left. Weigh the tongue.',
  };
  const payload = { 'vehicle.placardPayload': 'sticker 1480' };
  expect(withUnread(short, part('sticker 1480, how much is left?', payload), [])).toEqual(short);
  for (const told of [
    part('sticker 1480, 610 lb of us all', payload),
    part('sticker 1480, tongue 720', {
      ...payload,
      'trailer.measuredTongueWeight': 'tongue 720',
    }),
    {
      ...part('sticker 1480, two of us', payload),
      people: [{ who: 'adult' as const, count: 2 }],
    },
  ]) {
    expect(withUnread(short, told, []).text).toBe('Weigh the tongue.');
    const alone = { ...short, text: short.text.replace(' Weigh the tongue.', '') };
    expect(withUnread(alone, told, []).text).toBe('What does the tongue weigh, loaded?');
  }
});

test('an answer that says a figure that was told is no example', () => {
  const told = {
    ...part('sticker says 65, 50 lb left?', { 'tire.labelPressure': 'says 65' }),
    facts: { 'tire.labelPressure': '65 psi' },
  };
  const own = { ...answered, text: 'Run 65 psi, cold.' };
  expect(withUnread(own, told, []).text).toBe('Run 65 psi, cold.');
  const aloud = { ...answered, text: 'Run 65 pounds a square inch, cold.' };
  expect(withUnread(aloud, told, []).text).toBe('Run 65 pounds a square inch, cold.');
  // What is reckoned from what was told is no example, and not all of it was told.
  const other = { ...answered, text: 'A label of 1,650 psi and 165 psi.' };
  expect(withUnread(other, told, []).text).toMatch(/^Not every figure in this is yours\. A label/);
});
