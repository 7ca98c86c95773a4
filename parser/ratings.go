package parser

// part is a piece of gear that has a strength of its own, as the fields name
// it.
type part string

// The parts.
const (
	partRope      part = "rope"
	partBlock     part = "block"
	partSling     part = "sling"
	partConnector part = "connector"
	partDrum      part = "drum"
)

// strength is which figure of a label a word speaks of: a working load must
// never be taken for a break strength, nor the other way round.
type strength string

// The two figures.
const (
	breaking strength = "mbs"
	working  strength = "wll"
)

// field names the strength of a part.
func (p part) field(s strength) Field { return Field(string(p) + "_" + string(s) + "_n") }

// Ratings are the strengths of gear, a break strength and a working load for
// each part of the chain.
var Ratings = []Field{
	RopeBreak, RopeWorking, BlockBreak, BlockWorking, SlingBreak, SlingWorking,
	ConnectorBreak, ConnectorWorking, DrumBreak, DrumWorking,
}

// ratings finds the numbers that are strengths of gear, "block wll 4,000 lb",
// before any other words can claim them.
func (rd *reading) ratings() {
	used := map[int]bool{}
	any := false
	for i, e := range rd.elems {
		if e.fig == nil || !e.fig.rates() {
			continue
		}
		if e.fig.dim != dimCount && rd.massBeside(i-1, i+1) == Payload {
			e.fig.sure = Payload
			continue
		}
		s, at := rd.strengthBeside(i-1, i+1)
		if s == "" {
			rd.unsaidStrength(i, used)
			continue
		}
		rd.elems[at].spent = true
		any = true
		p, k := rd.partOf(i-1, i+1, used)
		if p == "" {
			p = rd.ratedBefore(i-1, s)
		}
		if p == "" && s == working {
			a := e.fig.ask(WhichGear, rd.text)
			a.Fields = []Field{RopeWorking, BlockWorking, SlingWorking, ConnectorWorking}
			rd.asks = append(rd.asks, a)
			e.fig.elsewhere = true
			continue
		}
		if p == "" {
			p = partRope // what a break strength by itself is told of
		}
		if k >= 0 {
			used[k] = true
		}
		e.fig.sure = p.field(s)
	}
	rd.tonsOfGear(used)
	if any {
		rd.factors()
	}
}

// figureEights takes the number in "figure eight" for the knot that it names.
func (r *Reader) figureEights(rd *reading) {
	for i := 1; i < len(rd.elems); i++ {
		fig, before := rd.elems[i].fig, i-1
		if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != 8 || fig.high != 8 || isDigit(rd.text[fig.start]) {
			continue // digits are asked about: none of them is ever passed over
		}
		if rd.at(before).marked(markIs) {
			before-- // "figure of eight"
		}
		e := rd.at(before)
		if e.term == nil || fold(rd.text[e.start:e.end]) != "figure" {
			continue
		}
		if t, n := r.lex.find([]string{"figure", "eight"}); n == 2 {
			rd.elems[before] = element{start: e.start, end: fig.end, term: t}
			rd.elems = append(rd.elems[:before+1], rd.elems[i+1:]...)
		}
	}
}

// unsaidStrength asks about a number that is rather gear's than the piece's,
// and has no word for which of the two on its label it is: "carabiner 22 kN",
// or "5/8 double braid, 16,000 lb" with no piece in sight.
func (rd *reading) unsaidStrength(i int, used map[int]bool) {
	fig, before := rd.elems[i].fig, rd.at(i-1)
	if fig.dim == dimCount || rd.at(i+1).piece() || before.marked(markWhere) || before.term != nil && len(before.term.roles) > 0 && before.part() == "" {
		return
	}
	p := before.part()
	if p != partSling && p != partConnector {
		if rd.pieceless() {
			p, _ = rd.partOf(i-1, i, used)
		} else {
			p = ""
		}
	}
	if p == "" {
		return
	}
	a := fig.ask(WhichStrength, rd.text)
	a.Fields = p.both()
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}

