import { refuseUnlessParts, type Topic } from '@tarebook/rules/engine';
import { isPacked, unpacked } from './kernel/packed';
import { type Program, programOf } from './kernel/program';
import { towSides } from './kernel/sides';

/** Named so that whoever bundles the sources looks for nothing that only a build writes. */
const built: string = '@tarebook/sweep/tow-fit';

/** The program that the build wrote; made of the rules where there is none, or it is of others. */
export async function programAtHand(topic: Topic): Promise<Program> {
  refuseUnlessParts('topic', topic, { formulas: 'parts', limits: 'parts' }, 'a rule set');
  const found: unknown = await import(built).catch(() => undefined);
  const kept =
    typeof found === 'object' && found !== null && 'default' in found ? found.default : undefined;
  return (isPacked(kept) && unpacked(topic, towSides, kept)) || programOf(topic, towSides);
}
