import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { loadedTopics, openTopic, topicIds } from './topics';

test('every topic can be loaded by itself, and is the very one of the library', async () => {
  expect(topicIds).toEqual(Object.keys(topics).toSorted());
  for (const id of topicIds) expect((await openTopic(id))?.version).toBe(topics[id]?.version);
  expect(Object.keys(loadedTopics).toSorted()).toEqual(topicIds);
});

test('a topic that is not there is none, whatever it is called', async () => {
  for (const id of ['nowhere', '__proto__', 'constructor', '']) {
    expect(await openTopic(id)).toBeUndefined();
  }
});
