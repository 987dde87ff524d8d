import { part } from '../../engine/define/topic';
import { grossRatings, payloadLabel, statics, tongueBand } from '../../trade/bibliography/common';

/**
 * What the passes tell of trailer, tongue and axles. F, R, T: front, rear and trailer axles; 1 bars
 * tight, 2 bars slack, 3 vehicle alone.
 *
 *     front      rear   ball               trailer axles
 *       ├─── w ───┤── b ──┤──────── L ────────┤
 *
 *     trailer  W = F₂ + R₂ + T₂ − F₃ − R₃        the bars change no sum: pass 1 gives the same
 *     tongue   V = F₂ + R₂ − F₃ − R₃             bars slack
 *     without pass 2:  V′ = F₁ + R₁ − F₃ − R₃ is what the bars leave on the vehicle,
 *                      M = w·(F₁ − F₃) + V′·b,  V = V′ + M/L
 *                        = (F₁ − F₃)·(1 + (b + w)/L) + (R₁ − R₃)·(1 + b/L)
 */
export const weighed = part({
  formulas: {
    'pass.slackTold': {
      label: 'The pass with slack bars was weighed',
      unit: 'yes-no',
      is: 'known(slack.front, slack.rear)',
      source: statics,
    },
    'pass.slackAndAlone': {
      label: 'Slack bars and vehicle alone were weighed',
      unit: 'yes-no',
      is: 'known(slack.front, slack.rear, alone.front, alone.rear)',
      source: statics,
    },
    'pass.twoTold': {
      label: 'Bars tight and vehicle alone were weighed, and the distances are known',
      unit: 'yes-no',
      is: 'known(tight.front, tight.rear, alone.front, alone.rear, vehicle.wheelbase, vehicle.overhang, trailer.ballToAxle)',
      source: statics,
    },
    'vehicle.alone': {
      label: 'Vehicle alone, as weighed',
      noun: 'the vehicle alone',
      unit: 'lb',
      is: 'read.aloneFront + read.aloneRear',
      source: statics,
    },
    'tongue.apparent': {
      label: 'What the tight bars leave of the tongue on the vehicle',
      noun: 'what the bars leave on the vehicle',
      unit: 'lb',
      is: 'read.tightFront + read.tightRear - read.aloneFront - read.aloneRear',
      source: statics,
    },
    'tongue.bySlack': {
      label: 'Tongue weight, from the pass with slack bars',
      noun: 'the tongue with slack bars',
      unit: 'lb',
      is: 'read.slackFront + read.slackRear - read.aloneFront - read.aloneRear',
      source: statics,
    },
    'tongue.byTwo': {
      label: 'Tongue weight, from two passes and the distances',
      noun: 'the tongue by two passes',
      unit: 'lb',
      is: '(read.tightFront - read.aloneFront) * (1 + (vehicle.overhang + vehicle.wheelbase) / trailer.ballToAxle) + (read.tightRear - read.aloneRear) * (1 + vehicle.overhang / trailer.ballToAxle)',
      source: statics,
    },
    'tongue.byLever': {
      label: 'Tongue weight, over the lever',
      noun: 'the tongue over the lever',
      unit: 'lb',
      is: 'lever.reading * (lever.toScale + lever.toBlock) / lever.toBlock',
      source: statics,
    },
    'tongue.isReadItself': {
      label: 'The tongue itself was weighed, on a scale of its own or over a lever',
      unit: 'yes-no',
      is: 'known(lever.reading) || known(trailer.measuredTongueWeight)',
      source: statics,
    },
    'tongue.isReckoned': {
      label: 'The tongue follows from the passes',
      unit: 'yes-no',
      is: 'pass.slackAndAlone || pass.twoTold',
      source: statics,
    },
    'tongue.isCompared': {
      label: 'The tongue was read otherwise than on a scale of its own',
      unit: 'yes-no',
      is: 'tongue.isReckoned || known(lever.reading) || !known(trailer.measuredTongueWeight)',
      source: statics,
    },
    'tongue.byPasses': {
      label: 'Tongue weight, from the passes; of tight bars alone, the least',
      noun: 'the tongue by the passes',
      unit: 'lb',
      is: 'choose(pass.slackAndAlone, tongue.bySlack, choose(pass.twoTold, tongue.byTwo, max(tongue.bySlack, tongue.apparent)))',
      source: statics,
    },
    'tongue.read': {
      label: 'Tongue weight, read by itself',
      noun: 'the tongue read by itself',
      unit: 'lb',
      is: 'choose(known(lever.reading, trailer.measuredTongueWeight), between(min(tongue.byLever, trailer.measuredTongueWeight), max(tongue.byLever, trailer.measuredTongueWeight)), choose(known(lever.reading), tongue.byLever, trailer.measuredTongueWeight))',
      source: statics,
    },
    'tongue.weighed': {
      label: 'Tongue weight, as weighed',
      noun: 'the tongue as weighed',
      unit: 'lb',
      // Where it was read in two ways, either may be right. Bars only take from what the vehicle
      // carries of it: what they leave is the least.
      is: 'choose(tongue.isReckoned && tongue.isReadItself, between(min(tongue.byPasses, tongue.read), max(tongue.byPasses, tongue.read)), choose(tongue.isReadItself, tongue.read, tongue.byPasses))',
      source: statics,
    },
    'tongue.lifted': {
      label: 'By how much the tongue lifts, as weighed',
      noun: 'how much the tongue lifts',
      unit: 'lb',
      is: 'max(0, -tongue.weighed)',
      source: statics,
    },
    'tongue.isSeenInPart': {
      label: 'Of the tongue only what tight bars leave on the vehicle was weighed',
      unit: 'yes-no',
      is: 'known(tight.front, tight.rear, alone.front, alone.rear) && !pass.slackAndAlone && !pass.twoTold && !tongue.isReadItself',
      source: statics,
    },
    'tongue.isSeen': {
      label: 'What was weighed tells something of the tongue',
      unit: 'yes-no',
      is: 'tongue.isReckoned || tongue.isReadItself || tongue.isSeenInPart',
      source: statics,
    },
    'tongue.isLifting': {
      label: 'The tongue lifts, as weighed',
      unit: 'yes-no',
      is: 'tongue.weighed < 0',
      source: statics,
    },
    'trailer.byPasses': {
      label: 'Trailer weight, from a hitched pass and the vehicle alone',
      noun: 'the trailer by the passes',
      unit: 'lb',
      is: 'max(0, hitched.weighed - read.aloneFront - read.aloneRear)',
      source: statics,
    },
    'hitched.weighed': {
      label: 'Vehicle and trailer together, by a hitched pass',
      noun: 'the hitched pass',
      unit: 'lb',
      is: 'choose(known(slack.front, slack.rear, slack.trailer), read.slackFront + read.slackRear + read.slackTrailer, choose(known(tight.front, tight.rear, tight.trailer), read.tightFront + read.tightRear + read.tightTrailer, max(read.slackFront + read.slackRear + read.slackTrailer, read.tightFront + read.tightRear + read.tightTrailer)))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'vehicle.hitched': {
      label: 'Vehicle’s axles with the trailer on, as printed with tight bars',
      noun: 'the vehicle’s axles with the trailer on',
      unit: 'lb',
      is: 'tight.front + tight.rear',
      source: statics,
    },
    'trailer.leastSeen': {
      label: 'What its axles alone were read to carry',
      noun: 'the least the trailer weighs',
      unit: 'lb',
      is: 'choose(tickets.impossible, 0, max(choose(known(slack.trailer), read.slackTrailer, 0), choose(known(tight.trailer), read.tightTrailer, 0), sides.read))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'pass.trailerTold': {
      label: 'A hitched pass and one of the vehicle alone were weighed whole',
      unit: 'yes-no',
      is: 'known(alone.front, alone.rear) && (known(tight.front, tight.rear, tight.trailer) || known(slack.front, slack.rear, slack.trailer))',
      source: statics,
    },
    'pass.trailerAndTongue': {
      label: 'The trailer’s axles with slack bars and the tongue itself were weighed',
      unit: 'yes-no',
      is: 'known(slack.trailer) && tongue.isReadItself',
      source: statics,
    },
    'pass.aloneAndTongue': {
      label: 'The vehicle alone and the tongue were weighed',
      unit: 'yes-no',
      is: 'known(alone.front, alone.rear) && tongue.isReadItself',
      source: statics,
    },
    'trailer.weighed': {
      label: 'Trailer weight, as weighed; of one ticket, what is certain',
      noun: 'the trailer as weighed',
      unit: 'lb',
      is: 'choose(pass.trailerTold || tickets.impossible, trailer.byPasses, choose(pass.trailerAndTongue, read.slackTrailer + tongue.weighed, max(trailer.byPasses, trailer.leastSeen)))',
      source: statics,
    },
    'tongue.shareWeighed': {
      label: 'Tongue share, as weighed',
      noun: 'the tongue’s share as weighed',
      unit: '1',
      is: 'choose(pass.slackAndAlone && !tongue.isReadItself, 1 / (1 + read.slackTrailer / tongue.bySlack), choose(pass.trailerAndTongue && !pass.trailerTold, 1 / (1 + read.slackTrailer / tongue.weighed), tongue.weighed / trailer.weighed))',
      source: tongueBand,
    },
    'vehicle.weighed': {
      label: 'Vehicle with the whole tongue, as weighed',
      noun: 'the vehicle with the whole tongue',
      unit: 'lb',
      // Bars lift the rear axle and press the front one, and take from the two together.
      is: 'choose(pass.slackTold, read.slackFront + read.slackRear, choose(pass.twoTold, read.aloneFront + read.aloneRear + tongue.byTwo, choose(pass.aloneAndTongue, read.aloneFront + read.aloneRear + tongue.weighed, max(read.slackFront + max(read.slackRear, read.tightRear), read.tightFront + read.tightRear, read.aloneFront + read.aloneRear + tongue.weighed))))',
      source: statics,
    },
    'payload.usedWeighed': {
      label: 'Payload used, as weighed',
      noun: 'the payload used, as weighed',
      unit: 'lb',
      is: 'vehicle.weighed - vehicle.curb',
      source: payloadLabel,
    },
    'payload.remaining': {
      label: 'Payload that remains',
      unit: 'lb',
      is: 'choose(known(vehicle.gvwr) || !given(vehicle.placardPayload), vehicle.gvwr - vehicle.weighed, vehicle.placardPayload - payload.usedWeighed)',
      source: grossRatings,
    },
    'combined.weighed': {
      label: 'Vehicle and trailer together, as weighed',
      noun: 'both together',
      unit: 'lb',
      // Short of a whole pass: what the vehicle carries, or weighs alone, and what is certain of the trailer.
      is: 'choose(known(tight.front, tight.rear, tight.trailer), read.tightFront + read.tightRear + read.tightTrailer, choose(known(slack.front, slack.rear, slack.trailer), hitched.weighed, max(hitched.weighed, vehicle.weighed, vehicle.alone + trailer.weighed)))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'axle.frontWeighed': {
      label: 'Front axle, as driven',
      noun: 'the front axle as driven',
      unit: 'lb',
      // Tight bars bring some of it back, and no more than it weighs alone.
      is: 'choose(known(tight.front), read.tightFront, choose(bars.mayHelp, between(read.slackFront, choose(known(alone.front), max(read.slackFront, read.aloneFront), unlimited)), read.slackFront))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'bars.mayHelp': {
      label: 'It is driven with bars tight, which shift load from the rear axle to the others',
      noun: 'whether it is driven with bars tight',
      unit: 'yes-no',
      is: "given(tight.front) || given(tight.rear) || given(tight.trailer) || (given(hitch.distribution) && hitch.distribution == 'yes')",
      source: statics,
    },
    'assumed.asDriven': {
      label: 'The rear axle is read by the pass without tight bars alone',
      unit: 'yes-no',
      is: 'given(slack.rear) && !given(tight.front) && !given(tight.rear) && !given(tight.trailer) && !given(hitch.distribution)',
      source: statics,
    },
    'assumed.barsRestore': {
      label: 'Bars are tight on the road, and the front axle was weighed with slack ones and alone',
      unit: 'yes-no',
      is: 'bars.mayHelp && given(vehicle.gawrFront) && known(alone.front) && known(slack.front) && !known(tight.front)',
      source: statics,
    },
    'assumed.barsLeave': {
      label: 'Bars are tight on the road, and the rear axle was weighed with slack ones and alone',
      unit: 'yes-no',
      is: 'bars.mayHelp && given(vehicle.gawrRear) && known(alone.rear) && known(slack.rear) && !known(tight.rear)',
      source: statics,
    },
    'axle.rearWeighed': {
      label: 'Rear axle, as driven',
      noun: 'the rear axle as driven',
      unit: 'lb',
      // Bars that bring back no more than the front lost leave on the rear what it weighs alone, or more.
      is: 'choose(known(tight.rear), read.tightRear, choose(bars.mayHelp, between(choose(known(alone.rear), min(read.slackRear, read.aloneRear), 0), read.slackRear), read.slackRear))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'axle.trailerSlack': {
      label: 'Weight on the trailer’s axles with slack bars, by a ticket or wheel by wheel',
      noun: 'the trailer’s axles with slack bars',
      unit: 'lb',
      is: 'choose(known(slack.trailer), read.slackTrailer, choose(known(trailer.leftWheels, trailer.rightWheels), sides.read, max(read.slackTrailer, sides.read)))',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'axle.trailerWeighed': {
      label: 'Weight on the trailer’s axles, as driven',
      noun: 'the trailer’s axles as driven',
      unit: 'lb',
      // What tight bars put on them is a part of the tongue.
      is: 'choose(known(tight.trailer), read.tightTrailer, choose(bars.mayHelp, between(axle.trailerSlack, read.slackTrailer + choose(pass.slackAndAlone, max(0, tongue.bySlack), unlimited)), axle.trailerSlack))',
      within: ['0', 'unlimited'],
      source: statics,
    },
  },
  findings: {
    'tongue-negative': {
      label: 'Tongue lifts',
      askedBy: ['slack.front', 'tight.front', 'lever.reading', 'trailer.measuredTongueWeight'],
      askedWhen: 'tongue.isSeen',
      stop: {
        when: {
          all: [{ fact: 'tongue.weighed', operator: 'lessThan', value: { fact: 'tongue.none' } }],
        },
        wrong: 'By these tickets the tongue lifts on the ball.',
        do: 'The trailer is loaded too far back and will sway. Move load ahead of the axles and weigh again.',
      },
      open: {
        wrong: 'By these tickets the tongue may even lift on the ball.',
        do: 'Weigh the tongue by itself before the trip.',
      },
      otherwise: 'The tongue presses down on the ball.',
      source: statics,
    },
    'tongue-share': {
      label: 'Tongue share',
      askedBy: ['slack.trailer', 'tight.trailer'],
      stop: [
        {
          when: 'tongue.isLifting',
          wrong:
            'Nothing of the trailer rests on its coupling; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: 'Too light a tongue lets the trailer sway.',
          do: 'Do not tow it so.',
        },
        {
          when: 'tongue.shareWeighed < tongue.stopEdge',
          wrong:
            '{tongue.shareWeighed} of the trailer rests on its coupling: the trailer is likely to sway.',
          because:
            '{tongue.lowEdge} to {tongue.highEdge} is usual; below {tongue.stopEdge} a gust or a passing truck is enough.',
          do: 'Do not tow it so: move load ahead of the axles and weigh the tongue again.',
        },
      ],
      care: [
        {
          when: 'tongue.shareWeighed < tongue.lowEdge',
          wrong:
            'Only {tongue.shareWeighed} of the trailer rests on its coupling; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: 'Too light a tongue lets the trailer sway.',
          do: 'Move load ahead of the axles and weigh the tongue again before you tow.',
        },
        {
          when: 'tongue.shareWeighed > tongue.highEdge',
          wrong:
            '{tongue.shareWeighed} of the trailer rests on its coupling; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: 'Too heavy a tongue presses the rear down and takes load off the front wheels.',
          do: 'Move load back toward the axles, not behind them, and weigh the tongue again before you tow.',
        },
      ],
      open: {
        wrong:
          'The tongue’s share of the trailer may lie outside the usual {tongue.lowEdge} to {tongue.highEdge}.',
        do: 'The scale cannot tell closer. Weigh the tongue by itself.',
      },
      otherwise: 'The tongue’s share of the trailer is in the usual band.',
      source: tongueBand,
    },
  },
});
