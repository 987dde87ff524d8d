import { expect, test } from 'vitest';
import { whenRead } from './when-read';

test('a part is made once, when it is read, and is there for whatever looks through all of them', () => {
  let made = 0;
  const whole = whenRead<{ a: number; b: { c: string } }>({
    a: () => {
      made += 1;
      return made;
    },
    b: () => ({ c: 'd' }),
  });
  expect(made).toBe(0);
  expect(whole.a).toBe(1);
  expect(whole.a).toBe(1);
  expect(whole.b).toBe(whole.b);
  expect(JSON.stringify(whole)).toBe('{"a":1,"b":{"c":"d"}}');
  expect({ ...whole }).toEqual({ a: 1, b: { c: 'd' } });
  expect(structuredClone(whole)).toEqual({ a: 1, b: { c: 'd' } });
});
