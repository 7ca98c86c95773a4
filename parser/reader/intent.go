package reader

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/senses"
	"heft/parser/stops"
	"heft/parser/talk"
	"heft/parser/turning"
)

// fieldIntent is what a fact asks for by itself: nobody tells the tie or the
// fall without wanting to know what it does.
var fieldIntent = map[parser.Field]parser.Intent{
	parser.DropHeight: parser.AskDrop, parser.RunLength: parser.AskDrop,
	parser.Tie: parser.AskRaise, parser.BlockHeight: parser.AskRaise, parser.LimbAngle: parser.AskRaise, parser.BlockBehind: parser.AskRaise, parser.BlockOut: parser.AskRaise, parser.Closed: parser.AskRaise,
	parser.Apart: parser.AskLift, parser.LoadHeight: parser.AskLift, parser.WinchPull: parser.AskLift, parser.Parts: parser.AskLift, parser.Efficiency: parser.AskLift, parser.PersonPull: parser.AskLift,
	parser.Payload: parser.AskTree,
	parser.LineOut: parser.AskSwing, parser.Sideways: parser.AskSwing, parser.StartAngle: parser.AskSwing,
	parser.ObstacleOut: parser.AskSwing, parser.ObstacleHeight: parser.AskSwing,
	parser.SecondTie: parser.AskBalance, parser.LegAngle: parser.AskBalance, parser.SecondLeg: parser.AskBalance, parser.SideBranch: parser.AskBalance, parser.SideBranchOut: parser.AskBalance,
}

// serves are the facts that another question makes use of too.
var serves = map[parser.Field][]parser.Intent{
	parser.Apart: {parser.AskLower, parser.AskDrop, parser.AskBlockLoad}, parser.Parts: {parser.AskRope}, parser.PersonPull: {parser.AskLower, parser.AskRaise}, parser.LineOut: {parser.AskBalance}, parser.Sideways: {parser.AskBalance, parser.AskRaise}, parser.Tie: {parser.AskBalance, parser.AskAnchor},
	parser.StartAngle: {parser.AskAnchor}, parser.LimbAngle: {parser.AskBlockLoad}, parser.LegAngle: {parser.AskGear},
}

// intentOf says what the message asks for.
func intentOf(rd *reading.Reading, q parser.Question) parser.Intent {
	words, besides, hello := senses.Intents(rd)
	asked := allAsked(rd, q, words, besides)
	if q.Has(parser.Payload) && !q.Has(parser.Limit) && slices.Contains(asked, parser.AskCutPlan) {
		return parser.AskTree // "how many logs go on a 7k trailer"
	}
	if q.Noted(parser.TagPull) && (q.Has(parser.Sideways) || rd.Before.Has(parser.Sideways)) {
		return parser.AskBalance // "swing a limb, 8 ft to the side, how much pull on the tag line"
	}
	if q.Noted(parser.NoteEitherEnd) && !slices.Contains(words, parser.AskRaise) {
		return parser.AskBalance // "butt tied or tip tied, hitch 12 ft above the cut"
	}
	if placesInLift(rd, q) && !standsUp(rd) {
		return parser.AskLift
	}
	for _, in := range lexicon.Special {
		if in == parser.AskLift && q.Has(parser.Turn) && !q.Has(parser.Parts, parser.People, parser.WinchPull) {
			continue // "lifting 300 lb, rope turns 45°": what the block carries
		}
		if in == parser.AskBalance && q.Noted(parser.TieWanted) && slices.Contains(asked, parser.AskLift) && travels(rd, q) {
			continue // where to tie so that the blocks do not meet: how far it comes up
		}
		if in == parser.AskRaise && slices.Contains(asked, in) && (hoists(rd, q) || travels(rd, q)) {
			return parser.AskLift // "raise 400 lb on a 3:1": nothing that could stand up
		}
		if slices.Contains(asked, in) {
			return in
		}
	}
	if slices.Contains(byTheWay(besides, q), parser.AskRope) && q.Has(parser.RopeLength) && q.Pieceless() && !q.Has(parser.Wraps, parser.People) {
		return parser.AskRope // "alcanza una cuerda de 150 pies para bajar": there is nothing to lower yet
	}
	if reachOnly(rd, q, asked) {
		return parser.AskRope
	}
	if onlyLowering(rd, q, words) {
		return parser.AskBlockLoad
	}
	return plainIntent(asked, q, (hello || len(rd.Elems) == 0) && !turning.Measured(rd) && len(rd.Guessed) == 0 && !bounds.EndOfPlan(rd))
}