// pieceless says whether the message is about gear and names no piece.
func (rd *reading) pieceless() bool {
	gear := false
	for _, e := range rd.elems {
		if e.piece() {
			return false
		}
		gear = gear || e.term != nil && e.term.intent == AskGear
	}
	return gear
}

// rates says whether a number can be a strength: a mass or a force, or one
// whose unit was not said.
func (f *figure) rates() bool {
	return f.dim == dimMass || f.dim == dimForce || f.dim == dimCount && f.low >= 100
}

// strengthBeside finds the word for a strength next to a number whose
// neighbours are given. The one before it goes first, unless it belongs to
// the number before.
func (rd *reading) strengthBeside(left, right int) (strength, int) {
	for j := left; j >= 0; j-- {
		e := rd.elems[j]
		if s := e.strength(); s != "" {
			if e.spent {
				break
			}
			return s, j
		}
		if !e.marked(markIs|markRating|markAdjective|markAt) && !rd.colon(j) {
			break
		}
	}
	j := rd.past(right, +1, markIs|markArticle)
	if rd.at(j).part() != "" && rd.at(j).strength() == "" {
		j++ // "20,000 lb block wll"
	}
	if s := rd.at(j).strength(); s != "" && !rd.at(j).spent {
		return s, j
	}
	return "", -1
}

func (rd *reading) colon(i int) bool {
	e := rd.at(i)
	return e.pause > 0 && rd.text[e.start:e.end] == ":"
}

func (e element) strength() strength {
	if e.term == nil {
		return ""
	}
	return e.term.strength
}

func (e element) part() part {
	if e.term == nil {
		return ""
	}
	return e.term.part
}

// partOf finds the gear that a strength is of: named before it in the same
// breath, or behind it, or in the breath before where that tells of nothing
// but gear ("5/8 double braid, bowline, 16,000 lb break").
func (rd *reading) partOf(left, right int, used map[int]bool) (part, int) {
	j := left
	for ; j >= 0 && !rd.ends(j); j-- {
		if p := rd.elems[j].part(); p != "" && !used[j] {
			return p, j
		}
	}
	for k := right; k < len(rd.elems) && !rd.ends(k); k++ {
		if p := rd.elems[k].part(); p != "" && !used[k] {
			return p, k
		}
	}
	for ; j >= 0; j-- {
		e := rd.elems[j]
		switch p := e.part(); {
		case p != "" && !used[j]:
			return p, j
		case p != "", e.fig != nil && !e.fig.ofGear(), e.piece(), e.pause > 2:
			return "", -1
		}
	}
	return "", -1
}

// ratedBefore is the gear of the number before, where that told the other
// figure of its label: "rope 16,000 lb break, 1,600 lb WLL".
func (rd *reading) ratedBefore(j int, s strength) part {
	for ; j >= 0 && !rd.elems[j].piece(); j-- {
		fig := rd.elems[j].fig
		if fig == nil {
			continue
		}
		for _, p := range []part{partRope, partBlock, partSling, partConnector, partDrum} {
			if other := p.field(s.other()); fig.sure == other {
				return p
			}
		}
		return ""
	}
	return ""
}

func (s strength) other() strength {
	if s == breaking {
		return working
	}
	return breaking
}

// ends says whether a breath ends at an element.
func (rd *reading) ends(i int) bool {
	e := rd.elems[i]
	return e.fig != nil && e.fig.rates() || e.pause > 0 && !rd.colon(i) || e.marked(markAnd) || e.piece()
}

// ofGear says whether a number can tell how thick a rope or a sling is, or
// how it is rigged.
func (f *figure) ofGear() bool {
	return f.dim == dimAngle || f.dim == dimRatio || f.dim == dimCount && f.low < 100 || f.dim == dimLength && f.unit.fine
}

