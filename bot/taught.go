package bot

import "heft/parser"

// taught are the answers to what a new groundworker asks of the trade. None holds a
// figure: what is asked of one piece is worked out, with what to type for it.
var taught = map[parser.Intent][]string{
	parser.TopicShock: {"Shock load: a piece falls and is stopped short. For a moment rope and block are pulled far harder than it weighs.",
		"The farther it falls and the shorter it is stopped, the harder.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicLetRun: {"“Let it run”: let the rope slide round the drum and slow it little by little, no hard stop.",
		"Every crew has words of its own: agree on them with the climber before the cut."}, // common practice, no source
	parser.TopicScale: {"Twice as thick, same length: about four times as heavy. Twice as long, same thickness: about twice as heavy.", // volume of a cylinder
		"The tree counts too. Ask for each: “how heavy is a white ash log 20 in x 8 ft”."},
	parser.TopicFarther: {"Yes: the farther it falls before the rope takes it, the harder it pulls. More rope in the line, and letting it run, make it less.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicSlack: {"As little as there can be: take it up before the cut. All of it is fall that comes on top.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicCreeps: {"Creeping with a load on: shout it, nobody under it, hands off the drum, the tail held. No wraps go on or come off under load unless the supervisor says so.", // common practice, no source
		"Before the next piece: at least one wrap more than those that crept, tested with a small piece.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicRunsAway: {"Shout it: everybody out from under it and away from the rope. Nobody grabs a running rope or reaches near the drum: let it run.", // common practice, no source
		"Before the cut: wraps by the heavy end, tested with a small piece.",
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicEdge: {"No loaded rope over an edge, a roof corner or a gutter: it cuts or burns the rope, and no figure here holds for it.", // common practice, no source
		"Lead it clear, with a block or from another anchor, before anything is cut. Ask the qualified arborist."},
	parser.TopicFork: {"A natural crotch drags far more than a block: it may not run, and it wears the rope."},
	parser.TopicWetWood: {"The water in the wood is in my weights: I plan on green wood, full of it, at its heavy end.",
		"Rain on leaves and bark comes on top of the weight. I have no figure for that."}, // common practice, no source
	parser.TopicIced:    {"Ice and snow are not in these figures: the piece is heavier. Have it knocked off first."},
	parser.TopicHotRope: {"Warm is friction, which holds the piece. Too hot to touch, glazed or smoking is not normal: stop, and that rope is not used again until the qualified arborist has seen it."}, // common practice, no source
	parser.TopicShakes: {"A stem shakes when a piece is caught: that is load on it. Let the next one run farther, or cut it smaller.", // common practice, no source
		"A crack, a new lean or soil that moves at its foot: stop, everybody away from it, and the qualified arborist looks at it."},
	parser.TopicTieEnd: {"Tied at the butt, the tip drops and hangs its whole length below. Tied at the tip, the butt drops, hangs as far below and may swing into the stem.", // common practice, no source
		"No room below: tied at its balance point, or with a line at each end, it comes off nearly level. Or cut it shorter. The qualified arborist says which.", // common practice, no source
		"For a figure: “where does a 14 in red oak limb 22 ft balance”."},
	parser.TopicShortRope: {"Then nothing is cut: where the rope ends above the ground, the piece falls. Take a longer one; no knot runs through a block.",
		"For a figure: “how much rope for a hitch at 45 ft”."},
	parser.TopicSpins: {"A tag line keeps it from turning, held from well outside. Nobody grabs the piece or stands where it may swing."}, // common practice, no source
	parser.TopicStand: {"Out of the drop zone, out of the bight and out of line with the rope: where the qualified arborist says.", // common practice, no source
		"How far away I have no figure for: a piece swings, rolls and bounces."},
	parser.TopicLanded:   {"Hold it until it lies still and whoever is in charge calls for slack. Then ease it off slowly, and nobody steps in before."},                    // common practice, no source
	parser.TopicTwoRopes: {"Two ropes never share evenly: each has to be good for all of it, so I plan on one. Ask the qualified arborist."},                                // common practice, no source
	parser.TopicWrapsOff: {"Too few: it runs away. Too many: it does not run by itself and comes down in jerks.", "For a figure: “600 lb limb, 3 wraps, two on the rope”."}, // common practice, no source
	parser.TopicWhoToAsk: {"The qualified arborist on site, before the cut. In doubt it waits."},
	parser.TopicCalls: {"Not sure of a shout or a signal, or nobody to be seen or heard? Hold what you hold, and ask. Whoever calls stop, it counts.", // common practice, no source
		"Every crew has words of its own: agree on them with the climber before the cut."},
	parser.TopicWhenLower: {"When the climber calls for it and nobody is under it. Not sure of the word? Hold, and ask."}, // common practice, no source
	parser.TopicHowFast: {"Slow and even, without a hard stop: about its weight on the rope. A snub or a drop pulls far harder.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicStretches: {"Every rope stretches under load, and the piece comes that much lower. How much I do not work out: its maker says.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicGloves: {"These figures are for hands in gloves: gloves on before the rope runs."},
	parser.TopicHand:   {"The wraps go on the drum, so many that an open hand holds the tail. How many I can tell, from what the piece weighs."},
	parser.TopicWrapsWhen: {"Before the cut, with the slack out and the tail in a hand. None go on or come off under load unless the supervisor says so.", // common practice, no source
		"For a figure: “600 lb limb, 3 wraps, two on the rope”."},
	parser.TopicFromWraps: {"What a piece weighed no number of wraps tells: rope, drum and hands hold too differently.",
		"By its sizes I can: “how heavy is a white ash log 20 in x 8 ft”."},
	parser.TopicHigher: {"How high the block hangs changes nothing of its load, lowering steady: about twice the piece. More on a snub or a drop.",
		"Higher takes more rope, and the wood there is thinner: ask the qualified arborist about the anchor."}, // common practice, no source
	parser.TopicBigger:    {"Then the figures do not hold for it, and nothing is cut yet. Type it anew by its own sizes: “14 in red oak limb, 22 ft”."},
	parser.TopicOverLimit: {"Over the limit: its heavy end is more than a piece may weigh on this job. Cut it smaller, or the job's arborist or a supervisor confirms it below the answer."},
	parser.TopicGrowsOn:   {"Ivy, nests and the like are not in my weights: the piece is heavier. Have them taken off first."},
	parser.TopicLoose:     {"Then nothing is cut: first it sits tight again and the qualified arborist has looked at it. A piece hangs already? Nobody under it, and ask."},
	parser.TopicMeasure: {"Across at the butt, over the bark; where it is not round, its thickest way. A limb's length from the cut to its tip, a log's from end to end.",
		"A log that tapers: “20 in butt, 14 in tip, 8 ft white ash log”."},
	parser.TopicLogOrLimb: {"Limb: with its branches on. Log: stem only, no brush. Say which: they are weighed differently."},
	parser.TopicKnots: {"How to tie a knot, and which, the qualified arborist shows and checks. What one takes off the rope's strength I can tell.",
		"For a figure: “600 lb limb, is my rope strong enough, it breaks at 16,000 lb, bowline”."},
	parser.TopicShocked: {"A hard stop may hurt a rope where nobody sees it. Put it aside: it is not used again until the qualified arborist has looked at it, and at block and sling.", // common practice, no source
		"How hard it pulled: “400 lb log drops 4 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicPlace: {"As close below the cut as it goes: all between them is fall. Where on the stem, the qualified arborist says.", // common practice, no source
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicSameThere: {"Yes: the sling and the shackle that hold the block see all that the block sees, about twice the piece, lowering steady. More on a snub or a drop.",
		"For a figure: “block load for 600 lb, 60° between the legs”."},
	parser.TopicMoreRope: {"The more rope between piece and drum, the more it stretches, and the softer the stop. Short rope is pulled far harder.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.TopicButtShort: {"The stem is thickest at the butt: there a short piece weighs as much as a long one near the tip."},
	parser.TopicWindy: {"Wind is in none of my figures. How much is too much, the qualified arborist on site says; in doubt, nobody is up there.", // common practice, no source
		"From a gale on, 39 mph or 62 km/h, I give none."},
	parser.TopicChoked: {"Choked, a sling bends hard round itself where it holds itself: there it takes less. In a basket two legs carry.",
		"For a figure: “sling 4,000 lb WLL, choked, 600 lb limb”."},
	parser.TopicDropped: {"Lowered: on the rope all the way, about its weight on it. Dropped: it falls free until the rope stops it, and that pulls far harder.",
		"For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
}

// ofAnswers are the answers to what is asked of ours, and of us.
var ofAnswers = map[parser.Intent][]string{
	parser.TopicHeavier: {"Heavier than I said? Stop there: tell the supervisor and the qualified arborist, and have what held it looked at.",
		"Sizes by eye, another tree, forks, ice: I see none of them. Weigh the next piece by its own measured sizes before it is cut.",
		"A weight from a scale goes before any tree: “600 lb limb”."},
	parser.TopicTrust: {"Nobody knows before it is weighed: mine is an estimate from the sizes you type. Measure them, and plan on the heavy end.",
		"“show the numbers” after an answer says how it was worked out."},
	parser.TopicItsUnits: {"Each figure has its unit behind it: lb is pounds, kg is kilograms. I answer in the units you type.",
		"“use kilos from now on” or “pounds and feet from now on” keeps it for the job."},
	parser.TopicKept: {"Every question here stands in the log with its answer.",
		"The log is with the supervisor: on their home tab in the workspace, or “heft log” on the machine.",
		"I do not show one person's questions to another."},
	parser.TopicSigns: {"I sign nothing: what I give is an estimate, and I have not seen the tree.",
		"Whether it holds, the qualified arborist on site says and signs."},
	parser.TopicWhoAreYou: {"No person: a calculator that reads what you type. Its figures come from formulas and printed tables, and it learns nothing from talk."},
	parser.TopicMistyped:  {"Type it again, right: I answer anew, and the log keeps both. Was the wrong figure used already? Stop, and tell the supervisor."},
	parser.TopicOffline:   {"Without a signal there is no answer from me: no figure, no cut that needs one. Ask the qualified arborist."},
	parser.TopicRange: {"Trees of one kind differ, and sizes are by eye: so a range. Likely is the best estimate; plan on the heavy end.",
		"“show the numbers” after an answer says how it was worked out."},
	parser.TopicWhyAsk:    {"Because I see neither the tree nor the gear: mine is an estimate. The qualified arborist sees both, and decides."},
	parser.TopicTrees:     {"Type its name: where I do not know it, I ask. Nobody knows it? Type “hardwood” or “softwood”, and I plan on the heaviest of them."},
	parser.TopicPhoto:     {"I read words, no pictures: type tree, diameter and length, like “14 in red oak limb, 22 ft”."},
	parser.TopicStartOver: {"Type the next piece whole: it stands by itself. “Clear the job” takes out what is kept for the job."},
	parser.TopicSetJob:    {"Type what holds from now on: “limit 600 lb”, “rope breaks at 16,000 lb”, “arborist Dana”. “What's the job?” shows what is kept, “clear the limit” takes it out."},
	parser.TopicDoubt: {"Then do not use it. Type the piece again whole, with measured sizes: “14 in red oak limb, 22 ft”.",
		"“show the numbers” after an answer says how it was worked out."},
	parser.TopicNote: {"I take no notes and remind nobody: the log holds what is asked here and its answer.",
		"For the job I keep limit, gear, crew and arborist: “limit 500 lb”."},
	parser.TopicStandBy: {"A message confirms nothing: tap “Confirmed on site” below the answer. The job's arborist and supervisors have it.",
		"Every question here stands in the log with its answer."},
	parser.TopicNoSize: {"Measure it. Where nobody can, type from the least to the most, and I plan on the most: “red oak limb 12 to 16 in, 20 to 24 ft”.",
		"A weight from a scale goes before any tree: “600 lb limb”."},
}

// meant are words of the trade, as they are used here.
var meant = map[parser.Intent][]string{
	parser.WordBlock: {"Block: the pulley up in the tree that the rope runs through. It carries about twice what hangs on the rope."},
	parser.WordDrum:  {"Drum or bollard: what the rope is wrapped round at the foot of the tree. Its friction holds most of the piece, the hand the rest."},
	parser.WordTagLine: {"Tag line: a second rope on the piece, to turn it or to hold it aside. It guides and does not carry; whoever holds it stands well outside.",
		"It is tied far from the rope that carries: the farther, the better it turns the piece."},
	parser.WordBight:    {"Bight: a bend of the rope, and the room inside it. Nobody stands there: it snaps tight and takes them along."}, // common practice, no source
	parser.WordNegative: {"Negative rigging: the block is below the cut, so the piece falls before the rope takes it. That pulls far harder than lowering.", "For a figure: “300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”."},
	parser.WordRedirect: {"Redirect: one more block, which turns the rope on its way. It is loaded too, the more the farther the rope turns there.",
		"For a figure: “600 lb, rope turns 60° at the top block, 30° at the redirect”."},
	parser.WordHitched: {"“Hitched at”: how high above the ground the block hangs that the rope runs through. How much rope it takes follows from it."},
	parser.WordButt:    {"Butt: the thick end, at the cut. Tip: the thin end."},
	parser.WordSpar:    {"Spar: a stem that stands without its limbs."},
	parser.WordTackle:  {"The first number is how many parts of the rope pull on the load. 3:1: you pull about a third of it and what the blocks rub away, and haul three times as far as it moves.", "For a figure: “two of us on a 3:1, can we lift 300 lb”."},
}
