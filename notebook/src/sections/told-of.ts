import type { Told } from '../state/reply';
import type { AnsweredView } from './case-view';

/** What a reply tells of a case. */
export const toldOf = ({ doc, topic, answer, system }: AnsweredView): Told => ({
  title: doc.front.title,
  topic,
  answer,
  system,
});
