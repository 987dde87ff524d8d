import { expect, test } from 'vitest';
import { sheetText } from './sheet-text';

const told = 'Modell;Länge\nMöwe 430;6,15\n';

test.each([
  ['UTF-8', Buffer.from(told, 'utf8')],
  ['UTF-8 with a mark', Buffer.from(`\ufeff${told}`, 'utf8')],
  ['UTF-16, as “Unicode text” is saved', Buffer.from(`\ufeff${told}`, 'utf16le')],
  ['UTF-16 the other way round', Buffer.from(`\ufeff${told}`, 'utf16le').swap16()],
  ['Windows letters', Buffer.from(told, 'latin1')],
])('%s is read', (_, bytes) => {
  expect(sheetText(bytes).replace(/^\ufeff/, '')).toBe(told);
});
