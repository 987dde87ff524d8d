/** Somebody is in it, goes on with it, or is about to: what is said of danger is then meant. */
const now =
  /(?<!\p{L})(?:right now|rn|now(?! and)|tonight|tonite|today|tomorrow|tomorow|tmrw|tmw|tmr|2moro|2nite|this (?:minute|second|instant|evening|morning|afternoon|am|weekend|wkend|wknd)|before dark|at the moment|as (?:i|we) (?:type|write|speak)|(?:minutes?|mins?|hours?|hrs?) ago|at dawn|first thing|in (?:ten|five|an hour|\d+ min\p{L}*)|leavin?g?|(?:about|ready|fixing|fixin|going|gonna|gon|got) (?:to )?(?:go|leave|tow|drive|sleep|light|start|haul|run)|head(?:ing|ed|in)? (?:out|home|back|up|down|over|for)|on (?:our|my|the) way|on the (?:shoulder|road|highway|interstate|line)|side of the (?:road|highway)|pulled over|rest (?:area|stop)|(?:we|i|he|she|they)(?: ?[’']?re|[’']?m|[’']?s| are| am| is| r) (?:at|on|in|under|inside|here|parked|stuck|stopped|driving|sitting|sleeping|using|running|towing|still)|from under|still|again|keeps?|keep going|keep goin|living in (?:it|there)|sleep(?:ing|s)?|asleep|nap|(?:thru|through|all|over) ?(?:the )?(?:night|mornin\p{L}*)|every (?:other )?(?:day|week|weekend|trip|time)|most days|a week with|safe|unsafe|danger\p{L}*|scares?|hurt|injured|bleed\p{L}*|purple|hospital|unconscious|riding in|lying in|going w|(?:hr|hrs|hours?|miles?|mi) (?:home|to go)|worr\p{L}+|normal|help|asap|urgent|hurry|wait)(?!\p{L})/iu;
const day =
  /(?<!\p{L})(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?<!\p{L})(?:fri|sat|sun|thurs) (?:nite|night|morning|am)|at \d{1,2}(?!\d)/iu;
const goes =
  /(?<!\p{L})(?:tow\p{L}*|haul\p{L}*|pull\p{L}*|drive|driving|take|taking|takin|bring\p{L}*|leav\p{L}*|head\p{L}*|home|camp|over the|roll\p{L}*)(?!\p{L})/iu;

/** Whether a text tells of now, or of going on or setting out with whatever it tells. */
export const isSoon = (text: string): boolean =>
  now.test(text) || (day.test(text) && goes.test(text));
