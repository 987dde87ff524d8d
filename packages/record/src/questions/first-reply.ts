import type { Urgency } from './shapes';

/** What is answered at once, at most forty words, before anything is reckoned. */
export const firstReplies: Readonly<Record<Urgency, string>> = {
  gas: 'Everybody out now. Touch no switch, make no flame. Close the cylinder only if it is on your way. From outside call the fire department, and stay out until it has been tested.',
  alarm:
    'Everybody out into fresh air now. A headache or feeling sick: call emergency services. Stay out until the cause is found. An alarm that chirps or is past its date is replaced before anyone sleeps inside.',
  smoke:
    'Everybody out and well away, and call the fire department. On the road: off the lane, people first, behind the rail. Nobody goes back in for anything.',
  heat: 'Stop using it: breaker off, or off the road. Let it cool and touch nothing that is melted. A hot wheel stands away from dry grass. Nothing goes on until someone has looked.',
  shock:
    'Nobody touches the trailer. Have the breaker at the outlet shut off, then unplug. It stays unplugged until an electrician has found the fault.',
  frost:
    'Hose off, heater off and cooled, then drain it, the tanks and the lines; faucets open, plumbing antifreeze in the traps. Never heat a sleeping space with a stove or a portable heater.',
  wheel:
    'Stop off the road, people behind the rail. Do not drive on, not slowly either. Nuts are tightened to the maker’s torque, and a hurt stud or hub is replaced, before it rolls again.',
  coupling:
    'Tow it no further: what is bent or cracked at the coupling lets go without a warning. Off the road, people away from the road, wheels chocked. It is looked at where it stands, or carried on a truck.',
  sway: 'Off the pedal. Trailer brakes by hand if there is a lever for them, wheel straight; no brakes of the vehicle, no speeding up. Then stop where it is safe, and tow it no further before the cause is found.',
  lift: 'Everybody out from under it and away from where it could roll or fall. Nobody reaches under. Chock the wheels only if that is safe. It is lifted again only on firm ground, on proper stands, by someone who knows.',
  doubt:
    'Until someone has looked: do not tow it, do not sleep in it, and switch off what worries you if that is safe. Anyone in danger or feeling ill: out, and call emergency services.',
  brakes:
    'Do not tow it until its brakes work. Stop gently off the road and keep people away from hot wheels. Plug, controller and brakes are looked at by someone qualified before the next mile.',
};
