import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import { recordsOf } from '../state/questions';
import { readUrgency, withLifted, withPutBack } from './urgency';

const [plain] = recordsOf([{ channel: '', asker: '', askedOn: '', text: 'x' }], 1);
if (!plain) throw new Error('One message makes one record.');
const asked = plain;
const read = (urgent: ReadMessage['urgent']): ReadMessage => ({
  ...{ id: asked.id, parts: [], urgent, urgentBecause: [], firstReply: null, sameAs: null },
  personal: [],
});

test('what is read as urgent is urgent, until a person lifts it; put back, it is again', () => {
  const [urgent] = readUrgency([asked], [read('heat')]);
  expect(urgent?.urgent).toBe('heat');
  const lifted = withLifted(urgent ?? asked, read('heat'));
  expect(lifted).toMatchObject({ urgent: '', lifted: 'heat' });
  // Read once more, it stays lifted.
  expect(readUrgency([lifted], [read('heat')])).toEqual([]);
  const back = withPutBack(lifted, read('heat'));
  expect(back.urgent).toBe('heat');
  expect('lifted' in back).toBe(false);
});

test('another danger than the one that was lifted is urgent all the same', () => {
  const lifted = withLifted({ ...asked, urgent: 'heat' }, read('heat'));
  expect(readUrgency([lifted], [read('gas')])[0]?.urgent).toBe('gas');
});

test('what was not read stays as it is', () => {
  expect(readUrgency([{ ...asked, urgent: 'gas' }], [])).toEqual([]);
});
