import type { SpreadOptions } from '@tarebook/rules/engine';
import { chancing, programAtHand, type Sweeper, type Swept, sweeping } from '@tarebook/sweep/many';
import { assembler } from './assemble';
import { cellOf, linesOf } from './sweep-lines';
import { type Counts, writePart } from './sweep-parts';
import { type SweepSetting, topicIn } from './sweep-setting';

/** All that the parts of a sweep have in common, as plain data for a thread or another machine. */
export type SweepPlan = SweepSetting & {
  readonly trailers: readonly Swept[];
  /** Where parts are written; undefined where pairs are only counted. */
  readonly folder: string | undefined;
  /** How often what is a range is drawn, for chances beside each pair; absent: none are told. */
  readonly spread?: SpreadOptions | undefined;
};

/** Judges some vehicles with all trailers, and writes the part where it is wanted. */
export type PartDone = (part: number, vehicles: readonly Swept[]) => Promise<Counts>;

function counted({ outcomes }: Sweeper, levels: Uint8Array): Counts {
  const sums = new Uint32Array(256);
  for (const level of levels) sums[level] = (sums[level] ?? 0) + 1;
  return Object.fromEntries(outcomes.map((outcome, level) => [outcome, sums[level] ?? 0]));
}

export async function jobOf(plan: SweepPlan): Promise<PartDone> {
  const { facts, asOf, trailers, folder, spread } = plan;
  const topic = topicIn(plan);
  const program = await programAtHand(topic);
  const asked = {
    ...{ topic, facts, asOf, trailers, program, assemble: await assembler() },
    withRoom: folder !== undefined,
  };
  const sweeper = sweeping(asked);
  const chances = spread && chancing(asked, spread);
  const cells = trailers.map(({ name }) => cellOf(name));
  return async (part, vehicles) => {
    const found = sweeper.judge(vehicles);
    const counts = counted(sweeper, found.levels);
    if (folder !== undefined) {
      const drawn = spread && chances && { draws: spread.draws, hits: chances(vehicles) };
      await writePart(folder, part, linesOf(sweeper, vehicles, cells, found, drawn), counts);
    }
    return counts;
  };
}
