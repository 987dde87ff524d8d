/**
 * What a random rig is made of: for each number its least, its most, and how often it is given.
 * Near enough to one another that every verdict turns up often.
 */
export const numbers: Record<string, readonly [least: number, most: number, given: number]> = {
  'vehicle.maxTrailerWeight': [4500, 9500, 0.98],
  'vehicle.maxTrailerCarried': [4000, 8000, 0.2],
  'vehicle.maxFifthWheel': [5000, 10000, 0.2],
  'vehicle.maxPin': [600, 2200, 0.25],
  'vehicle.maxUnbraked': [1000, 3500, 0.3],
  'vehicle.maxTongueCarried': [450, 950, 0.97],
  'vehicle.maxTongueDistributed': [550, 1200, 0.5],
  'vehicle.distributionRequiredAbove': [3500, 8000, 0.2],
  'vehicle.placardPayload': [1000, 2400, 0.75],
  'vehicle.gvwr': [6500, 9000, 0.8],
  'vehicle.gcwr': [10000, 17000, 0.5],
  'vehicle.gawrFront': [2900, 4400, 0.35],
  'vehicle.gawrRear': [3400, 5400, 0.35],
  'vehicle.curbWeight': [4200, 6000, 0.7],
  'vehicle.curbFront': [2300, 3200, 0.7],
  'vehicle.curbRear': [1900, 2800, 0.7],
  'vehicle.wheelbase': [100, 160, 0.85],
  'vehicle.overhang': [35, 65, 0.85],
  'vehicle.tireCapacityFront': [1300, 2100, 0.4],
  'vehicle.tireCapacityRear': [1700, 2900, 0.3],
  'vehicle.maxFrontalArea': [45, 90, 0.15],
  'hitch.hardwareWeight': [20, 110, 0.7],
  'hitch.restored': [0, 1, 0.7],
  'hitch.receiverRating': [4500, 11000, 0.35],
  'hitch.receiverCarried': [4000, 9000, 0.2],
  'hitch.receiverTongueRating': [450, 1300, 0.35],
  'hitch.receiverTongueCarried': [400, 1000, 0.2],
  'hitch.mountRating': [4500, 11000, 0.35],
  'hitch.mountTongueRating': [450, 1300, 0.25],
  'hitch.extension': [0, 20, 0.2],
  'hitch.extensionRating': [300, 1000, 0.15],
  'hitch.pinRating': [600, 2200, 0.25],
  'hitch.ballRating': [4500, 11000, 0.35],
  'trailer.dryWeight': [1200, 5500, 0.98],
  'trailer.gvwr': [4000, 8500, 0.97],
  'trailer.cargoCapacity': [600, 2500, 0.3],
  'trailer.gawr': [2500, 5000, 0.35],
  'trailer.dryTongueWeight': [150, 750, 0.97],
  'trailer.measuredTongueWeight': [-50, 1000, 0.15],
  'trailer.freshWater': [0, 60, 0.5],
  'trailer.freshWaterAhead': [-6, 6, 0.4],
  'trailer.grayWater': [0, 40, 0.2],
  'trailer.grayWaterAhead': [-8, 4, 0.2],
  'trailer.blackWater': [0, 30, 0.2],
  'trailer.blackWaterAhead': [-8, 4, 0.2],
  'trailer.propane': [20, 60, 0.6],
  'trailer.propaneAhead': [6, 14, 0.4],
  'trailer.ballToAxle': [10, 22, 0.7],
  'trailer.couplerRating': [4500, 11000, 0.35],
  'trailer.couplerTongueRating': [450, 1300, 0.25],
  'trailer.tireCapacity': [1500, 3200, 0.35],
  'trailer.frontalArea': [40, 80, 0.4],
  'trip.altitude': [-500, 11000, 0.4],
  'trip.steepestGrade': [0.02, 0.14, 0.4],
};

/** Words, as often as they are repeated, and how often the fact is given. */
export const words: Record<string, readonly [options: readonly string[], given: number]> = {
  'vehicle.distributionAllowed': [['yes', 'yes', 'yes', 'yes', 'yes', 'no'], 0.5],
  'vehicle.dualRearWheels': [['yes', 'no'], 0.2],
  'vehicle.towPackageNeeded': [['yes', 'no'], 0.4],
  'vehicle.towPackage': [['yes', 'yes', 'yes', 'yes', 'yes', 'no'], 0.85],
  'vehicle.sevenWay': [['yes', 'yes', 'yes', 'yes', 'yes', 'yes', 'yes', 'no'], 0.8],
  'vehicle.brakeController': [['yes', 'yes', 'yes', 'yes', 'yes', 'yes', 'yes', 'no'], 0.8],
  'vehicle.engine': [['naturally-aspirated', 'turbocharged', 'electric'], 0.5],
  'hitch.distribution': [['yes', 'no'], 0.6],
  'vehicle.type': [['truck', 'multipurpose', 'passenger-car'], 0.4],
  'vehicle.tireKind': [['light-truck', 'passenger'], 0.3],
  'trailer.tireKind': [['special-trailer', 'light-truck', 'passenger'], 0.3],
  'trailer.brakes': [['electric', 'electric', 'electric', 'electric', 'surge', 'none'], 0.85],
  'trailer.coupling': [['ball', 'ball', 'ball', 'fifth-wheel'], 0.5],
};

/** Numbers of which only a few are usual. */
export const few: Record<string, readonly [values: readonly number[], given: number]> = {
  'trailer.axles': [[1, 2, 2, 3], 0.9],
  'hitch.ballSize': [[2, 2, 2, 2.3125], 0.5],
  'trailer.couplerSize': [[2, 2, 2, 2.3125], 0.5],
};

/** Rows: the heaviest, and how far behind and ahead they may lie. */
export const lists: Record<string, readonly [most: number, behind: number, ahead: number]> = {
  'load.occupants': [240, 10, 80],
  'load.cargo': [150, -40, 40],
  'trailer.options': [200, -10, 10],
  'trailer.cargo': [220, -10, 10],
};
