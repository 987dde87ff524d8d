import { expect, test } from 'vitest';
import { checkCharacter } from './check-character';

test('the worked example of the standard’s users: a Global Release Identifier ends in its check character', () => {
  // GRid Standard, appendix on ISO/IEC 7064 MOD 37,36: A1-2425G-ABC1234002-M (from memory).
  expect(checkCharacter('A12425GABC1234002')).toBe('M');
});

test('every single wrong character is found', () => {
  const symbols = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  for (const body of ['AB31016', 'AA0WC', 'QZ7N20P5', 'AB1X']) {
    const check = checkCharacter(body);
    for (let at = 0; at < body.length; at += 1) {
      for (const other of symbols) {
        if (other === body[at]) continue;
        const wrong = `${body.slice(0, at)}${other}${body.slice(at + 1)}`;
        expect(checkCharacter(wrong), wrong).not.toBe(check);
      }
    }
  }
  expect(() => checkCharacter('a')).toThrow('no capital letter');
});
