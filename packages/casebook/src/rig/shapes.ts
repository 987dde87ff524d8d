import type { FactsGiven, Topic } from '@tarebook/rules/engine';
import type { Block, Expectation, Front, Trouble } from '../shapes';

/** A whole rig: facts of any topic, and what differs at each of its moments. */
export type RigDocument = {
  readonly text: string;
  readonly front: Front;
  /** Leaving, at camp, home …, in the order of the front matter. */
  readonly at: readonly string[];
  readonly facts: FactsGiven;
  readonly moments: Readonly<Record<string, FactsGiven>>;
  readonly readFrom: Readonly<Record<string, string>>;
  readonly blocks: readonly Block[];
  readonly expectations: readonly RigExpectation[];
  /** All that is wrong, in the order of the text; a rig with any is not answered. */
  readonly troubles: readonly Trouble[];
};

/** `tow-fit/verdict`, or at one moment `tow-fit@home/verdict`. */
export type RigExpectation = Expectation & {
  readonly topic: Topic;
  readonly moment: string | null;
  /** What stands after the stroke. */
  readonly of: string;
};
