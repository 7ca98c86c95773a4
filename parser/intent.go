package parser

import "slices"

// fieldIntent is what a fact asks for by itself: nobody tells the tie or the
// fall without wanting to know what it does.
var fieldIntent = map[Field]Intent{
	DropHeight: AskDrop, RunLength: AskDrop,
	Tie: AskRaise, BlockHeight: AskRaise, LimbAngle: AskRaise, BlockBehind: AskRaise, BlockOut: AskRaise, Closed: AskRaise,
	WinchPull: AskLift, Parts: AskLift, Efficiency: AskLift, PersonPull: AskLift,
	Payload: AskTree,
	LineOut: AskSwing, Sideways: AskSwing, StartAngle: AskSwing,
	ObstacleOut: AskSwing, ObstacleHeight: AskSwing,
	SecondTie: AskBalance, LegAngle: AskBalance, SecondLeg: AskBalance, SideBranch: AskBalance, SideBranchOut: AskBalance,
}

// serves are the facts that another question makes use of too.
var serves = map[Field][]Intent{
	Parts: {AskRope}, PersonPull: {AskLower, AskRaise}, LineOut: {AskBalance}, Sideways: {AskBalance, AskRaise}, Tie: {AskBalance, AskAnchor},
	StartAngle: {AskAnchor}, LimbAngle: {AskBlockLoad}, LegAngle: {AskGear},
}

// special are the intents that no other answer covers, the most particular
// first: where one is asked for, it is the answer.
var special = []Intent{
	AskLog, AskJob, AskCutPlan, AskDrop, AskNotch, AskGear, AskAnchor, AskSwing, AskRaise, AskBalance, AskLift, AskTree,
}

// intentOf says what the message asks for.
func intentOf(rd *reading, q Question) Intent {
	words, besides, hello := rd.intents()
	asked := rd.allAsked(q, words, besides)
	if q.noted(tagPull) && q.Has(Sideways) {
		return AskBalance // "swing a limb, 8 ft to the side, how much pull on the tag line"
	}
	for _, in := range special {
		if in == AskLift && q.Has(Turn) && !q.Has(Parts, People, WinchPull) {
			continue // "lifting 300 lb, rope turns 45°": what the block carries
		}
		if in == AskRaise && slices.Contains(asked, in) && rd.hoists(q) {
			return AskLift // "raise 400 lb on a 3:1": nothing that could stand up
		}
		if slices.Contains(asked, in) {
			return in
		}
	}
	if slices.Contains(byTheWay(besides, q), AskRope) && q.Has(RopeLength) && q.Pieceless() && !q.Has(Wraps, People) {
		return AskRope // "alcanza una cuerda de 150 pies para bajar": there is nothing to lower yet
	}
	return plainIntent(asked, q, hello && !rd.measured() || len(rd.elems) == 0)
}

// allAsked is what the words ask for, and what the facts do.
func (rd *reading) allAsked(q Question, words, besides []Intent) []Intent {
	asked := words
	if q.noted(newTree) && !q.Pieceless() {
		asked = slices.DeleteFunc(asked, func(in Intent) bool { return in == AskTree }) // its first piece
	}
	if len(asked) == 0 && !q.Has(HitchHeight, Wraps, Turn) && !rd.pullsAtRedirect(q) {
		asked = byTheWay(besides, q)
	}
	if len(words) == 0 && slices.Equal(asked, []Intent{AskBalance}) && rd.asksPounds(q) {
		asked = []Intent{AskWeight} // "tip tied, how many pounds"
	}
	if rd.has(markTug) && q.Has(Sideways) && !slices.Contains(asked, AskSwing) {
		asked = append(asked, AskBalance) // "pull a limb 4 ft aside"
	}
	if q.Has(SecondTie) {
		asked = append(asked, AskBalance) // the ties are those of two lines
	}
	if q.Has(Turn) && len(asked) == 0 && q.Has(HitchHeight) {
		asked = append(asked, AskLower) // whose answer says what the blocks carry too
	} else if q.Has(Turn) || len(asked) == 0 && !q.Has(HitchHeight, Wraps, People, Parts) && slices.ContainsFunc(q.Notes, Redirecting) {
		asked = append(asked, AskBlockLoad)
	}
	if slices.Contains(besides, AskRope) && q.Has(RopeLength) && q.Has(HitchHeight) && q.Pieceless() && !q.Has(Wraps, People, WinchPull) {
		asked = append(asked, AskRope) // "soga de 200 ft, 3 partes, 50 pies de alto, ¿me alcanza?"
	}
	return rd.askedByFacts(q, asked)
}

