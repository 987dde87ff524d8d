import { part } from '../../engine/define/topic';
import {
  custom,
  grossRatings,
  partsRating as makersRating,
  payloadLabel,
  statics,
} from '../../trade/bibliography/common';
import { camperLoading } from '../../trade/bibliography/truck-camper';

/**
 * What the camper weighs on the road, and what may carry it.
 *
 *     ├─ camper, as labeled ─┼ options ┼ cargo ┼ more water, gas ┼ riders ┤     camper.loaded
 *     ├──────────────────────── camper.loaded ────────────────────────────┼ things ┼ tongue ┤   bed.load
 *     ├───────────────────────────── bed.load ──────────────────────────────────────┼ people ┤  payload.used
 */
export const camperLoad = part({
  formulas: {
    'bed.load': {
      label: 'Camper and all cargo',
      noun: 'the camper and all cargo',
      unit: 'lb',
      // What lifts is no room for more.
      is: 'camper.loaded + load.things + hitch.hardwareWeight + max(0, camper.tongueBehind)',
      source: camperLoading,
    },
    'payload.used': {
      label: 'Payload used',
      noun: 'the payload used',
      unit: 'lb',
      is: 'load.people + bed.load',
      source: payloadLabel,
    },
    'vehicle.gross': {
      label: 'Truck weight, loaded',
      noun: 'the loaded truck',
      unit: 'lb',
      is: 'vehicle.curb + payload.used',
      source: statics,
    },
    'beside.camper': {
      label: 'Cargo, hitch and tongue beside the camper',
      unit: 'lb',
      is: 'load.things + hitch.hardwareWeight + max(0, camper.tongueBehind)',
      source: statics,
    },
    'camper.heaviest': {
      label: 'Heaviest camper, as labeled, that the told ratings leave room for',
      noun: 'the heaviest camper',
      unit: 'lb',
      is: 'max(0, min(choose(given(vehicle.cargoRating), cargoRating.counted, unlimited), choose(payload.isRated || !given(vehicle.cargoRating), payload.available - load.people, unlimited)) - beside.camper - camper.loads)',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'load.isUntold': {
      label: 'Nobody told who rides along',
      unit: 'yes-no',
      is: '!given(load.occupants)',
      source: custom,
    },
    'cargo.isUntold': {
      label: 'Nobody told what is packed in the camper',
      unit: 'yes-no',
      is: '!given(camper.cargo)',
      source: custom,
    },
  },
  limits: {
    payload: {
      label: 'Payload',
      short: 'payload',
      do: 'Take load out of truck or camper, water first if the site has some, and weigh again.',
      near: 'Take nothing more aboard, and weigh the loaded truck before the trip.',
      used: 'payload.used',
      limit: 'payload.available',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.placardPayload', 'vehicle.gvwr'],
      source: payloadLabel,
    },
    'vehicle-gross': {
      label: 'Vehicle gross weight',
      short: 'the truck’s gross rating',
      do: 'Take load out of truck or camper, water first if the site has some, and weigh again.',
      near: 'Take nothing more aboard, and weigh the loaded truck before the trip.',
      exceeded: true,
      used: 'vehicle.gross',
      limit: 'vehicle.gvwr',
      empty: 'vehicle.curb',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gvwr'],
      source: grossRatings,
    },
    extension: {
      label: 'Hitch extension',
      short: 'the hitch extension',
      do: 'Tow nothing on that extension: take it out, or fit one rated for that tongue.',
      near: 'Put nothing more on that tongue.',
      used: 'camper.tongueBehind',
      limit: 'hitch.extensionRating',
      margin: 'margin.other',
      askedWhen: 'camper.extends',
      source: makersRating,
    },
  },
  findings: {
    'load-untold': {
      label: 'Who and what comes along',
      if: [
        {
          when: 'load.isUntold && cargo.isUntold',
          wrong: 'Who rides along and what is packed in the camper is not known yet.',
          proviso: 'only a driver rides along and nothing is packed in the camper',
        },
        {
          when: 'load.isUntold',
          wrong: 'Who rides along is not known yet.',
          proviso: 'only a driver rides along',
        },
        {
          when: 'cargo.isUntold',
          wrong: 'What is packed in the camper is not known yet.',
          proviso: 'nothing is packed in the camper',
        },
      ],
      otherwise: 'Who rides along and what is packed was told.',
      source: custom,
    },
  },
});
