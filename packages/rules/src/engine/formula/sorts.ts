import type { SortOf } from './grammar/kind';
import type { KindName } from './grammar/nodes';
import { sortArithmetic } from './kinds/arithmetic';
import { sortBetween } from './kinds/between';
import { sortBoth } from './kinds/both';
import { sortCatalogued } from './kinds/catalogued';
import { sortChoose } from './kinds/choose';
import { sortCompare } from './kinds/compare';
import { sortCount } from './kinds/count';
import { sortEither } from './kinds/either';
import { sortGiven } from './kinds/given';
import { sortKnown } from './kinds/known';
import { sortLargestKnown } from './kinds/largestKnown';
import { sortLookup } from './kinds/lookup';
import { sortMax } from './kinds/max';
import { sortMay } from './kinds/may';
import { sortMin } from './kinds/min';
import { sortName } from './kinds/name';
import { sortNeeds } from './kinds/needs';
import { sortNegative } from './kinds/negative';
import { sortNot } from './kinds/not';
import { sortNumber } from './kinds/number';
import { sortOver } from './kinds/over';
import { sortPick } from './kinds/pick';
import { sortPower } from './kinds/power';
import { sortSum } from './kinds/sum';
import { sortSunHeight } from './kinds/sunHeight';
import { sortUnlimited } from './kinds/unlimited';
import { sortWhole } from './kinds/whole';
import { sortWord } from './kinds/word';

/** The rule of units of every kind of formula, each from its file. */
export const sorts: { readonly [K in KindName]: SortOf<K> } = {
  arithmetic: sortArithmetic,
  between: sortBetween,
  both: sortBoth,
  catalogued: sortCatalogued,
  choose: sortChoose,
  compare: sortCompare,
  count: sortCount,
  either: sortEither,
  given: sortGiven,
  known: sortKnown,
  largestKnown: sortLargestKnown,
  lookup: sortLookup,
  max: sortMax,
  may: sortMay,
  min: sortMin,
  name: sortName,
  needs: sortNeeds,
  negative: sortNegative,
  not: sortNot,
  number: sortNumber,
  over: sortOver,
  pick: sortPick,
  power: sortPower,
  sum: sortSum,
  sunHeight: sortSunHeight,
  unlimited: sortUnlimited,
  whole: sortWhole,
  word: sortWord,
};
