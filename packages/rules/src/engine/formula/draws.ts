import type { Draw } from './grammar/kind';
import type { KindName } from './grammar/nodes';
import { drawArithmetic } from './kinds/arithmetic';
import { drawBetween } from './kinds/between';
import { drawBoth } from './kinds/both';
import { drawCatalogued } from './kinds/catalogued';
import { drawChoose } from './kinds/choose';
import { drawCompare } from './kinds/compare';
import { drawCount } from './kinds/count';
import { drawEither } from './kinds/either';
import { drawGiven } from './kinds/given';
import { drawKnown } from './kinds/known';
import { drawLargestKnown } from './kinds/largestKnown';
import { drawLookup } from './kinds/lookup';
import { drawMax } from './kinds/max';
import { drawMay } from './kinds/may';
import { drawMin } from './kinds/min';
import { drawName } from './kinds/name';
import { drawNeeds } from './kinds/needs';
import { drawNegative } from './kinds/negative';
import { drawNot } from './kinds/not';
import { drawNumber } from './kinds/number';
import { drawOver } from './kinds/over';
import { drawPick } from './kinds/pick';
import { drawPower } from './kinds/power';
import { drawSum } from './kinds/sum';
import { drawSunHeight } from './kinds/sunHeight';
import { drawUnlimited } from './kinds/unlimited';
import { drawWhole } from './kinds/whole';
import { drawWord } from './kinds/word';

/** The way of every kind of formula over many draws, each from its file. */
export const draws: { readonly [K in KindName]: Draw<K> } = {
  arithmetic: drawArithmetic,
  between: drawBetween,
  both: drawBoth,
  catalogued: drawCatalogued,
  choose: drawChoose,
  compare: drawCompare,
  count: drawCount,
  either: drawEither,
  given: drawGiven,
  known: drawKnown,
  largestKnown: drawLargestKnown,
  lookup: drawLookup,
  max: drawMax,
  may: drawMay,
  min: drawMin,
  name: drawName,
  needs: drawNeeds,
  negative: drawNegative,
  not: drawNot,
  number: drawNumber,
  over: drawOver,
  pick: drawPick,
  power: drawPower,
  sum: drawSum,
  sunHeight: drawSunHeight,
  unlimited: drawUnlimited,
  whole: drawWhole,
  word: drawWord,
};
