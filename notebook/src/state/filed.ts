import topics from 'virtual:filed';
import { noteRead } from './reading';

/** A worked case that came with the page. */
export type Filed = { readonly topic: string; readonly name: string; readonly text: string };

async function casesOf(topic: string) {
  const load = Object.hasOwn(topics, topic) ? topics[topic] : undefined;
  return load ? (await load()).default : {};
}

/** Every worked case that came with the page; notes and whole rigs are no cases of a topic. */
export async function allFiled(): Promise<readonly Filed[]> {
  const cases = Object.keys(topics).filter((topic) => topic !== 'note' && topic !== 'rig');
  const each = cases.map(async (topic) => {
    const own = Object.entries(await casesOf(topic));
    return Promise.all(
      own.map(async ([name, read]) => ({ topic, name, text: (await read()).text })),
    );
  });
  return (await Promise.all(each)).flat();
}

/** The worked cases of one topic that came with the page. */
export async function filedOf(topic: string): Promise<readonly Filed[]> {
  const own = Object.entries(await casesOf(topic)).map(async ([name, read]) => {
    const { text, document } = await read();
    if (document) noteRead(text, document);
    return { topic, name, text };
  });
  return Promise.all(own);
}

export async function filedCase(topic: string, name: string): Promise<string | undefined> {
  const cases = await casesOf(topic);
  const read = Object.hasOwn(cases, name) ? cases[name] : undefined;
  if (!read) return undefined;
  const { text, document } = await read();
  if (document) noteRead(text, document);
  return text;
}
