// One decision, the same for all: may this vehicle tow this trailer, both told exactly. The yard is invented;
// the formulas are tow fit's for such a pair, written once more, so that others can be given them.
export const asOf = '2026-11-01';

/** What is of neither: two people 4 ft ahead of the rear axle, a hitch of 60 lb, 300 lb in the trailer. */
export const setting = {
  'load.occupants': [
    { label: 'Driver', weight: '180 lb', ahead: '4 ft' },
    { label: 'Partner', weight: '150 lb', ahead: '4 ft' },
  ],
  'hitch.hardwareWeight': '60 lb',
  'hitch.distribution': 'no',
  'trailer.cargo': [{ label: 'A weekend', weight: '300 lb' }],
};
const [people, ahead, hardware, cargo] = [330, 48, 60, 300];

/** The same numbers for the same seed. */
function drawing(seed) {
  let state = seed;
  return (least, most) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.round(least + ((most - least) * state) / 2 ** 32);
  };
}

export function vehicles(count) {
  const draw = drawing(1);
  return Array.from({ length: count }, () => {
    const gvwr = draw(4500, 9000);
    const curb = gvwr - draw(900, 2400);
    const front = Math.round(curb * 0.55);
    return {
      ...{ gvwr, curbWeight: curb, curbFront: front, curbRear: curb - front - draw(0, 60) },
      ...{ placardPayload: gvwr - curb - draw(-40, 200), gcwr: gvwr + draw(2000, 10_000) },
      ...{ maxTrailerWeight: draw(1500, 11_000), maxTongueCarried: draw(150, 1200) },
      ...{ gawrFront: front + draw(250, 1200), gawrRear: curb - front + draw(500, 2400) },
      ...{ wheelbase: draw(105, 165), overhang: draw(34, 56), maxFrontalArea: draw(25, 75) },
      ...{ tireCapacityFront: draw(1500, 3200), tireCapacityRear: draw(1800, 3200) },
    };
  });
}

export function trailers(count) {
  const draw = drawing(2);
  return Array.from({ length: count }, () => {
    const dry = draw(900, 7500);
    const axles = dry > 3500 ? 2 : 1;
    const gvwr = dry + draw(300, 2000);
    return {
      ...{ dryWeight: dry, gvwr, axles, gawr: Math.round(gvwr / axles) + draw(-250, 400) },
      ...{ dryTongueWeight: Math.round((dry * draw(60, 160)) / 1000), frontalArea: draw(18, 70) },
      ...{
        couplerRating: draw(2500, 10_000),
        tireCapacity: Math.round(gvwr / axles / 2) + draw(-80, 600),
      },
    };
  });
}

const units = {
  wheelbase: 'in',
  overhang: 'in',
  maxFrontalArea: 'ft²',
  frontalArea: 'ft²',
  axles: '',
};
const factsOf = (side, told, more) => ({
  ...Object.fromEntries(
    Object.entries(told).map(([name, value]) => [
      `${side}.${name}`,
      `${value} ${units[name] ?? 'lb'}`.trim(),
    ]),
  ),
  ...more,
});

/** As a catalogue would tell them. */
export const asVehicle = (told, i) => ({
  name: `Vehicle ${i}`,
  facts: factsOf('vehicle', told, {
    'vehicle.sevenWay': 'yes',
    'vehicle.brakeController': 'yes',
    'vehicle.towPackageNeeded': 'no',
    'vehicle.distributionAllowed': 'no',
  }),
});
export const asTrailer = (told, i) => ({
  name: `Trailer ${i}`,
  facts: factsOf('trailer', told, { 'trailer.brakes': 'electric', 'trailer.coupling': 'ball' }),
});

/** From here on it is care: a share of what is above empty is kept, or so many pounds. */
const careAt = (limit, empty, share, least) =>
  limit - empty <= 0 ? -1e12 : Math.min(limit * (1 - share) + empty * share, limit - least);

