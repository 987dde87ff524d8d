import { at, closed, type Ends, plus, rounded, times } from './ends';
import type { PlainCase, State } from './plain-case';
import { plainLimits } from './plain-limits';
import { plainTowFit } from './plain-tow-fit';

export type StockFacts = Record<string, number | string>;

/** What a program that only has plain numbers and words can hand to a stock rules engine. */
export type StockCase = {
  /** Of the names that conditions compare, those that this case settles. */
  readonly facts: StockFacts;
  /** What the second derivation says of each limit and finding that these names settle. */
  readonly states: Readonly<Record<string, State>>;
};

const yesNo = (yes: boolean): string => (yes ? 'yes' : 'no');

/** Names of conditions by limit: what is used, what is allowed, from where care is due. */
export type LimitNames = {
  readonly used: string;
  readonly limit: string;
  readonly careAt?: string;
};

/** A rig that is told exactly, as plain numbers; what is open or not asked is left out. */
export function stockCase(plain: PlainCase, names: ReadonlyMap<string, LimitNames>): StockCase {
  const all = plainLimits(plain);
  const { load } = all;
  const { f } = load;
  const told = plainTowFit(plain);
  const facts: StockFacts = {};
  const states: Record<string, State> = {};
  const put = (name: string, value: Ends): boolean => {
    const { lo, hi } = rounded(value);
    if (lo !== hi || !closed({ lo, hi })) return false;
    facts[name] = lo;
    return true;
  };

  for (const [id, { used, limit, margin, asked }] of Object.entries(all.limits)) {
    const name = names.get(id);
    if (!name || !asked) continue;
    const usedPut = put(name.used, used);
    const limitPut = put(name.limit, limit);
    if (name.careAt !== undefined) put(name.careAt, times(limit, at(1 - margin)));
    if (usedPut && limitPut) states[`limit.${id}`] = told.limits[id]?.state ?? 'unknown';
  }

  const pin = f.word('trailer.coupling') === 'fifth-wheel';
  const heavy = times(load.trailer, at(pin ? 0.2 : 0.13));
  const sharePut = put('tongue.share', load.share);
  const loadedPut = put('trailer.loaded', load.trailer);
  const tonguePut = put('tongue.loaded', load.tongue);
  const limitSettled = all.tongueKnown ? put('tongue.limit', all.tongueLimit) : true;
  const payloadSettled = load.payloadKnown ? put('payload.available', load.payload) : true;
  const heavyPut = put('tongue.heavy', heavy) && put('payload.heavy', plus(load.aboard, heavy));
  const gradePut = put('trip.steepestGrade', times(f.number('trip.steepestGrade'), at(100)));
  const sizesPut =
    put('hitch.ballSize', f.number('hitch.ballSize')) &&
    put('trailer.couplerSize', f.number('trailer.couplerSize'));
  const capKnown = f.known('vehicle.distributionRequiredAbove');
  const capPut =
    capKnown &&
    put('vehicle.distributionRequiredAbove', f.number('vehicle.distributionRequiredAbove'));
  const allowed = f.word('vehicle.distributionAllowed') ?? 'yes';
  const brakes = f.word('trailer.electricBrakes');
  Object.assign(facts, {
    'trailer.coupling': pin ? 'fifth-wheel' : 'ball',
    'tongue.lowEdge': pin ? 0.15 : 0.1,
    'tongue.highEdge': pin ? 0.25 : 0.15,
    'tongue.isEstimate': yesNo(load.estimate),
    'tongue.limitKnown': yesNo(all.tongueKnown),
    'payload.availableKnown': yesNo(load.payloadKnown),
    'brakeController.isKnown': yesNo(f.known('vehicle.brakeController')),
    'sevenWay.isKnown': yesNo(f.known('vehicle.sevenWay')),
    'distribution.allowed': allowed,
    'distribution.inUse': yesNo(load.inUse.yes),
    'distributionRequired.isKnown': yesNo(capKnown),
  });
  for (const id of [
    'vehicle.towPackageNeeded',
    'vehicle.towPackage',
    'vehicle.brakeController',
    'vehicle.sevenWay',
    'trailer.electricBrakes',
    'hitch.distribution',
  ]) {
    const word = f.word(id);
    if (word !== undefined) facts[id] = word;
  }

  const settled: Record<string, boolean> = {
    'tongue-share': sharePut,
    'tongue-estimate': !load.estimate || (heavyPut && limitSettled && payloadSettled),
    'tongue-negative': tonguePut,
    'ball-size': sizesPut,
    'tow-package':
      f.word('vehicle.towPackageNeeded') === 'no' || f.word('vehicle.towPackage') !== undefined,
    'brake-controller': true,
    'seven-way': true,
    'distribution-allowed': true,
    'distribution-required': !capKnown || (loadedPut && capPut),
    unbraked: loadedPut || brakes === 'yes',
    grade: gradePut,
  };
  for (const [id, state] of Object.entries(told.findings)) {
    if (settled[id] && state !== 'not-asked') states[`finding.${id}`] = state;
  }
  return { facts, states };
}