// asksPounds says whether a message asks for a mass in so many words, of a piece whose
// sizes it tells, and of no pull on a line.
func (rd *reading) asksPounds(q Question) bool {
	line := q.Has(Sideways) || q.Has(SecondTie) || q.Has(LegAngle) || q.Has(LineOut) || q.noted(tagPull) || q.noted(bridled)
	line = line || rd.anyAt(func(i int) bool { return rd.elems[i].part() != "" || rd.elems[i].marked(markGear|markCord) })
	return rd.typed(cuePounds) && q.Has(across...) && q.Has(Length) && !line
}

// askedByFacts adds what nobody tells without asking for it.
func (rd *reading) askedByFacts(q Question, asked []Intent) []Intent {
	for _, x := range q.Quantities {
		if in, ok := fieldIntent[x.Field]; ok && !(x.Field == LegAngle && rd.slung()) && !slices.ContainsFunc(serves[x.Field], func(s Intent) bool { return slices.Contains(asked, s) }) {
			asked = append(asked, in)
		}
	}
	if q.noted(snubbed) || q.noted(letRun) {
		asked = append(asked, AskDrop) // never answered without the fall
	}
	if rd.onlyGear(asked, q) || len(asked) == 0 && q.noted(noteWorn) && rd.gearAlone() {
		asked = append(asked, AskGear)
	}
	if q.Has(Limit) && q.Has(across...) && !q.Has(Weight) && (!q.Has(Length) || len(asked) == 0 && q.stem()) {
		asked = append(asked, AskCutPlan) // how long a piece stays under it
	}
	if rd.struck {
		asked = append(asked, AskSwing)
	}
	if slices.Contains(asked, AskRope) && slices.Contains(asked, AskLift) && q.Has(Parts, HitchHeight) && q.Pieceless() && !q.Has(People, WinchPull, PersonPull) {
		asked = slices.DeleteFunc(asked, func(in Intent) bool { return in == AskLift }) // "how much rope to lift with a 2:1": nothing is lifted yet
	}
	return asked
}

// measured says whether a number is told, so that a greeting before it is not all
// of the message: "ok for 500?".
func (rd *reading) measured() bool {
	return rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil })
}

// stem says whether the piece is wood without brush, and longer than a log that
// is handled whole.
func (q Question) stem() bool {
	const longestLog = 5 // m, common practice, no source
	return q.Shape != nil && q.Shape.Value == Log && q.Length(Length).High > longestLog
}

// hoists says whether "raise" lifts straight up: where no word stands a limb up
// or tells of its hinge, and what is raised is no limb.
func (rd *reading) hoists(q Question) bool {
	for _, e := range rd.elems {
		if e.term != nil && e.term.intent == AskRaise && !e.marked(markHoists) {
			return false
		}
	}
	hinged := q.limb() || q.Has(Tie, BlockHeight, LimbAngle, BlockBehind, BlockOut, Closed) || rd.tellsOfHinge()
	return !hinged && (q.Shape != nil || q.Species == nil && !q.Has(across...) && !q.Has(Length)) && (q.Has(Weight) || q.Shape != nil)
}

