import topics from 'virtual:filed-topics';

/** Every topic in the order of the rules; whoever wants no cases pays for none. */
export const topicsListed = topics;

const titles = new Map(topics.map(({ id, title }) => [id, title]));
export const topicTitle = (id: string): string => titles.get(id) ?? id;