// reachOnly says whether it is asked of the rope if it reaches, and lowering only tells what
// for: "does the rope reach to lower it to the ground", in a talk that has told the rest.
func reachOnly(rd *reading.Reading, q parser.Question, asked []parser.Intent) bool {
	if !slices.Contains(asked, parser.AskRope) || !slices.Contains(asked, parser.AskLower) || len(q.Quantities) > 0 || !q.Pieceless() {
		return false
	}
	purpose := func(i int) bool { // "to lower it", "para bajar"
		first, _, _ := strings.Cut(rd.Word(rd.Elems[i]), " ")
		return rd.Cued(rd.At(i-1), lexicon.CueTowards) || rd.Cued(rd.At(i-1), lexicon.CueFor) || rd.In.Cued(first, lexicon.CueFor)
	}
	return !rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskLower && !t.Besides && !purpose(i) || rd.Elems[i].Plays(parser.Wraps)
	})
}

// allAsked is what the words ask for, and what the facts do.
func allAsked(rd *reading.Reading, q parser.Question, words, besides []parser.Intent) []parser.Intent {
	asked := words
	if q.Noted(parser.NewTree) && !q.Pieceless() {
		asked = slices.DeleteFunc(asked, func(in parser.Intent) bool { return in == parser.AskTree }) // its first piece
	}
	if q.Has(parser.Weight) && rd.Has(lexicon.MarkTug) && slices.Contains(besides, parser.AskBalance) {
		asked = slices.DeleteFunc(slices.Clone(asked), func(in parser.Intent) bool { return in == parser.AskWeight }) // "how much does he pull on the tag, the limb weighs 280 lb"
	}
	if len(asked) == 0 && !q.Has(parser.HitchHeight, parser.Wraps, parser.Turn) && !pulls.PullsAtRedirect(rd, q) {
		asked = byTheWay(besides, q)
	}
	if len(words) == 0 && slices.Equal(asked, []parser.Intent{parser.AskBalance}) && asksPounds(rd, q) {
		asked = []parser.Intent{parser.AskWeight} // "tip tied, how many pounds"
	}
	if rd.Has(lexicon.MarkTug) && q.Has(parser.Sideways) && !slices.Contains(asked, parser.AskSwing) {
		asked = append(asked, parser.AskBalance) // "pull a limb 4 ft aside"
	}
	if q.Has(parser.SecondTie) {
		asked = append(asked, parser.AskBalance) // the ties are those of two lines
	}
	if q.Has(parser.Turn) && len(asked) == 0 && q.Has(parser.HitchHeight) {
		asked = append(asked, parser.AskLower) // whose answer says what the blocks carry too
	} else if q.Has(parser.Turn) || len(asked) == 0 && !q.Has(parser.HitchHeight, parser.Wraps, parser.People, parser.Parts) && slices.ContainsFunc(q.Notes, parser.Redirecting) {
		asked = append(asked, parser.AskBlockLoad)
	}
	if slices.Contains(besides, parser.AskRope) && q.Has(parser.RopeLength) && q.Has(parser.HitchHeight) && q.Pieceless() && !q.Has(parser.Wraps, parser.People, parser.WinchPull) {
		asked = append(asked, parser.AskRope) // "soga de 200 ft, 3 partes, 50 pies de alto, ¿me alcanza?"
	}
	if len(words) == 0 && slices.Equal(asked, []parser.Intent{parser.AskRope}) && q.Has(parser.Ratings...) && !q.Has(parser.RopeLength, parser.HitchHeight, parser.DrumAway) {
		asked = []parser.Intent{parser.AskGear} // "polea de 3000 kg wll, rama de 200 kg, alcanza?"
	}
	if slices.Equal(asked, []parser.Intent{parser.AskRope}) && q.Has(parser.RopeDiameter) && !q.Has(parser.RopeLength, parser.HitchHeight, parser.DrumAway) && gear.ThickEnough(rd) {
		asked = []parser.Intent{parser.AskGear} // "is 1/2 in rope enough for a 900 lb log"
	}
	if slices.Contains(asked, parser.AskLift) && q.Has(parser.Ratings...) && gear.ApprovalAsked(rd, q) {
		asked = []parser.Intent{parser.AskGear} // "is a rope of 3.8 t break ok for lifting 150 kg limbs", on no tackle
	}
	asked = askedByFacts(rd, q, asked)
	if slices.Contains(asked, parser.AskGear) && falls(rd, q) {
		asked = append(asked, parser.AskDrop) // "is the rope ok for dropping 300 kg": no load at rest
	}
	return asked
}