// byTheWay are the intents of words that say much else besides, as far as the
// facts leave them room.
func byTheWay(besides []Intent, q Question) []Intent {
	return slices.DeleteFunc(besides, func(in Intent) bool {
		hauled := q.Has(Parts) && q.Has(People, WinchPull) && !q.Has(RopeLength)
		switch in {
		case AskRope:
			return hauled // "somos dos con un 2:1, ¿alcanza?"
		case AskTree:
			return !q.Empty() // "22 ft total" tells of a piece
		}
		return false
	})
}

// onlyGear says whether a message that tells of gear asks about it: where it
// is lowered, lifted or the like, the answer to that checks the gear as well.
func (rd *reading) onlyGear(asked []Intent, q Question) bool {
	told := slices.ContainsFunc(rd.elems, func(e element) bool { return e.spent }) || q.Has(RopeDiameter) && q.Has(Weight)
	if !told && !q.Has(DesignFactor, Legs, ChokeAngle) || q.Has(HitchHeight, Wraps, People) {
		return false
	}
	other := func(in Intent) bool { return in != AskWeight && in != AskHelp }
	return !slices.ContainsFunc(asked, other) && (!q.Has(BlockAngle) || len(q.MissingPiece()) > 0)
}

// gearAlone says whether gear is named and no piece: "block has no tag, ok for 500 lb?"
func (rd *reading) gearAlone() bool {
	return rd.anyAt(func(i int) bool { return rd.elems[i].part() != "" || rd.elems[i].marked(markGear) }) &&
		!rd.anyAt(func(i int) bool { return rd.elems[i].piece() || rd.termAt(i).unnamed })
}

// intents lists what the words ask for, and what they ask for where nothing
// else is asked: "with a tag line" is a fact where the question is how many
// wraps.
func (rd *reading) intents() (asked, besides []Intent, hello bool) {
	for _, e := range rd.elems {
		switch {
		case e.term == nil || e.term.intent == "" || e.spent:
		case e.term.intent == AskBalance && e.marked(markBridle|markTwins) && (rd.slung() || rd.legsOfRope()):
		case e.term.besides:
			besides = append(besides, e.term.intent)
		default:
			asked = append(asked, e.term.intent)
		}
		hello = hello || e.marked(markHello)
	}
	return asked, besides, hello
}

// plainIntent chooses among the questions whose answers cover one another:
// lowering says weight, block load and rope as well.
func plainIntent(asked []Intent, q Question, hello bool) Intent {
	has := func(in Intent) bool { return slices.Contains(asked, in) }
	switch {
	case has(AskRope) && q.Has(Wraps) && q.MissingPiece() != nil && q.Species == nil:
		return AskRope // the wraps are told, and there is nothing to lower
	case has(AskRope) && q.Has(RopeLength) && q.Pieceless() && !q.Has(Wraps, People):
		return AskRope // likewise, "will my 120 ft rope reach to lower it"
	case has(AskWeight) && !has(AskLower) && q.Has(People) && !q.Has(Wraps, HitchHeight):
		return AskWeight // "3 of us here, how heavy is it"
	case has(AskLower), q.Has(Wraps, People):
		return AskLower
	case has(AskRope) && has(AskBlockLoad):
		return AskLower
	case has(AskRope), q.Has(RopeLength):
		return AskRope
	case has(AskBlockLoad), q.Has(BlockAngle):
		return AskBlockLoad
	case q.Has(HitchHeight):
		return AskLower
	case has(AskWeight):
		return AskWeight
	case has(AskHelp), hello && q.Empty():
		return AskHelp
	}
	return AskWeight
}

// legsOfRope says whether "legs" are those of the rope at a block, whose load is
// asked: "what does the block see, legs 40° apart".
func (rd *reading) legsOfRope() bool {
	asked := rd.anyAt(func(i int) bool { return rd.termAt(i).intent == AskBlockLoad })
	seen := rd.anyAt(func(i int) bool { return rd.termAt(i).receives }) && rd.anyAt(func(i int) bool { return rd.elems[i].part() == partBlock })
	return (asked || seen) && !rd.anyAt(func(i int) bool { return rd.elems[i].plays(Lines) })
}