// tonsOfGear tells the asks about a "ton" that it is of gear: no "3 ton
// shackle" is a piece of three tons.
func (rd *reading) tonsOfGear(used map[int]bool) {
	for _, a := range rd.asks {
		if a.Kind != WhichTon {
			continue
		}
		right := 0 // the element behind the ton
		for right < len(rd.elems) && rd.elems[right].start < a.Start {
			right++
		}
		if f := rd.massBeside(right-1, right); f != "" {
			a.Fields = []Field{f}
			continue
		}
		s, at := rd.strengthBeside(right-1, right)
		p, _ := rd.partOf(right-1, right, used)
		switch {
		case s != "" && p == "":
			continue
		case s != "":
			rd.elems[at].spent = true
			a.Fields = []Field{p.field(s)}
		case rd.partBeside(right-1, right) != "":
			a.Fields = rd.partBeside(right-1, right).both()
		}
	}
}

// massBeside is the limit or the payload that a ton was told of, "" for
// neither: "limit 2 tons", "8 ton truck".
func (rd *reading) massBeside(left, right int) Field {
	for _, f := range []Field{Limit, Payload} {
		if rd.at(rd.past(left, -1, markIs)).plays(f) || rd.at(right).plays(f) {
			return f
		}
	}
	if rd.truck(right) {
		return Payload
	}
	return ""
}

// truck says whether an element is what the wood goes away on.
func (rd *reading) truck(i int) bool {
	e := rd.at(i)
	if e.term == nil {
		return false
	}
	switch fold(rd.text[e.start:e.end]) {
	case "truck", "trucks", "trailer", "trailers", "chip truck", "loads":
		return true
	}
	return false
}

func (p part) both() []Field { return []Field{p.field(working), p.field(breaking)} }

// partBeside is the gear right beside a number: "3 ton shackle", "sling rated
// for 4,000 lb".
func (rd *reading) partBeside(left, right int) part {
	if p := rd.at(right).part(); p != "" {
		return p
	}
	return rd.at(rd.past(rd.pastIs(left), -1, markRating|markIs)).part()
}

// ratingAsk asks what a number beside gear is, where it has no word for it.
func (rd *reading) ratingAsk(i int) *Ask {
	fig := rd.elems[i].fig
	if !fig.rates() {
		return nil
	}
	fields := []Field{fig.sure}
	if fig.sure == "" {
		p := rd.partBeside(i-1, i+1)
		if p == "" {
			return nil
		}
		fields = p.both()
	}
	a := fig.ask(WhichStrength, rd.text)
	if fig.dim == dimCount {
		a.Kind = NoUnit
	}
	a.Fields = fields
	return a
}

// factors reads "at 5:1" beside a strength as a design factor. A ratio that
// could be parts of line as well is asked about.
func (rd *reading) factors() {
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimRatio {
			continue
		}
		switch {
		case rd.at(i - 1).marked(markAt):
			e.fig.sure = DesignFactor
		case rd.at(i+1).plays(DesignFactor) || rd.at(rd.past(i-1, -1, markIs)).plays(DesignFactor):
		case e.fig.low < 5 || rd.lifts():
		case rd.loaded():
			a := e.fig.ask(TwoReadings, rd.text)
			a.Fields = []Field{DesignFactor, Parts}
			rd.asks = append(rd.asks, a)
			e.fig.elsewhere = true
		default:
			e.fig.sure = DesignFactor
		}
	}
}

// lifts says whether the message speaks of lifting or of people on the rope.
func (rd *reading) lifts() bool {
	for _, e := range rd.elems {
		if e.term != nil && (e.term.intent == AskLift || e.term.intent == AskRaise) || e.plays(People) {
			return true
		}
	}
	return false
}

// loaded says whether the message tells of a load besides the strengths.
func (rd *reading) loaded() bool {
	for _, e := range rd.elems {
		if e.piece() || e.fig != nil && e.fig.rates() && e.fig.sure == "" {
			return true
		}
	}
	return false
}
