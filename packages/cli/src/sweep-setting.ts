import { readCase } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules';
import {
  dayProblems,
  type FactsGiven,
  type HouseLayer,
  sayProblem,
  withHouse,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { BadInput, named, readText, troubleLines } from './files';
import { underFrom } from './house';

type Flags = Readonly<Record<string, unknown>>;

export const textFlag = (given: Flags, name: string): string | undefined =>
  typeof given[name] === 'string' ? given[name] : undefined;

/** What a sweep is asked in: the case's own facts, the day, the dealer's own parameters. */
export type SweepSetting = {
  readonly facts: FactsGiven;
  readonly asOf: string;
  readonly layer: HouseLayer | null;
};

export const topicIn = ({ layer }: SweepSetting): Topic =>
  layer ? withHouse(towFit, layer) : towFit;

export async function settingFrom(given: Flags): Promise<SweepSetting> {
  const under = await underFrom(given);
  const file = textFlag(given, 'case');
  const text = file === undefined ? '' : await readText(file);
  const doc = file === undefined ? undefined : readCase(text, under.asOf);
  if (file !== undefined && doc && (doc.troubles.length > 0 || doc.topic?.id !== towFit.id)) {
    throw new BadInput(
      doc.troubles.length > 0
        ? troubleLines(file, doc.troubles)
        : `${named(file)}: a sweep is of tow-fit, and the case is not.`,
    );
  }
  const asOf = under.asOf ?? doc?.front.asOf ?? new Date().toISOString().slice(0, 10);
  const layer = under.house?.find((each) => each.topic === towFit.id) ?? null;
  const setting = { facts: doc?.facts ?? {}, asOf, layer };
  const [wrong] = dayProblems(topicIn(setting), asOf);
  if (wrong) throw new BadInput(sayProblem(wrong));
  return setting;
}
