import { part } from '../../engine/define/topic';
import { grossRatings, payloadLabel, weights } from '../bibliography/common';
import { altitudeLoss, combinedRating } from '../bibliography/rig';

/**
 * Payload: what the door label leaves for people, things and the tongue.
 *
 *     ├─ people ─┼─ cargo ─┼ hitch ┼─ tongue ─┤        payload.used
 *     ├───────────────────────────────────────────┤   payload.available
 *
 * The tongue counts whole, with weight distribution or without.
 */
export const payload = part({
  formulas: {
    'payload.available': {
      label: 'Payload available',
      noun: 'the payload allowed',
      unit: 'lb',
      is: 'choose(given(vehicle.placardPayload), vehicle.placardPayload, vehicle.gvwr - vehicle.curb)',
      source: payloadLabel,
    },
    'payload.availableKnown': {
      label: 'The payload is known',
      unit: 'yes-no',
      is: 'known(payload.available)',
      source: payloadLabel,
    },
    'payload.used': {
      label: 'Payload used',
      noun: 'the payload used',
      unit: 'lb',
      is: 'load.aboard + tongue.loaded',
      source: payloadLabel,
    },
    'payload.heavy': {
      label: 'Payload used at a heavy but common tongue',
      noun: 'the payload used with such a tongue',
      unit: 'lb',
      is: 'load.aboard + tongue.heavy',
      source: payloadLabel,
    },
  },
  limits: {
    payload: {
      label: 'Payload',
      short: 'payload',
      do: 'Leave things at home, or over the trailer’s axles if its own rating has room, and weigh again.',
      used: 'payload.used',
      limit: 'payload.available',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      cautious: { when: 'tongue.isEstimate', used: 'payload.heavy' },
      source: payloadLabel,
    },
  },
});

/** The vehicle's own gross rating. */
export const vehicleGross = part({
  formulas: {
    'vehicle.gross': {
      label: 'Vehicle weight, loaded',
      noun: 'the loaded vehicle',
      unit: 'lb',
      is: 'vehicle.curb + payload.used',
      source: weights,
    },
  },
  limits: {
    'vehicle-gross': {
      label: 'Vehicle gross weight',
      short: 'the vehicle’s gross rating',
      do: 'Leave things at home, or over the trailer’s axles if its own rating has room, and weigh again.',
      exceeded: true,
      used: 'vehicle.gross',
      limit: 'vehicle.gvwr',
      empty: 'vehicle.curb',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gvwr'],
      source: grossRatings,
    },
  },
});

/** Vehicle and trailer together; the tongue is part of the trailer and counts once. */
export const combined = part({
  parameters: {
    'altitude.loss': {
      label: 'Loss of combined rating with altitude',
      unit: '% per 1,000 ft',
      values: [{ from: '2020-01-01', value: 2 }],
      source: altitudeLoss,
    },
  },
  formulas: {
    'combined.gross': {
      label: 'Vehicle and trailer together',
      noun: 'the combined weight',
      unit: 'lb',
      is: 'vehicle.curb + load.aboard + trailer.loaded',
      source: weights,
    },
    'combined.derated': {
      label: 'The engine loses power with altitude',
      unit: 'yes-no',
      is: "known(trip.altitude) && !(known(vehicle.engine) && vehicle.engine != 'naturally-aspirated')",
      source: altitudeLoss,
    },
    'engine.isUntold': {
      label: 'It goes up, the engine untold',
      unit: 'yes-no',
      is: 'combined.derated && trip.altitude > 0 && !known(vehicle.engine)',
      source: altitudeLoss,
    },
    'combined.limit': {
      label: 'Combined rating that counts',
      noun: 'the combined rating',
      unit: 'lb',
      is: 'choose(combined.derated, vehicle.gcwr * (1 - altitude.loss * max(0, trip.altitude)), vehicle.gcwr)',
      source: altitudeLoss,
    },
    'combined.empty': {
      label: 'Vehicle and trailer together, empty',
      unit: 'lb',
      is: 'vehicle.curb + trailer.unloaded',
      source: weights,
    },
  },
  limits: {
    combined: {
      label: 'Combined weight',
      short: 'the combined rating',
      do: 'Leave load at home until the whole rig is within it, and weigh it all again.',
      exceeded: true,
      used: 'combined.gross',
      limit: 'combined.limit',
      empty: 'combined.empty',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gcwr'],
      source: combinedRating,
    },
  },
  findings: {
    'engine-untold': {
      label: 'Engine that nobody named, in thin air',
      first: true,
      askedBy: ['vehicle.gcwr'],
      askedWhen: 'engine.isUntold',
      care: {
        when: 'combined.gross > combined.limit && combined.gross <= vehicle.gcwr',
        wrong:
          'The combined rating counts {altitude.loss} lower, as for an engine without a turbocharger.',
        because: 'A turbocharged or an electric one loses nothing, and the rig would be within it.',
        do: 'Ask what engine it has.',
      },
      otherwise: 'Whatever engine it has, the combined rating comes out alike.',
      source: altitudeLoss,
    },
  },
});
