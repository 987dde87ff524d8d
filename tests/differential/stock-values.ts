import { at, closed, type Ends, larger, minus, over, plus, rounded, smaller, times } from './ends';
import { type PlainCase, reader, type State } from './plain-case';
import { barsWantedFor } from './plain-findings';
import { type PlainLimit, plainLimits } from './plain-limits';
import { plainTowFit } from './plain-tow-fit';
import { worldsOf } from './plain-worlds';

export type StockFacts = Record<string, number | string>;

/** What a program that only has plain numbers and words can hand to a stock rules engine. */
export type StockCase = {
  /** Of the names that conditions compare, those that this case settles. */
  readonly facts: StockFacts;
  /** What the second derivation says of each limit and finding that these names settle. */
  readonly states: Readonly<Record<string, State>>;
};

const none = at(0);
const yesNo = (yes: boolean): string => (yes ? 'yes' : 'no');

/** Names of conditions by limit: what is used, what is allowed, from where care is due. */
export type LimitNames = {
  readonly used: string;
  readonly limit: string;
  readonly careAt?: string;
  readonly askedWhen?: string;
};

function careFrom({ limit, empty, margin }: PlainLimit): Ends | undefined {
  if (!margin) return undefined;
  if (rounded(minus(limit, empty)).lo <= 0) return at(-Number.MAX_VALUE);
  const byShare = plus(times(limit, at(1 - margin.share)), times(empty, at(margin.share)));
  return smaller(byShare, minus(limit, at(margin.least)));
}

