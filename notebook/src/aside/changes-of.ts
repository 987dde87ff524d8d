import { answerNow, matters, mattersSays, remedies, withHouse } from '@tarebook/rules/engine';
import type { ChangeAsked, ChangeFound } from '../change/asked';
import { allowedHouse } from '../state/house-numbers';
import { loadedTopics, openAllTopics } from '../state/topics';

/**
 * All that can be said about changes to one case. A change that makes anything worse in another
 * question that the same facts answer is told among what does not help, so all questions are loaded.
 */
export async function changesOf({ topic: id, asked, houses }: ChangeAsked): Promise<ChangeFound> {
  await openAllTopics();
  const topics = Object.values(loadedTopics).map((each) => {
    const house = houses.find(({ topic }) => topic === each.id);
    return house ? withHouse(each, allowedHouse(each, house).house) : each;
  });
  const topic = topics.find((each) => each.id === id);
  if (!topic) throw new Error(`There is no topic “${id}”.`);
  const { binding } = answerNow(topic, asked);
  const { remedies: found, noHelp } = remedies(topic, asked, topics);
  const of = binding === null ? topic.headline.slice(0, 1) : [`limit.${binding}`];
  return { remedies: found, noHelp, better: mattersSays(matters(topic, asked), of) };
}