// falls says whether a piece is told to be dropped, how far not said.
func falls(rd *reading.Reading, q parser.Question) bool {
	return !q.Has(parser.DropHeight) && q.Has(parser.Weight) && rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.DropHeight) && !rd.Elems[i].Spent })
}

// onlyLowering says whether it is asked what the block carries, and "lowering" only tells
// what the rope does meanwhile: "what's the block seeing if I'm lowering 180 kg".
func onlyLowering(rd *reading.Reading, q parser.Question, asked []parser.Intent) bool {
	wraps := q.Has(parser.Wraps, parser.People, parser.HitchHeight, parser.RopeLength) || slices.Contains(asked, parser.AskRope)
	bends := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimAngle }) // "rope turns 60°"
	wraps = wraps || !bends && slices.ContainsFunc(rd.Tokens, func(t reading.DangerToken) bool { return stops.Is(t, "turns") })
	return !wraps && slices.Contains(asked, parser.AskBlockLoad) && slices.Contains(asked, parser.AskLower)
}

// asksPounds says whether a message asks for a mass in so many words, of a piece whose
// sizes it tells, and of no pull on a line.
func asksPounds(rd *reading.Reading, q parser.Question) bool {
	line := q.Has(parser.Sideways) || q.Has(parser.SecondTie) || q.Has(parser.LegAngle) || q.Has(parser.LineOut) || q.Noted(parser.TagPull) || q.Noted(parser.Bridled)
	line = line || rd.AnyAt(func(i int) bool {
		return gear.Part(rd.Elems[i]) != "" || rd.Elems[i].Marked(lexicon.MarkGear|lexicon.MarkCord)
	})
	return talk.Typed(rd, lexicon.CuePounds) && q.Has(parser.Across...) && q.Has(parser.Length) && !line
}