/** What hangs on the vehicle alone; limits a little higher than told, since equal to a millionth is equal. */
export function ofVehicle(v) {
  const axles = v.curbFront + v.curbRear;
  const curb = Math.max(v.curbWeight, axles, v.gvwr - v.placardPayload);
  const scale = Math.max(1, curb / axles);
  const [front, rear] = [v.curbFront * scale, v.curbRear * scale];
  const [lever, share] = [v.overhang / v.wheelbase, ahead / v.wheelbase];
  const frontAlone = front + people * share - hardware * lever;
  return {
    ...{ curb, lever, aboard: people + hardware, area: v.maxFrontalArea },
    // A tongue of more takes more than a tenth off the front axle, where no bars give it back.
    ...{ frontAlone, light: (0.1 * frontAlone) / lever },
    rearAlone: rear + people * (1 - share) + hardware * (1 + lever),
    ...{ pull: v.maxTrailerWeight, pullCare: careAt(v.maxTrailerWeight, 0, 0.1, 0) },
    ...{ rest: v.maxTongueCarried, restCare: careAt(v.maxTongueCarried, 0, 0.05, 0) },
    ...{ label: v.placardPayload, labelCare: careAt(v.placardPayload, 0, 0.05, 50) },
    ...{ gross: v.gvwr, grossCare: careAt(v.gvwr, curb, 0.05, 50) },
    ...{ onFront: v.gawrFront, onFrontCare: careAt(v.gawrFront, front, 0.05, 50) },
    ...{ onRear: v.gawrRear, onRearCare: careAt(v.gawrRear, rear, 0.05, 50) },
    ...{
      tireFront: v.tireCapacityFront,
      tireFrontCare: careAt(v.tireCapacityFront, front / 2, 0.05, 0),
    },
    ...{
      tireRear: v.tireCapacityRear,
      tireRearCare: careAt(v.tireCapacityRear, rear / 2, 0.05, 0),
    },
    ...{ both: v.gcwr, bothShare: v.gcwr * 0.95 + curb * 0.05, bothCare: v.gcwr - 50 },
  };
}

/** What hangs on the trailer alone, with the level that it comes to alone: 0 fits, 1 care, 2 stop. */
export function ofTrailer(t) {
  const loaded = t.dryWeight + cargo;
  const tongue = t.dryTongueWeight * 1.1;
  const share = t.dryTongueWeight / t.dryWeight;
  const axle = loaded - tongue;
  const [onAxles, onTire] = [t.axles * t.gawr, axle / (2 * t.axles)];
  const limits = [
    [loaded, t.gvwr, careAt(t.gvwr, t.dryWeight, 0.05, 50)],
    [axle, onAxles, careAt(onAxles, 0, 0.05, 50)],
    [loaded, t.couplerRating, careAt(t.couplerRating, 0, 0.05, 0)],
    [onTire, t.tireCapacity, careAt(t.tireCapacity, 0, 0.1, 0)],
  ];
  const near = 1e-6;
  const isStop = share < 0.07 - near || limits.some(([used, limit]) => used > limit + near);
  const isCare =
    share < 0.1 - near ||
    share > 0.15 + near ||
    tongue / loaded < 0.07 - near ||
    limits.some(([used, , care]) => used > care + near);
  return {
    ...{ loaded, tongue, dry: t.dryWeight, heavy: loaded * 0.13, rated: t.gvwr },
    ...{ front: t.frontalArea, alone: isStop ? 2 : isCare ? 1 : 0 },
  };
}

/** What hangs on both, as anything that reckons can read it. */
export const pairNumbers = {
  payload: 'v_aboard + t_tongue',
  gross: 'v_curb + v_aboard + t_tongue',
  combined: 'v_curb + v_aboard + t_loaded',
  bothShare: 'v_bothShare + t_dry * 0.05',
  bothEmpty: 'v_curb + t_dry',
  front: 'v_frontAlone - t_tongue * v_lever',
  rear: 'v_rearAlone + t_tongue * (1 + v_lever)',
  tireFront: '(v_frontAlone - t_tongue * v_lever) / 2',
  tireRear: '(v_rearAlone + t_tongue * (1 + v_lever)) / 2',
  heavyPayload: 'v_aboard + t_heavy',
};

/** Over the one is a stop, over the other is care. */
export const checks = {
  stop: [
    ['t_loaded', 'v_pull'],
    ['t_tongue', 'v_rest'],
    ['p_payload', 'v_label'],
    ['p_gross', 'v_gross'],
    ['p_front', 'v_onFront'],
    ['p_rear', 'v_onRear'],
    ['p_combined', 'v_both'],
    ['p_tireFront', 'v_tireFront'],
    ['p_tireRear', 'v_tireRear'],
    ['t_front', 'v_area'],
  ],
  care: [
    ['t_loaded', 'v_pullCare'],
    ['t_tongue', 'v_restCare'],
    ['t_tongue', 'v_light'],
    ['p_payload', 'v_labelCare'],
    ['p_gross', 'v_grossCare'],
    ['p_front', 'v_onFrontCare'],
    ['p_rear', 'v_onRearCare'],
    ['p_combined', 'p_bothShare'],
    ['p_combined', 'v_bothCare'],
    ['p_bothEmpty', 'v_both'],
    ['p_tireFront', 'v_tireFrontCare'],
    ['p_tireRear', 'v_tireRearCare'],
    ['t_heavy', 'v_rest'],
    ['p_heavyPayload', 'v_label'],
    ['t_rated', 'v_pull'],
  ],
};
/** Equal to a millionth is equal. */
export const near = 1e-6;
