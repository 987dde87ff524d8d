import { expect, test } from 'vitest';
import { type Asked, isAsked, recordsOf } from '../state/questions';
import { factsOf, openOf, withMended, withOpen } from './told-so-far';

const text = 'Can it pull 3,900 lb? Payload 1,100 lb.';
const [plain] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
if (!plain) throw new Error('One message makes one record.');
const asked = plain;
const part = {
  ...{ text, topic: 'tow-fit', because: [], ask: [], answeredBy: null },
  facts: { 'trailer.dryWeight': '3,900 lb', 'vehicle.placardPayload': '1,100 lb' },
  words: { 'trailer.dryWeight': '3,900 lb', 'vehicle.placardPayload': '1,100 lb' },
};
const mend = (of: Asked, fact: string, value: string): Asked => withMended(of, part, fact, value);

test('a fact that was set right counts in the place of what was read, and no other changes', () => {
  const now = mend(asked, 'trailer.dryWeight', '4,100 lb');
  expect(factsOf(now, part)).toEqual({
    'trailer.dryWeight': '4,100 lb',
    'vehicle.placardPayload': '1,100 lb',
  });
  expect(isAsked(JSON.parse(JSON.stringify(now)))).toBe(true);
});

test('as it was read sets nothing right, and what was left out is taken again', () => {
  const now = mend(asked, 'trailer.dryWeight', '4,100 lb');
  expect(mend(now, 'trailer.dryWeight', '3,900 lb').mended).toEqual({});
  const struck = { ...asked, struck: ['trailer.dryWeight: 3,900 lb'] };
  expect(factsOf(struck, part)).not.toHaveProperty('trailer.dryWeight');
  expect(factsOf(mend(struck, 'trailer.dryWeight', '4,000 lb'), part)).toHaveProperty(
    'trailer.dryWeight',
    '4,000 lb',
  );
});

test('a fact that is left out stays out, whatever it was set to before', () => {
  const now = mend(asked, 'trailer.dryWeight', '4,100 lb');
  const struck = { ...now, struck: ['trailer.dryWeight: 3,900 lb'] };
  expect(factsOf(struck, part)).toEqual({ 'vehicle.placardPayload': '1,100 lb' });
});

test('what comes back by a link holds over what was set right', () => {
  const now = mend(asked, 'trailer.dryWeight', '4,100 lb');
  const back = { ...now, back: { [text]: { 'trailer.dryWeight': '4,250 lb' } } };
  expect(factsOf(back, part)).toHaveProperty('trailer.dryWeight', '4,250 lb');
});

const open = {
  words: '4200 lb trailer',
  value: '4200 lb',
  among: ['trailer.dryWeight', 'trailer.gvwr'],
};
const unsaid = { ...part, facts: {}, words: {}, open: [open] };

test('a figure of which nobody said what it is, is no fact until a person says it', () => {
  expect(factsOf(asked, unsaid)).toEqual({});
  expect(openOf(asked, unsaid)).toEqual([open]);
  const now = withOpen(asked, unsaid, open, 'trailer.gvwr');
  expect(factsOf(now, unsaid)).toEqual({ 'trailer.gvwr': '4200 lb' });
  expect(openOf(now, unsaid)).toEqual([]);
  const other = withOpen(now, unsaid, open, 'trailer.dryWeight');
  expect(factsOf(other, unsaid)).toEqual({ 'trailer.dryWeight': '4200 lb' });
  expect(factsOf(withOpen(other, unsaid, open, 'trailer.dryWeight'), unsaid)).toEqual({});
});

test('what the question before told counts for the one that goes on about it, and its own before that', () => {
  const on = { ...part, facts: {}, words: {}, toldBefore: { 'trailer.gvwr': '4,900 lb' } };
  expect(factsOf(asked, on)).toEqual({ 'trailer.gvwr': '4,900 lb' });
  expect(factsOf(asked, { ...on, facts: { 'trailer.gvwr': '5,000 lb' } })).toEqual({
    'trailer.gvwr': '5,000 lb',
  });
});
