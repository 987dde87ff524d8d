import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { factsIn } from './facts';

const byId = new Map(Object.values(topics).map((topic) => [topic.id, topic]));

function readAs(topicId: string, text: string): Readonly<Record<string, string>> {
  const topic = byId.get(topicId);
  if (!topic) throw new Error(`There is no topic ${topicId}.`);
  return factsIn(topic, text).facts;
}

/** A number beside a word for one thing that is of another: the topic, the text, and what it is not. */
const ofAnother: readonly (readonly [string, string, string])[] = [
  ['towed-car', 'We have a 350 lb tow dolly, can we tow the car', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'The tow dolly is 420 lb, would the truck mind', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'My tow strap is rated 10,000, the trailer 6,200 gross', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'The winch pulls 9,500 lb', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'Tongue jack is rated 3,500 lb', 'vehicle.maxTongueCarried'],
  ['tow-fit', 'Boat trailer weighs 900 lb empty, camper is 4,000', 'trailer.dryWeight'],
  ['tow-fit', 'The empty cooler is 30 lb', 'trailer.dryWeight'],
  ['tow-fit', 'A 400 lb golf cart in the bed, payload is on the sticker', 'vehicle.placardPayload'],
  ['tow-fit', 'Payload sticker, 85 lb toolbox, two bikes', 'vehicle.placardPayload'],
  ['truck-camper', 'center of gravity 4 inches behind the axle', 'camper.centerBehindBoard'],
  ['truck-camper', 'The arrow is 6 in ahead of the rear axle', 'camper.centerBehindBoard'],
  ['truck-camper', 'cg sits 2 in back of the rear wheels', 'camper.centerBehindBoard'],
  ['electric-tow-range', 'EV with 270 miles range, can it tow', 'trip.distance'],
  ['electric-tow-range', 'rated range 320 miles for the battery truck', 'trip.distance'],
  ['electric-tow-range', 'It gets 310 miles on a charge', 'trip.distance'],
  ['electric-tow-range', 'The truck has 41,000 miles on it', 'trip.distance'],
  ['electric-tow-range', 'New tires 3,000 miles ago', 'trip.distance'],
  ['electric-tow-range', 'Can it still tow 6,000?', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'Is my SUV able to pull 5,000 lb', 'vehicle.maxTrailerWeight'],
  [
    'tow-fit',
    'The manual of my pickup gives, on page 312, what it may pull',
    'vehicle.maxTrailerWeight',
  ],
  ['tow-fit', 'SUV maker says no bars, max 450 on ball without', 'vehicle.maxTrailerWeight'],
  ['tow-fit', 'manual says no more than 2100 pounds of pin on the bed', 'vehicle.maxTrailerWeight'],
  ['gas-supply', 'furnace runs, nights about 30, two bottles', 'trip.nights'],
  ['truck-camper', 'Slide-in, 4 aboard and the dog', 'camper.freshWater'],
  ['shore-power', 'Running the AC off the 30 amp post', 'airConditioner.current'],
  ['cold-weather', 'It will be well below zero tonight', 'outside.temperature'],
  ['hitch-setup', 'sticker on the spring bars says 1,200', 'vehicle.distributionAllowed'],
];

test.each(ofAnother)('%s: in “%s” nothing is %s', (topic, text, fact) => {
  expect(readAs(topic, text)).not.toHaveProperty([fact]);
});

