import type { Ends } from '@tarebook/rules/engine';
import {
  convert,
  show,
  showNumber,
  shownUnit,
  type UnitSystem,
  unitOf,
} from '@tarebook/rules/quantity';
import type { Bars, Load, RigFigure } from './figure';
import type { RigPlan } from './rig-plan';

/** To whole units, as a drawing shows it: "3,080 lb", "462–484 lb". */
export function whole({ lo, hi, unit }: Ends, system: UnitSystem): string {
  const target = shownUnit(unit, system);
  const end = (value: number) =>
    showNumber(Math.round(convert(value, unitOf(unit), unitOf(target))), 0);
  const [low, high] = [end(lo), end(hi)];
  return `${low === high ? low : `${low}–${high}`} ${target}`;
}

const barsSay: Readonly<Record<Bars, string>> = {
  none: '',
  slack: 'The bars hang slack.',
  tight: 'The bars are tight.',
  unsure: 'How tight the bars are is not known.',
};

function loadSays({ label, used, limit }: Load, system: UnitSystem): string {
  const carries = used ? show(used, used.unit, system) : 'not known';
  return `${label} ${carries}${limit ? ` of ${show(limit, limit.unit, system)}` : ''}.`;
}

/** All that the drawing shows, in words. */
export function rigSays(rig: RigFigure, plan: RigPlan, system: UnitSystem): string {
  const loads = [rig.front, rig.rear, rig.ball, rig.axles].map((each) => loadSays(each, system));
  return [`The rig from the side. ${scaleSays(plan)}`, ...loads, barsSay[rig.bars]]
    .filter((each) => each !== '')
    .join(' ');
}

export function scaleSays({ unknown }: RigPlan): string {
  if (unknown.length === 0) return 'Drawn to scale.';
  const [last, ...others] = unknown.toReversed();
  const all = others.length > 0 ? `${others.toReversed().join(', ')} and ${last}` : last;
  return `Not to scale: ${all} ${unknown.length > 1 ? 'are' : 'is'} not known.`;
}

export const barsWords = (bars: Bars): string => barsSay[bars];