// askedByFacts adds what nobody tells without asking for it.
func askedByFacts(rd *reading.Reading, q parser.Question, asked []parser.Intent) []parser.Intent {
	words := asked
	for _, x := range q.Quantities {
		by := asked
		if x.Field == parser.Sideways && !hinged(rd, q) {
			by = words // "block is 20 ft above it and 8 ft to the side", of no limb that is stood up
		}
		if in, ok := fieldIntent[x.Field]; ok && !(x.Field == parser.LegAngle && gear.Slung(rd)) && !slices.ContainsFunc(serves[x.Field], func(s parser.Intent) bool { return slices.Contains(by, s) }) {
			asked = append(asked, in)
		}
	}
	sheaves := slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.WhichParts })
	if q.Has(parser.Closed) && q.Has(parser.Apart) {
		asked = append(asked, parser.AskLift)
	}
	if sheaves && !slices.Contains(asked, parser.AskRaise) || q.Has(parser.Rise) && len(asked) == 0 {
		asked = append(asked, parser.AskLift)
	}
	if q.Noted(parser.Snubbed) || q.Noted(parser.LetRun) {
		asked = append(asked, parser.AskDrop) // never answered without the fall
	}
	if onlyGear(rd, asked, q) || len(asked) == 0 && gear.ApprovalAsked(rd, q) || len(asked) == 0 && q.Noted(stops.NoteWorn) && gearAlone(rd) {
		asked = append(asked, parser.AskGear)
	}
	if q.Has(parser.Limit) && q.Has(parser.Across...) && !q.Has(parser.Weight) && (!q.Has(parser.Length) || len(asked) == 0 && q.Stem()) {
		asked = append(asked, parser.AskCutPlan) // how long a piece stays under it
	}
	if rd.Struck {
		asked = append(asked, parser.AskSwing)
	}
	if slices.Contains(asked, parser.AskRope) && slices.Contains(asked, parser.AskLift) && q.Has(parser.Parts, parser.HitchHeight) && q.Pieceless() && !q.Has(parser.People, parser.WinchPull, parser.PersonPull) {
		asked = slices.DeleteFunc(asked, func(in parser.Intent) bool { return in == parser.AskLift }) // "how much rope to lift with a 2:1": nothing is lifted yet
	}
	if ropeToLower(rd, q, asked) {
		asked = slices.DeleteFunc(asked, func(in parser.Intent) bool { return in == parser.AskLower })
	}
	if !slices.ContainsFunc(asked, func(in parser.Intent) bool { return in != parser.AskWeight }) && q.Noted(parser.PartsWanted) && q.Has(parser.People) && !q.Has(parser.Wraps, parser.HitchHeight) {
		asked = []parser.Intent{parser.AskLift} // "somos 3 jalando, 450 libras, cuántas líneas necesito"
	}
	return asked
}

// hinged says whether what is told of a block is told of a limb on its hinge: where it is
// tied, how it slants, or the hinge itself.
func hinged(rd *reading.Reading, q parser.Question) bool {
	return q.Has(parser.Tie, parser.TieAlong, parser.LimbAngle, parser.BlockBehind, parser.BlockOut, parser.Closed) || heights.TellsOfHinge(rd)
}

// ropeToLower says whether it is asked how much rope it takes to lower, with nothing to
// lower yet: "how much rope, block at 50 ft and want to lower to the ground".
func ropeToLower(rd *reading.Reading, q parser.Question, asked []parser.Intent) bool {
	both := slices.Contains(asked, parser.AskRope) && slices.Contains(asked, parser.AskLower)
	both = both && !slices.ContainsFunc(rd.Tokens, func(t reading.DangerToken) bool { return stops.Is(t, "turns") })
	return both && q.Has(parser.HitchHeight) && q.Pieceless() && !q.Has(parser.Wraps, parser.People) && !rd.Worded(parser.Wraps)
}

// hoists says whether "raise" lifts straight up: where no word stands a limb up
// or tells of its hinge, and what is raised is no limb.
func hoists(rd *reading.Reading, q parser.Question) bool {
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Intent == parser.AskRaise && !e.Marked(lexicon.MarkHoists) {
			return false
		}
	}
	hinged := q.Limb() || q.Has(parser.Tie, parser.BlockHeight, parser.LimbAngle, parser.BlockBehind, parser.BlockOut, parser.Closed) || heights.TellsOfHinge(rd)
	return !hinged && (q.Shape != nil || q.Species == nil && !q.Has(parser.Across...) && !q.Has(parser.Length)) && (q.Has(parser.Weight) || q.Shape != nil)
}

// travels says whether a message tells how far a load comes up, or how far apart its
// blocks are, and of no hinge: nothing is stood up.
func travels(rd *reading.Reading, q parser.Question) bool {
	if !q.Has(parser.Apart, parser.Rise) || q.Has(parser.Tie, parser.BlockHeight, parser.LimbAngle, parser.BlockBehind, parser.BlockOut) {
		return false
	}
	lifts := q.Has(parser.Apart) && turning.Lifting(rd) // where to tie is then how much room the tackle has
	return !standsUp(rd) && !rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskNotch || t.Note == parser.TieWanted && !lifts || rd.Cued(rd.Elems[i], lexicon.CueHinge) && !rd.Elems[i].Plays(parser.ButtDiameter)
	})
}

