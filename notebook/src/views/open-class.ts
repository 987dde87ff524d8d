import { readHouses } from '../state/house';
import { openReader, openYaml } from '../state/reading';
import { openAllTopics } from '../state/topics';

/** First what cases of any topic are read and judged by: the page is drawn as soon as it is there. */
export async function openClass(): Promise<void> {
  await Promise.all([readHouses(), openAllTopics(), openReader(), openYaml()]);
  await import('./class-page');
}
