/**
 * What says a topic outright, whatever else a text is like: of one sign each of its forms must stand in
 * the text. An id that no topic has is none.
 */
export const outright: Readonly<Record<string, readonly (readonly RegExp[])[]>> = {
  // Who rides along and what they weigh, beside a label and what the trailer puts on it.
  'tow-fit': [
    [
      /(?<!\p{L})(?:wife|husband|hubby|myself|i|me|us|us two|two of us|kids|dog|people|passengers|everybody|family)(?: (?:and|are|is|weigh|weighs|about|total|at|together|i|me)){0,3}[ :=]{1,2}\d{2,4}(?![\d.]|,\d| ?(?:years?|yrs?|miles?|mi|ft|feet|amps?|psi|%))/iu,
      /(?<!\p{L})(?:payload|pyld|sticker|door (?:label|jamb|tag))(?!\p{L})[^.?!;\n\d]{0,24}\d{3,4}|\d{3,4}(?: ?lbs?| ?pounds?)?(?: of)? payload/iu,
      /(?<!\p{L})(?:tongue|tounge|hitch weight|trailer|camper|over|overloaded|too much|left|legal)(?!\p{L})/iu,
    ],
  ],
  // A tire’s pressure by its sidewall, beside another one.
  tires: [
    [
      /(?<!\p{L})side ?walls?(?!\p{L})/iu,
      /(?<![\d.,])(?:[2-9]\d|1[0-2]\d)(?![\d]|[.,]\d| ?(?:ft|feet|inch|"|years?|yrs?))/u,
      /(?<!\p{L})(?:psi|sticker|label|placard|max|pressure|put|run|pumped|aired|filled)(?!\p{L})/iu,
      /^(?![\s\S]*(?:dent|delam|panel|bubble|fiberglass|damage|insurance|crack|wavy))/iu,
    ],
  ],
};
