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
		if e.fig == nil || !e.fig.rates() || e.fig.told == WinchPull || e.fig.sure != "" {
			continue
		}
		if e.fig.dim != dimCount && rd.massBeside(i-1, i+1) == Payload {
			e.fig.sure = Payload
			continue
		}
		s, at := rd.strengthBeside(i-1, i+1)
		if s == "" {
			if p, word := rd.ratedAs(i); p != "" {
				rd.rate(i, p, word)
				any = true
				continue
			}
			if rd.heldByHand(i) {
				e.fig.sure = Weight
				continue
			}
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

// rates says whether a number can be a strength: a mass or a force, or one
// whose unit was not said.
func (f *figure) rates() bool {
	return f.dim == dimMass || f.dim == dimForce || f.dim == dimCount && f.low >= 100
}

// strengthBeside finds the word for a strength next to a number whose
// neighbours are given. The one before it goes first, unless it belongs to
// the number before.
func (rd *reading) strengthBeside(left, right int) (strength, int) {
	passed := false // a part: "carga de trabajo de la eslinga 4,000 lb"
	for j := left; j >= 0; j-- {
		e := rd.elems[j]
		if s := e.strength(); s != "" {
			if e.spent {
				break
			}
			return s, j
		}
		if !passed && e.part() != "" && rd.at(rd.past(j-1, -1, markArticle)).marked(markIs) {
			passed = true
			continue
		}
		if passed && e.marked(markArticle) {
			continue
		}
		about := e.term != nil && e.term.note == "about"
		if !e.marked(markIs|markRating|markAdjective|markAt) && !rd.colon(j) && !about {
			break
		}
	}
	if rd.cued(rd.at(right), cueWorking) && rd.endsBreath(right+1) {
		return working, right // "rope good for 1,500 lb working"
	}
	j := rd.past(right, +1, markIs|markArticle)
	if rd.at(j).part() != "" && rd.at(j).strength() == "" {
		j++ // "20,000 lb block wll"
	}
	if s := rd.at(j).strength(); s != "" && !rd.at(j).spent && !rd.ofNext(left, j) {
		return s, j
	}
	return "", -1
}

// ofNext says whether the word for a strength at j, behind a number whose left
// neighbour is given, leads to a number of its own: "log weighs 900 lb rope
// breaks at 6000".
func (rd *reading) ofNext(left, j int) bool {
	next := rd.forth(j + 1)
	if k := rd.past(j+1, +1, markIs|markMade|markArticle); k > j+1 && rd.at(k).part() != "" {
		next = rd.forth(k + 1) // "carga de rotura de la cuerda 6000 libras"
	}
	if fig := rd.at(next).fig; fig == nil || !fig.rates() || rd.at(next+1).piece() {
		return false
	}
	between := rd.at(j-1).part() != "" && rd.at(left+1) != rd.at(j-1)
	return between || next > j+1 || rd.termAt(j).leads || rd.at(left).looks(after) || rd.at(rd.past(left, -1, markIs)).looks(after)
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

func (s strength) other() strength {
	if s == breaking {
		return working
	}
	return breaking
}

func (p part) both() []Field { return []Field{p.field(working), p.field(breaking)} }
