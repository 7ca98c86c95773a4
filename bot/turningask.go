package bot

import "heft/parser"

// turningAsks ask about a word that could turn the meaning round by what it
// leaves open, and show what to type instead.
var turningAsks = map[parser.Turning]string{
	parser.TurnsDenied:   "%s: I do not work from what is not so. Leave that out, or type what is, like “red oak limb 14 in, 22 ft long”.",
	parser.TurnsBack:     "%s takes something back, and I cannot tell what. Type all of it as it is now, like “red oak limb 14 in, 22 ft long”.",
	parser.TurnsPiece:    "%s: which piece is it then? Type all of it as it is now, like “red oak limb 14 in, 22 ft long”.",
	parser.TurnsPart:     "%s: type that part with its own sizes, like “red oak log 20 in across, 4 ft long”. Split down the middle, plan on the whole log.",
	parser.TurnsSum:      "%s: I add nothing up from words, and take nothing off. Type it as it comes out, like “650 lb” or “4 wraps”.",
	parser.TurnsCompared: "%s than what? Type one piece with its own sizes, and what it may weigh as “limit 500 lb”.",
	parser.TurnsSeveral:  "%s of what? Type what holds for one, like “red oak limb 14 in, 22 ft long”. One piece a message.",
	parser.TurnsLength:   "%s: for one foot or metre type that as the length, like “red oak log 20 in across, 1 ft long”. A limb tapers: no one figure holds along it.",
	parser.TurnsPercent:  "%s of what? What passes each block type like “sheave efficiency 0.9”, a share of what a rope breaks at like “design factor 10”. I take no share of anything else.",
	parser.TurnsPeople:   "%s: how many is that? Type how many hold the rope, like “two on the rope”, or leave it out.",
	parser.TurnsRadius:   "%s of what? Of wood, type twice that: the thickness right across, like “14 in across”.",
	parser.TurnsMeasure:  "%s: that I cannot tell from here. Measure it or decide it, and type it, like “hitched at 35 ft” or “14 in across”.",
	parser.TurnsAnchor:   "%s is none of the piece: the top block and its anchor see about twice what hangs there, more with a snub or a drop. Type what the piece may weigh, like “limit 500 lb”, or the gear's rating, like “block 4,000 lb WLL”.",
	parser.TurnsSlack:    "%s adds to the fall. Type how far the piece falls with it counted in, like “drop 4 ft”.",
	parser.TurnsLanding:  "%s adds to the way down. Type how high the hitch is above where the piece lands, like “hitched at 60 ft”.",
	parser.TurnsBound:    "%s is no one number. Type the most that it can be without such a word; what a piece may weigh as “limit 500 lb”.",
	parser.TurnsOpen:     "%s: how many is that? Type the number, like “4 ft”.",
	parser.TurnsPole:     "%s: a pole with wires or a lamp on it? Then stop: keep out and call the utility. If it is the stem that is left of the tree, type it as one, like “red oak log 20 in across, 4 ft long”.",
	parser.TurnsSuch:     "%s: how long is that? Type it, like “9 ft long”.",
}

// plainly asks about the words in doubt and about nothing else.
func plainly(s speaker, ask *parser.Ask) string {
	words := quote(ask.Words)
	if turningAsks[ask.Turning] != "" {
		return s.say(turningAsks[ask.Turning], words)
	}
	return s.say(plainAsks[ask.Kind], words)
}
