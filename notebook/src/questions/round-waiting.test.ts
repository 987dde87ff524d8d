import { expect, test } from 'vitest';
import type { Asked } from '../state/questions';
import { waitingIn } from './round-waiting';

const asked = (id: string, urgent: string, done = 0): Asked => ({
  ...{ kind: 'message', id, came: 1, place: 0, channel: '', asker: '', askedOn: '', text: id },
  ...{ topics: {}, struck: [], wordings: {}, urgent, done },
});
const read = (id: string) =>
  [
    id,
    {
      ...{ id, parts: [], urgent: null, urgentBecause: [] },
      ...{ firstReply: null, sameAs: null, personal: [] },
    },
  ] as const;

test('what cannot wait is named with the gravest first, unless it is done or in the round', () => {
  const messages = [
    ...[asked('doubt', 'doubt'), asked('gas', 'gas'), asked('plain', '')],
    ...[asked('done', 'gas', 1), asked('spoken', 'gas')],
  ];
  const readings = new Map(messages.map(({ id }) => read(id)));
  const found = waitingIn([{ message: 'spoken' }], messages, readings);
  expect(found.map((each) => each.asked.id)).toEqual(['gas', 'doubt']);
});