/** A rig that is told exactly, as plain numbers; what is open or not asked is left out. */
export function stockCase(plain: PlainCase, names: ReadonlyMap<string, LimitNames>): StockCase {
  const f = reader(plain);
  const [world, another] = worldsOf(f);
  if (!world || another) throw new Error('Not everything was told exactly.');
  const rig = plainLimits(plain, world);
  const { tow, vehicle, axles, mayPull, mayRest } = rig;
  const told = plainTowFit(plain);
  const facts: StockFacts = {};
  const states: Record<string, State> = {};
  const put = (name: string, value: Ends): boolean => {
    const { lo, hi } = rounded(value);
    if (lo !== hi || !closed({ lo, hi })) return false;
    facts[name] = lo;
    return true;
  };
  const say = (all: Readonly<Record<string, boolean>>): void => {
    for (const [name, is] of Object.entries(all)) facts[name] = yesNo(is);
  };
  const { pin, inUse, barsMayBe } = world;
  const known = (id: string): boolean => f.known(id);
  const brakes = f.word('trailer.brakes');
  const needed = f.word('vehicle.towPackageNeeded') === 'yes';
  const altitude = f.number('trip.altitude', none);
  const forced = ['turbocharged', 'electric'].includes(f.word('vehicle.engine') ?? '');
  say({
    'coupling.isBall': !pin,
    'coupling.isPin': pin,
    'distribution.inUse': inUse,
    'distribution.isUsed':
      f.word('hitch.distribution') === 'yes' && f.word('vehicle.distributionAllowed') !== 'no',
    'distribution.mayBe': barsMayBe,
    'distribution.isTold': !pin && f.word('hitch.distribution') === 'yes',
    'permission.isKnown': known('vehicle.distributionAllowed'),
    'distributionRequired.isKnown': known('vehicle.distributionRequiredAbove'),
    'trailerWeight.mayBeMore': barsMayBe && known('vehicle.maxTrailerWeight'),
    'tongue.mayBeMore': barsMayBe && known('vehicle.maxTongueDistributed'),
    'receiver.mayBeMore': barsMayBe && known('hitch.receiverRating'),
    'receiverTongue.mayBeMore': barsMayBe && known('hitch.receiverTongueRating'),
    'bars.wantedForTongue': barsWantedFor(rig, 'tongue').yes,
    'bars.wantedForTrailer': barsWantedFor(rig, 'trailer-weight').yes,
    'bars.wantedForReceiver': barsWantedFor(rig, 'receiver').yes,
    'bars.wantedForReceiverTongue': barsWantedFor(rig, 'receiver-tongue').yes,
    'engine.isUntold': known('trip.altitude') && !known('vehicle.engine') && altitude.hi > 0,
    'camper.isTold': false,
    'camper.isWeighed': false,
    'extension.isAsked': rig.limits.extension?.asked ?? false,
    'extension.isMentioned':
      (rig.limits.extension?.asked ?? false) ||
      (!pin && f.given('hitch.extension') && !known('hitch.extension')),
    'extension.isRated': known('hitch.extensionRating'),
    'brakes.areNone': brakes === 'none',
    'brakes.areSurge': brakes === 'surge',
    'brakes.areElectric': brakes === 'electric',
    'brakes.areKnown': known('trailer.brakes'),
    'brakes.areUntold': !known('trailer.brakes'),
    'brakeController.isKnown': known('vehicle.brakeController'),
    'sevenWay.isKnown': known('vehicle.sevenWay'),
    'unbraked.isRated': known('vehicle.maxUnbraked'),
    'ballSize.isAsked': !pin && f.given('hitch.ballSize') && f.given('trailer.couplerSize'),
    'ballSize.isKnown': known('hitch.ballSize') && known('trailer.couplerSize'),
    'towPackage.isNeeded': needed,
    'towPackage.isKnown': known('vehicle.towPackage'),
    'grossRating.isCompared': mayPull.known && known('trailer.gvwr'),
    'rating.isAlone': !f.given('vehicle.gcwr') && mayPull.known,
    'altitude.thins': known('trip.altitude') && !forced && altitude.lo > 0,
    'tongue.isKnown': tow.tongueKnown,
    'tongue.isEstimate': tow.estimate,
    'tail.isUnreckoned': tow.behind.hi < 0,
    'tongue.limitKnown': mayRest.known,
    'pin.limitKnown': mayRest.known,
    'payload.availableKnown': vehicle.payloadKnown,
    'load.peopleUntold': !f.given('load.occupants'),
    'load.trailerUntold': !f.given('trailer.cargo') && !f.given('trailer.options'),
  });
  for (const id of [
    'vehicle.towPackage',
    'vehicle.brakeController',
    'vehicle.sevenWay',
    'vehicle.distributionAllowed',
  ]) {
    const word = f.word(id);
    if (word !== undefined) facts[id] = word;
  }

  for (const [id, row] of Object.entries(rig.limits)) {
    const name = names.get(id);
    if (!name || !row.asked) continue;
    const settled = [put(name.used, row.used), put(name.limit, row.limit)];
    const care = careFrom(row);
    if (name.careAt !== undefined && care) {
      settled.push(put(name.careAt, care));
      if (care.lo === -Number.MAX_VALUE) facts[name.careAt] = care.lo;
    }
    if (settled.every(Boolean)) states[`limit.${id}`] = told.limits[id]?.state ?? 'unknown';
  }
  for (const id of [
    'vehicle.maxTrailerWeight',
    'vehicle.maxTongueDistributed',
    'hitch.receiverRating',
    'hitch.receiverTongueRating',
    'vehicle.distributionRequiredAbove',
    'vehicle.gawrRear',
    'trailer.gvwr',
  ]) {
    if (known(id)) put(id, f.number(id));
  }

  const heavy = times(tow.loaded, at(pin ? 0.2 : 0.13));
  const extra = minus(vehicle.aboard, at(300));
  const thin = times(larger(altitude, none), at(0.02 / 1000));
  const loaded = put('trailer.loaded', tow.loaded);
  const share = put('tongue.share', tow.share);
  const pull = put('trailerWeight.limit', mayPull.limit);
  const light = over(minus(tow.tongue, times(tow.allWater, at(0.35))), tow.loaded);
  const wanted = smaller(at(1000), f.number('vehicle.maxUnbraked', at(1000)));
  Object.assign(facts, {
    'tongue.stopEdge': pin ? 0.1 : 0.07,
    'tongue.lowEdge': pin ? 0.15 : 0.1,
    'tongue.highEdge': pin ? 0.25 : 0.15,
  });
  const estimated =
    put(pin ? 'tongue.heavyOnPin' : 'tongue.heavyOnBall', heavy) &&
    put('payload.heavy', plus(vehicle.aboard, heavy)) &&
    put('tongue.lightShare', light) &&
    (!mayRest.known || put(pin ? 'pin.limit' : 'tongue.limit', mayRest.limit)) &&
    (!vehicle.payloadKnown || put('payload.available', vehicle.payload));
  const both = rig.limits.combined;
  const settled: Record<string, boolean> = {
    'tongue-share': share,
    'tail-unreckoned': tow.behind.hi < 0 || tow.behind.lo >= 0,
    'tongue-estimate': !tow.estimate || estimated,
    'tongue-negative': put('tongue.loaded', tow.tongue),
    'ball-size':
      !known('hitch.ballSize') ||
      (put('hitch.ballSize', f.number('hitch.ballSize')) &&
        put('trailer.couplerSize', f.number('trailer.couplerSize'))),
    'brake-controller': brakes !== 'unknown',
    'seven-way': brakes !== 'unknown',
    'surge-bars': brakes !== 'unknown',
    'distribution-required': loaded,
    unbraked: loaded || brakes !== 'none',
    'brakes-untold': loaded && put('brakes.wantedAbove', wanted),
    'gross-over-rating': pull,
    'rating-assumes':
      pull && put('rating.extraLoad', extra) && put('rating.withExtra', plus(tow.loaded, extra)),
    'altitude-unasked':
      loaded && put('rating.atAltitude', times(mayPull.limit, minus(at(1), thin))),
    'engine-untold':
      known('vehicle.engine') ||
      !known('trip.altitude') ||
      (both !== undefined &&
        put('combined.gross', both.used) &&
        put('combined.limit', both.limit) &&
        put('vehicle.gcwr', f.number('vehicle.gcwr'))),
    'front-axle-light':
      put('front.takenShare', over(axles.frontTaken, axles.frontAlone)) &&
      put('front.takenEdge', at(0.1)),
    'rear-axle-slack': !inUse || put('rear.withoutBars', axles.rearWithoutBars),
    grade: put('trip.steepestGrade', times(rounded(f.number('trip.steepestGrade')), at(100))),
  };
  for (const [id, state] of Object.entries(told.findings)) {
    if ((settled[id] ?? true) && state !== 'not-asked') states[`finding.${id}`] = state;
  }
  return { facts, states };
}