/** Whoever asks about a thing does not tell that it is there. */
const onlyAsked: readonly (readonly [string, string, string])[] = [
  ['spares-kit', 'Do I need to carry a spare on a two week trip', 'spare.present'],
  ['spares-kit', 'should we carry a spare', 'spare.present'],
  ['theft-deterrence', 'would a coupler lock stop them', 'guard.held'],
  ['theft-deterrence', 'Wondering if a coupler lock would help', 'guard.held'],
  ['theft-deterrence', 'does a wheel boot deter anyone', 'guard.held'],
  ['tow-fit', 'Do we need electric brakes at 3,000 lb', 'trailer.brakes'],
  ['tow-fit', 'are surge brakes better than electric ones', 'trailer.brakes'],
  ['tow-fit', 'Is a seven-pin connector required', 'vehicle.sevenWay'],
  ['hitch-setup', 'should I get weight distribution bars', 'hitch.distribution'],
  ['hitch-setup', 'Would weight distribution help', 'hitch.distribution'],
  ['sway', 'do I need a friction sway control', 'hitch.swayControl'],
  ['house-battery', 'should we go with lithium or stay with lead', 'battery.chemistry'],
  ['house-battery', 'is lithium worth it', 'battery.chemistry'],
  ['house-battery', 'Should she have AGM or lithium?', 'battery.chemistry'],
  ['house-battery', 'what about lithium', 'battery.chemistry'],
  ['house-battery', 'how much would two new lithium batteries cost', 'battery.chemistry'],
  ['shore-power', 'does it come with the fifty amp service', 'trailer.inlet'],
  ['tires', '65 on the sticker of the trailer', 'vehicle.placardPayload'],
  ['tires', 'should I be using lt tires instead', 'tire.kind'],
  ['tires', 'Should I run 80 psi in them', 'tire.pressure'],
  ['cold-weather', 'can you put it in the tanks if the heater is bypassed', 'heater.isolated'],
  ['gas-supply', 'Do you recommend an adapter hose to a big cylinder', 'supply.adapter'],
  ['tow-fit', 'can I use surge brakes', 'trailer.brakes'],
  // What is so now is no limit, what is laden is not empty, what remains is not the label's.
  ['house-battery', 'The battery’s down to 30 percent, lithium', 'battery.makersDepth'],
  ['house-battery', 'batteries are already down to 40%', 'battery.makersDepth'],
  ['tow-fit', 'truck weighs 5,900 with us in it', 'vehicle.curbWeight'],
  ['tow-fit', 'the truck weighs 6,400 lb loaded', 'vehicle.curbWeight'],
  ['electric-tow-range', 'truck gets 9.5 mpg towing', 'solo.fuelEconomy'],
  ['tow-fit', 'Payload left 900 before tongue', 'vehicle.placardPayload'],
  ['hitch-setup', 'Top of the ball is 17 in', 'hitch.ballHeight'],
];

test.each(onlyAsked)('%s: “%s” does not tell %s', (topic, text, fact) => {
  expect(readAs(topic, text)).not.toHaveProperty([fact]);
});

/** The same words, told. */
const told: readonly (readonly [string, string, string, string])[] = [
  ['tow-fit', 'Truck is rated to tow 7,200 lb', 'vehicle.maxTrailerWeight', '7200 lb'],
  ['tow-fit', 'It can tow 5,000, will it do', 'vehicle.maxTrailerWeight', '5000 lb'],
  ['tow-fit', 'Can we tow it? Manual says 3,500', 'vehicle.maxTrailerWeight', '3500 lb'],
  ['truck-camper', 'The mark is 5 in behind the rear axle', 'camper.center', '-5 in'],
  ['truck-camper', 'The mark is 5 in ahead of the rear axle', 'camper.center', '5 in'],
  ['electric-tow-range', 'The trip is 210 miles one way', 'trip.distance', '210 mi'],
  ['spares-kit', 'We carry a spare. Do we need a jack?', 'spare.present', 'yes'],
  ['tow-fit', 'Do I need a controller, it has electric brakes', 'trailer.brakes', 'electric'],
  ['house-battery', 'Will my lithium battery last', 'battery.chemistry', 'lifepo4'],
  ['tires', 'Is 65 right? They are at 80 psi', 'tire.pressure', '80 psi'],
  ['house-battery', 'The battery’s down to 30 percent, lithium', 'monitor.stateOfCharge', '30 %'],
  ['house-battery', 'I can run it down to 20%', 'battery.makersDepth', '20 %'],
  ['tow-fit', 'truck weighs 5900 with me and a full tank', 'vehicle.curbWeight', '5900 lb'],
  ['electric-tow-range', 'truck gets 17 mpg alone', 'solo.fuelEconomy', '17 mpg'],
  ['tow-fit', 'how much payload left? payload 1480', 'vehicle.placardPayload', '1480 lb'],
];

test.each(told)('%s: “%s” tells %s: %s', (topic, text, fact, value) => {
  expect(readAs(topic, text)).toMatchObject({ [fact]: value });
});
