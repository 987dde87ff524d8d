import { type Topic, topics } from '@tarebook/rules';
import { refuseNoText } from '../doors';
import { yamlEntries } from '../front-yaml';
import { treeOf } from '../parse';
import { readRigWith } from './read';
import type { RigDocument } from './shapes';

/** Reads a whole rig over all topics; see `readRigWith`. */
export const readRig = (
  text: string,
  among: Readonly<Record<string, Topic>> = topics,
): RigDocument => {
  refuseNoText(text);
  return readRigWith(treeOf, among, text, yamlEntries);
};
