/** Asked so beside the label’s figure, and nowhere else. */
const ofPayload = (asked: RegExp): RegExp =>
  new RegExp(`^(?=[\\s\\S]*\\b(?:payload|sticker|door label)\\b)[\\s\\S]*${asked.source}`, 'iu');

/**
 * What people want to know of a topic, by the words they ask it in: of its askings the first whose words
 * stand there is answered first, whatever else was told. An asking that no words name is left to what
 * was told. Behind the words may stand the fact on which that hangs first. An id that no topic has is none.
 */
export const wanted: Readonly<
  Record<string, readonly (readonly [asking: string, said: RegExp, look?: string])[]>
> = {
  'tow-fit': [
    [
      'bars',
      /\b(?:need|needs|require|required|should|must|necessary)\b[^.?!]*\b(?:weight[- ]distribut\w*|wdh|wd hitch|load[- ]level\w*|spring bars)(?!\p{L})/iu,
      'vehicle.maxTongueCarried',
    ],
    ['load', ofPayload(/\b(?:over|too (?:much|heavy)|overloaded)(?=[^\p{L}\d]*$)/iu)],
    [
      'load',
      ofPayload(/\b(?:am i|are we|would we be|will we be) (?:still )?(?:over|under|good)\b/iu),
    ],
    ['load', ofPayload(/\bhow much (?:payload |more |room |weight )?(?:\p{L}+ ){0,4}left\b/iu)],
    [
      'load',
      /\b(?:am i|are we|is it|is that|would i be|will i be) (?:still )?over(?= ?[?.!]|$| (?:my |the |on )?(?:payload|sticker|label))|\bpayload (?:is )?left\b|\bhow much (?:more )?(?:payload|stuff|gear|weight) (?:is left|can|may|could)\b/iu,
    ],
  ],
  'house-battery': [
    [
      'furnace',
      /\bfurnace\b[^.?!]*\bhow (?:long|many hours)\b|\bhow (?:long|many hours)\b[^.?!]*\bfurnace\b/iu,
    ],
    [
      'how-full',
      /\bhow full\b|\b(?:is (?:that|it|this)|are they) (?:bad|ok|okay|low|half|empty|full|dead)\b/iu,
    ],
  ],
  tires: [
    ['pressure', /\b(?:sidewall|psi)\b[\s\S]*\bwhich (?:is|one|do|should)\b/iu],
    ['age', /\bhow old\b|\bdate code\b|\btoo old\b|\bage out\b/iu],
    [
      'pressure',
      /\b(?:what|which|how much|right|cold) (?:tire )?(?:pressure|psi|air)\b|\b(?:run|air|inflate|fill)\b[^.?!]*\b(?:\d{2,3} or (?:less|lower|more)|psi)\b/iu,
    ],
  ],
  'body-repair': [['claim', /\b(?:insurance|claim|deductible)\b/iu]],
  'gas-supply': [['how-long', /\bhow (?:long|many (?:days|nights|hours))\b/iu]],
  'hitch-setup': [
    ['ball', /\b(?:which|what) (?:size )?(?:hitch )?ball\b|\bball size\b/iu],
    ['mount', /\bhow high\b|\bhow much (?:drop|rise)\b|\bwhich (?:drop|mount)\b/iu],
  ],
};
