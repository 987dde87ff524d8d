/**
 * What people write to a store that no rules decide: hours and appointments, prices, orders, thanks,
 * chatter. What is more like these has no topic.
 */
export const elsewhere: readonly string[] = [
  'are you open on Saturday, what are your hours, are you open on the holiday',
  'what does it cost, how much is it, what is the price out the door, do you have financing',
  'do you buy used ones, what would you give me on trade, trade in value, do you take consignment',
  'I would like an appointment, please book me in, can I reschedule, service appointment',
  'please call me back, call me about it, returning your call, wrong number, sorry',
  'thank you so much, thanks to the crew, you are the best, great video, loved the show, love the show',
  'first, who else is watching, lol, haha, my dad used to, when I was a boy, back in the day',
  'when is the next rally, the owners weekend, the open house, the fall weekend, chili',
  'where do I find you, which exit, do you deliver, how long is the wait, lead time, when does it arrive',
  'please send me the brochure, send the sheets, send the price list, send a catalog, order number',
  'my order, we ordered, is it in yet, backordered part, part number, do you sell the part',
  'extended warranty, buy back, refund, deposit back, cancel, policy number, billing, invoice',
  'are you hiring, a job, do you do inspections, registration, license plates, sales tax',
  'how do you decide which ones to bring in, who builds them, where are they made',
  'winter storage by you, keep it at your lot, how much to store it there, winterizing by you',
  'which paint color, what music is that, where did you get the hat, what dog is that',
  'please build one with, you should make, I wish they came with',
  'rent one for a weekend, do you rent, borrow, loaner',
  'does the ferry take it, is the pass open, is the campground open, reservations',
  'where do I weigh it, where is the nearest scale, is there a dump station, where do I fill propane',
  'just looking, did not want help, asked nothing, told us a story, nice people',
  'is the video live tonight, when is the next show, will you talk about, subscribe',
];
