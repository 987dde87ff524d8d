/**
 * Words of everyday English that lie a letter from a word of danger, and are none: nobody who writes
 * “since” means “singe”. What is missing here may be misread as danger, which costs a look.
 *
 * Each stands in the general list of English words of the npm package `word-list` 4.1.0 (MIT), against
 * which they were compared on 2026-11-29; which of its words lie near one of danger was chosen here.
 * `cust` alone does not: it is how the counter writes “customer”.
 */
export const lookalikes: ReadonlySet<string> = new Set(
  `
  cust  cash caller callers abound acres agent aground alight alike aline angler ankle arches arching arcking ardent arena ashes
  babble babbled babbling backer bacterias bade bagging bailing bake baked bakes baking balked balking
  bandaging banding bank banked banking banning bard bards barging barked barns basing basked batter
  battering batters battle bawling baying beading beak beaker beaks beaning beard bearding beards
  beating beats beavering bedside beefing beets beggaring bellow bellowing bells bereaving bests bets
  better bewaring bides billowing binding bitter bland blanker blankest blaster blazer bleak bleaker
  bleat bleated blending blight blindingly blobs bloc blockaded blockhead blocs blogs blot blots
  blotted bluster boar boars boat boated boded boding bonding booing bootie bored boring bounded bowel
  brace braces bracing brain brave braves braving brawn braying breach breaching bread breading breads
  breadth breasting breather breathers breeding brighten brightens brightest brink brisked brisker
  briskest broiling broker brow browner brows browsed browsing bucked bucking budge budging 
  bugging bulking bulling bummed bummer bumpier bungle buns burble burbled burbling burdening burger
  burped burping burps burred burring burrs busied bust butler butte butted buttery buttes bypast
  bytes cackle cackles cackling calking callusing calming canter canvass caper cards careering
  carolling carton catchy cease chair chaired chairs chamber champ champed change charge charged
  charges charmed charted charter chartered cheap check checks cheek cheer chick chicks child chile
  chili chimp chin chins chip choking chords chose chowed christens chuck chuckling chucks
  chummy chunky cider clam clamber clammed clams clank clanks clap clapped clasp clasped clinching
  clink clinking clinks cloak clone closer closet clove clover cluck clucking clucks clump clumped
  clung coach coding cods coiling coils coking collector colon combing compensation compiling
  complying concealed conceited conceived concerted concession concessions conclusion concurred
  condemnation condemned condition conditional conditioned conditions conductor conferred conferrer
  confessed confession connected connecter connecters connection conserved consoling consonant
  constancy constantly constraint consultant contestant contraception contraction contractions
  converged converges conversation conversed converses convertor convertors convulsed convulsion
  cooing cooping coping corals cores coring corking corks corns corps correctly corrector cove covert
  coves covet coveted cower cowered cowing coyer crabbing cracker cradled cradling cramp cramped crank
  cranked cranking cranks crash crashed crass craze creaky cream create creed creek creepy crepe crest
  crewed crimes crinkling crises crisp crisply crisps croak croaked crock crocks crookeder crooned
  crops crouch crouching crows crumblier crumple crumpling crusty crutch crypt culling curds currant
  cutter daft dagger dancer danker darken decayed decrees departmental deportment depriving deranging
  derive deriving detection detracted devise disclosed disconcert disconcerted discontent discontented
  discovered dishonored distributor dive diving doled doomed dope doped dopes dopy dosed doted doubly
  dozed drafty drivel driveling driven driver drool dross drove drowse drugged drugging dunce edged
  eery eighteenth eighth eighty electrician electronic electronics electrons embed emptier emptiest
  evaluate evaluated evaluates ever exclusion expansion expend expended exploited explore explored
  expounded expulsion faced facet facing fainter faked faking falter fame famed fare fared faring
  fasted fasten fated father fating fatten fattier faulty fazed fazing feeder feeding feeds fees feint
  feinted fended ferry fester fetter fifteenth fifty filed filing filleting filming filth finer firmed
  fitter fixed fizzy flailed flailing flake flakes flares flashest flashiest flashy flask flatter
  fleeing flesh fleshed fleshes fleshing flicked flied flies flint flipper flits flitting flogs floss
  flour flout flows flurry flusher fluxing fogey fogy fonder food forayed foretaste forget forgo
  forsaking fort forte forts forty foster fourteenth fourth freckling freed freeing freezer freezers
  friend friends frieze friezes fringe front fulling fulls funneling furling fury fuss fussed
  fusses fuzed fuzes fuzz gabbed gabbing gargle gasping gavel gazetting genie gill glass glassing
  gloving glowering gong goody goofy goring grabber grams grand grasp grasps grassy grave graved
  gravely graven graver graves greasy greet grid grin grinning grins gross grovel grow growing grown
  grows grubbed grubbing gutting hales halfway hamming handler handy hangar hanker hardy hares harry
  harts hastes hatch hats haves header healed healer healing heaped heaping hearing heartache heather
  heaved heaving heeded hemming herded hinds hinging hipped hipping hither holder holier hooped
  hooping hooter hoped hoping hopper hording horse horst host hunger hunts hurls hurray hutch
  huts interaction interception interjection interjections intervention jacket jackknives jilted
  jingle jotted juggle jumpier jumpy keels keens kerosine knack knocker lacked lacking lacks lading
  lager lambs lames lancing lander laps larding large larges lash lath lathed lauding leach leafy
  leaner leaped leaping leaps learned learning learns lease leased leasing least leer lending lens
  leper levee levees licked licking licks lies lightening lightninged lilted lilting lilts limes
  limitless linen liner liners linger listed listing lists littler liver loaned loaning loans lobes
  locker locket locks lodger lofted lofting lofts logger looked looking lookout looks loony looser
  lopes loping loser losers loss losses louse louses lover loves loving lucked lucking lucks machinery
  machinist maker males malted march marches mares market mars marts masks massing masters matchless
  math mattes meal medal mental menus messing metabolic mete meted meteor metes mikes milks mills
  mimes minds mines minks mints mires misting misusing mites mixes moaning modes moles molted mooed
  mooning moped mopes mound mourning mover movers movies mowed mules mush mussing musty muter mutters
  napped nearby neatly needless neighborly nervously neural newer nigh nights nineteenth noisy noose
  notching noting numbed opening openings otter outset outwardly overeat overhead overheads overhear
  overheard overhears overheated overheating overkill overrating oversight oversights overweight pace
  paces pacts paddle pain pains palace palate palled palling palls pancaking pane panes panned pant
  paranoia parks parrakeet parrakeets parsed parsing passer pate paused pausing peace peal pealing
  pease pecks peddle peeking peering peeving penal penknives penned penniless peonies peony pepped
  pepping petal pickle picks picnicking piddle pierce pierces piers pies pikes piles pilled pilling
  pills pined pines pinked pint pitch pitching pivot plaice plane pleas plied plies plopped plopping
  plot pluming plumping plums plunder plunge plunged plunges plunging plus point poker pokey
  polled polling polls ponder pooping poplar popularity pouncing powdery pregnancy preys 
  pricklier pride prided prime primed prince print prison prize prized profane projector projectors
  prompting prone proposing prosecutor prospector protected protection protestor protestors protractor
  provably puffer pulley pulped pulping pulps pulsating punch punching punctuate punishing punned
  pupped pupping purposing purse pursing pusher pushers pusses quark quarterly quartet quick quilt
  quilts quips quote rage raided raids rainy raised ramble rambling rams ranger rapped raps rasps
  ratted rattler rattlers ready reams reaps rears rebounded reeds reefed refer refuge refute rehearsed
  reined reins relay relied relies rends reside resounded reuse revere revered reverie reverted
  rippled river robber robbing rocker rocket rocketing roles roller romps rooked rooking roost rooted
  rose rotated rouge rounder route routed rubble rubier ruined ruining ruins rumple rumpling rumps
  runway ruse rustled rutted sake sand sanding sands sapped sawing scale scaled scales scaling scalp
  scalping scaly scar scarf scarfed scarred scars scattered scold scolding scolloped scope scored
  scotch scram scramming scrap scrapping scraps scratch scratched scratches scrawling screwy scripting
  scrupling scuff scuffed seam seamed seaming sear seared sedated seed seeding seen sell sells 
  senior sensory serve serving seventeenth seventies sever sewing shack shade shaded shades shading
  shadowing shady shaft shafted shaken shame shamed shames shaming share shared shares sharing shark
  sharking sharks sharped shave shaved shaves shaving sheaf shed sheen sheep sheer sheered sheering
  shell shelled shells sheltered shes shied shies shifty shimmering shingle shingling shinning shins
  shipped shipping shirt shirted shoed shone shooed shooing shook shoos shoot shopped shopping shops
  shore shored shores shoring shorn shout shovel shoveling shovels shower showering shown showy shrank
  shrew shrewd shrink shrinking shriveling shrub shuck shucked shucking shutter shuttered sicker
  sidewalk sidewalks sidling siege sift sifted silks sill silvering simmer since sine singer singly
  sinned sinning sins sinus sipped sipping sire sired sires siring siting sits sitting sixteenth sized
  sizing skated sketch skewering skill skims skipped skipping skits skulk slain slake slaked slakes
  slaking slash slated slaying slays sleek sleet slick slicker slime slims sling slinging slings slink
  slinking slinks slipper slivering sluice slummer slung slunk small smalls smart smear smeared smock
  smocked smocking smoker smote smothering snacking snagging snare snared snaring sneak sneaking
  sneering snicker snide snipped snipping snitch snooty snort snuck snuff snuffed soar soared sock
  socked socking sold soldier soldiering sole soled soli sopped sopping sort sowed sowing sows spade
  spank spanking spankings spanks spanning spans spar sparer sparkling sparring spars sparse spate
  spats spatter spattered spatting spay spayed spaying spays spear speared speck sped speedy spell
  spelled spells spend spending spice spied spies spill spindlier spindly spine spines spire
  spiriting spite spites spiting splat splattered splice splint splinting spoke spore sport sprang
  spreading spreed sprig sprigs springy sprint sprinting sprints sprung spry spying squeaky
  squirrel squirreled squirrelled squirrels stabs stack staff staffed staged stags staid stair stake
  staked stakes staking staled stalk stall stammering stanch stanching star stare stared staring stark
  starlight stars stated stave staved steadying steak steaks steal stealing steamy steep steeping
  steeps stem stemming stems stews stick stickier stickler sticklers sticky stiff stiffed stingy stint
  stints stitch stock stocked stocking stockings stoke stoked stoking stole stolid stomped stomping
  stone stooped stooping stopper stoppered stoppering store storing stork stormy story stowed stowing
  stows straddled straighten straighter strain stranger strangers strangest strangle strangled
  strangles straw stray strayed strays stream streaming streams stretcher stretchers strew stringier
  stringy stripe striped stripper stript strode stroke strong strongest strove struck strums strung
  stun stunk stuns stunt stutter stuttered subverted suing suits summed sundae sundry sung sunk
  supported supposedly swabs swaggering swallowed swans swapped swaps swats swear sweat sweep sweller
  swept swift swig swigging swigs swill swilled swindle swindling swine swiveling swivelled swore
  swung syringing tablet tablets tackle tacks taken taker takers tale tales tamed tames tangle
  tangling tangs taper tasks tasty taxed taxes teaks teaming teams teas teasing teats teems tees tenth
  testified thanks thee theme these thicken thicket thickly thin thinker thinly thins thirteenth thong
  thorough thought threat threats three throb throbbing thronging tided tides tighter tiled tiles
  tiling timer timers ting tinge tingeing tinging tinkle tinkling tinseling tinted tinting toeing
  toffy toiled tomes toning torch torched torching tost toting touchy tough tower toying traces tracts
  train trainer trait tramped trapper trawl trawler treat treed trend trick tricks tripos trough
  trowel truce trump trumping trunk tsars tuck tuned turfed turfs turner tutor twee tweed twentieth
  twentieths twine twingeing twinkling twister tying typed types tzars udder unsuitable untie
  uselessly valor value vanquishes velvet vending vends venturing vesting vests vets vetting violation
  violet wading wafer wafts wager waging waiter walker wallop walloped wands wanes waning wanner
  warded warding warier warred warring watts wave waver waving wealthier weaning wearing weaver wedded
  weeded weeds weeks wees weigh weighs weighty weirdo welder welders welted were whale wherever whiten
  whiter whittle whole whom widow widows wielded wigging willow wine wined wines wining winner wintery
  wiped wipes wiping wises wives wizes wobbliest woks wonder wondering wonders woody wooly wording
  words wordy wore worming worms worsen worst wriggle wriggles wriggling wright wring write yacked
  yakked yellowest zoned`.split(/\s+/),
);
