import type { Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { type Packed, packed, unpacked } from './kernel/packed';
import { type Program, programOf } from './kernel/program';
import { towSides } from './kernel/sides';

export type { Packed, Program };

/** The program of tow fit as the build writes it into a module. */
export const packedKernel = (): Packed => packed(towFit, towSides, programOf(towFit, towSides));

/**
 * The program that a build has written, for tow fit as it is or with a dealer's own parameters;
 * undefined where it was made of other rules, and must be made anew.
 */
export const kernelFrom = (topic: Topic, kept: Packed): Program | undefined =>
  unpacked(topic, towSides, kept);