// standsUp says whether words ask for a limb to be stood up, and not only lifted.
func standsUp(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskRaise && t.Note != parser.BlocksMeet && !rd.Elems[i].Marked(lexicon.MarkHoists)
	})
}

// byTheWay are the intents of words that say much else besides, as far as the
// facts leave them room.
func byTheWay(besides []parser.Intent, q parser.Question) []parser.Intent {
	return slices.DeleteFunc(besides, func(in parser.Intent) bool {
		hauled := q.Has(parser.Parts) && q.Has(parser.People, parser.WinchPull) && !q.Has(parser.RopeLength)
		switch in {
		case parser.AskRope:
			return hauled // "somos dos con un 2:1, ¿alcanza?"
		case parser.AskTree:
			return !q.Empty() // "22 ft total" tells of a piece
		case parser.AskAnchor:
			return !q.Has(parser.Weight) && q.Has(parser.Across...) && q.Has(parser.Length) && !q.Has(parser.Tie) // "balls hanging off it, 2 ft thick, 3 ft"
		}
		return false
	})
}

// onlyGear says whether a message that tells of gear asks about it: where it
// is lowered, lifted or the like, the answer to that checks the gear as well.
func onlyGear(rd *reading.Reading, asked []parser.Intent, q parser.Question) bool {
	told := slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Spent }) || q.Has(parser.RopeDiameter) && q.Has(parser.Weight)
	if !told && !q.Has(parser.DesignFactor, parser.Legs, parser.ChokeAngle) || q.Has(parser.HitchHeight, parser.Wraps, parser.People) {
		return false
	}
	other := func(in parser.Intent) bool { return in != parser.AskWeight && in != parser.AskHelp }
	return !slices.ContainsFunc(asked, other) && (!q.Has(parser.BlockAngle) || len(q.MissingPiece()) > 0)
}

// gearAlone says whether gear is named and no piece: "block has no tag, ok for 500 lb?"
func gearAlone(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return gear.Part(rd.Elems[i]) != "" || rd.Elems[i].Marked(lexicon.MarkGear) }) &&
		!rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() || rd.TermAt(i).Unnamed })
}

// plainIntent chooses among the questions whose answers cover one another:
// lowering says weight, block load and rope as well.
func plainIntent(asked []parser.Intent, q parser.Question, hello bool) parser.Intent {
	has := func(in parser.Intent) bool { return slices.Contains(asked, in) }
	switch {
	case has(parser.AskRope) && q.Has(parser.Wraps) && q.MissingPiece() != nil && q.Species == nil:
		return parser.AskRope // the wraps are told, and there is nothing to lower
	case has(parser.AskRope) && q.Has(parser.RopeLength) && q.Pieceless() && !q.Has(parser.Wraps, parser.People):
		return parser.AskRope // likewise, "will my 120 ft rope reach to lower it"
	case has(parser.AskWeight) && !has(parser.AskLower) && q.Has(parser.People) && !q.Has(parser.Wraps, parser.HitchHeight):
		return parser.AskWeight // "3 of us here, how heavy is it"
	case has(parser.AskLower), q.Has(parser.Wraps, parser.People):
		return parser.AskLower
	case has(parser.AskRope) && has(parser.AskBlockLoad):
		return parser.AskLower
	case has(parser.AskRope), q.Has(parser.RopeLength):
		return parser.AskRope
	case has(parser.AskBlockLoad), q.Has(parser.BlockAngle):
		return parser.AskBlockLoad
	case q.Has(parser.HitchHeight):
		return parser.AskLower
	case has(parser.AskWeight):
		return parser.AskWeight
	case has(parser.AskHelp), hello && q.Empty():
		return parser.AskHelp
	}
	return parser.AskWeight
}
