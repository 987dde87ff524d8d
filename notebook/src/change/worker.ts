import {
  answerNow,
  bringingCatalogues,
  bringingSun,
  matters,
  mattersSays,
  remedies,
} from '@tarebook/rules/engine';
import type { ChangeAsked, ChangeFound } from './asked';

/** All that can be said about changes to one case. The topic came as data, without the code it brings. */
function changesOf({ topic: data, asked }: ChangeAsked): ChangeFound {
  const topic = bringingSun(bringingCatalogues(data));
  const { binding } = answerNow(topic, asked);
  const { remedies: found, noHelp } = remedies(topic, asked);
  const of = binding === null ? topic.headline.slice(0, 1) : [`limit.${binding}`];
  return { remedies: found, noHelp, better: mattersSays(matters(topic, asked), of) };
}

addEventListener('message', ({ data }: MessageEvent<ChangeAsked>) => postMessage(changesOf(data)));
