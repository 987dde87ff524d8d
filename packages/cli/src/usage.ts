/** What the command line says of itself. */
export const usage = `Tarebook runs worked cases of a travel-trailer dealership.

  tarebook check [PATH …] [--json]          run cases and compare with what they expect
  tarebook judge FILE [--json]              one case, note or whole rig: the answer; - reads standard input
               [--spread N [--seed S]]      with chances, from N seeded draws over the ranges
               [--forms] [--everybody]      as it is said: ticket, phone, post, letter …; to everybody
               [--topic TOPIC]              of a whole rig, what one topic says
               [--asking ID]                which of the topic's askings is answered first
  tarebook judge SAVED.json [--json]        a saved answer, run again by the rules it was made by
  tarebook which FILE [--where COLUMN=VALUE …] [--json]   which of a catalogue's trailers, or vehicles
  tarebook offers [OPTION LINE] [--json]    on all of that line? or what changed on the lines, and why
  tarebook accessories [ACCESSORY [TRAILER or LINE]] [--json]   where it fits, what it weighs and does, who fits it
  tarebook sweep [--topic tow-fit] --vehicles F --trailers F [--case FILE] [--out F.csv|F.parquet]
               [--threads N] [--resume] [--json]
                                            every vehicle of one file against every trailer of another, CSV or Parquet
               [--spread N [--seed S]]      with the chance of each outcome beside each pair, from N seeded draws
               [--queue URL]                its parts done by workers on any machines that see the same folder
  tarebook worker --queue URL               does parts of sweeps from a queue, such as redis://localhost:6379
  tarebook sweep --compare WAS IS [--ledger FILE] [--json]   which pairs turned between two of them, and why
  tarebook catalogue WAS IS [PATH …] [--ledger LEDGER.json] [--json]
                                            what changed between two catalogues, in which cases and answers
  tarebook questions FILE [--json]          what messages ask and tell, the urgent ones first; FILE is a CSV table
                                            with a column text (and id, channel, asked_on, asker), or text or Markdown
                                            as it was pasted: an empty line, ---, a line “Name, time”, [time] Name: or
                                            From: begins the next message, # Phone says how they came
  tarebook again LEDGER.json [--json]       which of the answers given would be given differently today
  tarebook rules [TOPIC] [--json | --schema]   the topics there are, or one of them as a page
  tarebook rules TOPIC --diff VERSION [PATH …] [--json]   what changed since, and which cases it moves

check, judge, which, sweep and again take --house FILE, a dealer's own parameters, and --as-of DAY, such as
2026-11-01; which, offers and accessories take --catalogue DIR, a dealer's own catalogue in place of the invented one.
check, judge and rules take --topics FILE, topics of your own beside these: a module that exports
them, or their published JSON.

Exit code 0: done, all hold. 1: some cases differ. 2: bad input, said on standard error.
`;
