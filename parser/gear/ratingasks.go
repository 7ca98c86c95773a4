package gear

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// GoodFor says whether the number at i is a load that it is asked of gear whether it
// is good for, "sling ok for 900 lb": nothing else in the message could be that load. In
// "a 2 t sling ok for 350 kg" the gear has its own number right before it.
func GoodFor(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAt)
	return saysGoodFor(rd, i) && !rd.AnyAt(func(k int) bool {
		if k == i || k == j-1 || rd.Elems[k].Fig == nil || !Rates(rd.Elems[k].Fig) {
			return false
		}
		s, _ := StrengthBeside(rd, k-1, k+1)
		return s == "" // "ok for 900 lb, breaks at 14,000"
	})
}

// saysGoodFor says whether words right before the number at i say that something is good for
// as much.
func saysGoodFor(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAt)
	for rd.At(j).Fig != nil && OfRope(rd, j) || rd.At(j).Marked(lexicon.MarkMade) && rd.At(j+1).Fig != nil || rd.Cued(rd.At(j), lexicon.CueFor) {
		j-- // "aguanta una cuerda de 1/2 pa 800 lb"
	}
	t := rd.TermAt(j)
	return t.Part != "" && t.Intent == parser.AskGear && !t.Besides
}

// RatedAhead is the gear that has the number at i right before it, and a load behind:
// the "2 t" of "a 2 t sling ok for 350 kg".
func RatedAhead(rd *reading.Reading, i int) scan.Part {
	for k := range rd.Elems {
		if k > i && Heavy(rd, k) && GoodFor(rd, k) && rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAt) == i+1 {
			return rd.TermAt(i + 1).Part
		}
	}
	return ""
}

// LoadOnRated reads "11 kN on a 35 kN strap": the number at i is on gear that has a number
// of its own, and is no strength.
func LoadOnRated(rd *reading.Reading, i int) bool {
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	if !rd.At(i+1).Marked(lexicon.MarkIn) || !Heavy(rd, i) || !Heavy(rd, j) || Part(rd.At(i-1)) != "" {
		return false
	}
	k := j + 1
	if Strength(rd.At(k)) != "" || rd.TermAt(k).Rated {
		k++
	}
	return Part(rd.At(k)) != ""
}

// OnLine reads "350 lb on the line, how many wraps": what hangs on a rope or a drum, where
// it is asked how it is held. What "is marked" there is a figure of a label.
func OnLine(rd *reading.Reading, i int) bool {
	j := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	if rd.Cued(rd.At(i+1), lexicon.CuePost) {
		j = i + 1
	}
	on := rd.Elems[i].Fig.Dim == parser.DimMass && (j == i+1 || rd.At(i+1).Marked(lexicon.MarkIn)) && (Part(rd.At(j)) == lexicon.PartRope || Part(rd.At(j)) == lexicon.PartDrum)
	before := rd.At(rd.Past(i-1, -1, lexicon.MarkIs))
	told := Strength(before) != "" || before.Term != nil && before.Term.Rated || before.Marked(lexicon.MarkBound) || rd.Cued(before, lexicon.CueStamped) || Part(before) != ""
	only := !rd.AnyAt(func(k int) bool { return k != i && Heavy(rd, k) })
	return on && !told && only && (rd.Worded(parser.Wraps) || AsksFor(rd, parser.AskLower))
}

// Acted reads "snub 100 kg" and "lowering 300 kg": what is done to a mass tells that it
// is what hangs on the rope, and no strength. "Snubbing line 100 kg" names gear.
func Acted(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkArticle)
	t := rd.TermAt(j)
	acts := t.Intent == parser.AskDrop && !t.Besides && !rd.Cued(rd.At(j), lexicon.CuePeak) || t.Intent == parser.AskLower || t.Intent == parser.AskLift || t.Lifts
	return acts && j >= 0 && t.Part == "" && rd.At(i-1).Pause == 0 && Part(rd.At(i+1)) == "" && !rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Sure == parser.Weight })
}

// AsksStrength asks which figure of a part a number is.
func AsksStrength(rd *reading.Reading, fig *reading.Figure, p scan.Part) *parser.Ask {
	a := fig.Ask(parser.WhichStrength, rd.Text)
	a.Fields = Both(p)
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
	return a
}

// PieceIs reads "the piece is 700 kilos".
func PieceIs(rd *reading.Reading, i int) bool {
	k := rd.Back(i - 1)
	return k < i-1 && (rd.At(k).Piece() || rd.Cued(rd.At(k), lexicon.CuePiece))
}

// RatedPart is the gear right before a number, or any that is named where the
// message tells of no piece.
func RatedPart(rd *reading.Reading, i int, used map[int]bool) scan.Part {
	switch p := Part(rd.At(i - 1)); {
	case p == lexicon.PartSling || p == lexicon.PartConnector:
		return p
	case pieceless(rd):
		p, _ = PartOf(rd, i-1, i, used)
		return p
	}
	return ""
}

// RatedRope reads "rope is 1/2 in 10,400 lb" and "3/4 rope with 20,000 lb
// strength": a figure of the rope's, whatever else the message tells.
func RatedRope(rd *reading.Reading, i int) scan.Part {
	j := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkRating)
	thick := rd.At(j).Fig != nil && OfRope(rd, j)
	if thick || ropeRow(rd, i) || behindKind(rd, i) || rd.Cued(rd.At(i+1), lexicon.CueStrength) && PartMeant(rd) == lexicon.PartRope {
		return lexicon.PartRope
	}
	return ""
}

// ropeRow says whether the number at i ends a row of figures that begins with how
// thick and how long a rope is: "12 mm, 50 m, 3.8 tonne".
func ropeRow(rd *reading.Reading, i int) bool {
	k, long := i-1, false
	for ; rd.At(k).Pause == 2 || Far(rd, k); k-- {
		long = long || Far(rd, k)
	}
	return long && rd.At(k).Fig != nil && OfRope(rd, k) && !AsksFor(rd, parser.AskLower)
}

// OnlyRated is the one kind of gear of a message where the strength at i is told far
// behind its name, "sling choked round a 12 in stem, breaks at 20,000", "" for none. A break strength by
// itself is rather the rope's than a block's, which is named for where it hangs.
func OnlyRated(rd *reading.Reading, i int, s scan.Strength) scan.Part {
	p := PartMeant(rd)
	if !slices.ContainsFunc(rd.Elems[:i], func(e reading.Element) bool { return Part(e) != "" }) {
		return ""
	}
	if s != lexicon.Working && p != lexicon.PartSling && p != lexicon.PartConnector {
		return ""
	}
	return p
}

// BlockAlone is the block that is named right before a break strength by itself at i, and no
// other gear: "block ok? 8000 lb break", "está bien la polea, 8000 lb de ruptura". One that
// only tells where a rope hangs, "on the block", has no strength told. What would tell of
// something else that it holds the block, "aguanta la polea", asks it of the block where
// nothing else is named.
func BlockAlone(rd *reading.Reading, i int) scan.Part {
	holds := func(k int) bool { return k < i && rd.TermAt(k).Note == parser.NoteHoldsBlock }
	named := func(k int) bool { return Part(rd.Elems[k]) != "" }
	if rd.AnyAt(holds) && !rd.AnyAt(named) {
		return lexicon.PartBlock
	}
	k := i - 1
	for k >= 0 && rd.At(k).Fig == nil && !rd.At(k).Piece() && Part(rd.At(k)) == "" {
		k--
	}
	before := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle))
	placed := before.Fig == nil && before.Marked(lexicon.MarkIn|lexicon.MarkAt|lexicon.MarkRelation|lexicon.MarkMade)
	if Part(rd.At(k)) != lexicon.PartBlock || PartMeant(rd) != lexicon.PartBlock || placed {
		return ""
	}
	return lexicon.PartBlock
}

// behindKind reads the "16000" of "5/8 double braid, 16000": by itself behind how thick a
// rope is and what kind, and more than any rope so thick may work at.
func behindKind(rd *reading.Reading, i int) bool {
	k := i - 1
	if rd.At(k).Pause != 2 {
		return false
	}
	for rd.At(k).Pause == 2 || strings.HasPrefix(rd.TermAt(k).Note, "rope-") || rd.At(k).Marked(lexicon.MarkCord) || Part(rd.At(k)) == lexicon.PartRope {
		k--
	}
	fig, thick := rd.Elems[i].Fig, thickest(rd)
	named := k < i-1 && rd.At(k).Fig != nil && OfRope(rd, k)
	end := i + 1
	for rd.At(end).Pause == 0 && rd.At(end).Polite() {
		end++
	}
	return named && fig.Dim == parser.DimCount && fig.Low == fig.High && rd.EndsBreath(end) && thick > 0 && overworks(fig, scan.Pound, thick)
}

// PartMeant is the one kind of gear that a message names, "" for none or several.
func PartMeant(rd *reading.Reading) scan.Part {
	only := scan.Part("")
	for _, e := range rd.Elems {
		switch p := Part(e); {
		case p == "" || p == only:
		case only != "":
			return ""
		default:
			only = p
		}
	}
	return only
}

// DescribedGear reads "today the drum is the small one, 500 kg": the gear that a
// message is about, where its one number has no other owner and nothing is asked.
func DescribedGear(rd *reading.Reading, i int) scan.Part {
	owner := func(k int) bool {
		e, t := rd.Elems[k], rd.TermAt(k)
		return k != i && e.Fig != nil || e.Piece() || t.Unnamed || t.Lifts || len(t.Roles) > 0 && Part(e) == "" ||
			t.Intent != "" && Part(e) == "" || t.Bears || rd.At(k).Marked(lexicon.MarkRelation) || rd.Cued(e, lexicon.CueHolds)
	}
	if rd.Elems[i].Fig.Dim == parser.DimCount || rd.At(i).Pause == 0 && rd.At(i-1).Pause == 0 || rd.AnyAt(owner) {
		return ""
	}
	k := 0
	for k < i && Part(rd.Elems[k]) == "" && (rd.Elems[k].Marked(lexicon.MarkArticle|lexicon.MarkAdverb|lexicon.MarkTrailing) || rd.At(k).Polite()) {
		k++
	}
	if rd.AnyAt(func(n int) bool {
		return n > k && n < i && rd.At(n).Marked(lexicon.MarkIs) && !rd.At(n).Marked(lexicon.MarkMade|lexicon.MarkIn)
	}) {
		return Part(rd.At(k))
	}
	return ""
}

// WantsWorking reads "working load for a 70 kN rope": whoever asks for the one
// figure of a rope names the rope by the other.
func WantsWorking(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkArticle)
	return rd.Elems[i].Fig.Dim != parser.DimCount && j < i-1 && rd.At(j).Marked(lexicon.MarkWhere|lexicon.MarkIs) && Strength(rd.At(j-1)) == lexicon.Working &&
		!rd.At(j-1).Spent && Part(rd.At(i+1)) == lexicon.PartRope
}

// pieceless says whether the message is about gear and names no piece.
func pieceless(rd *reading.Reading) bool {
	gear := false
	for i, e := range rd.Elems {
		if e.Piece() || rd.TermAt(i).Unnamed || rd.Cued(e, lexicon.CuePiece) {
			return false
		}
		gear = gear || e.Term != nil && e.Term.Intent == parser.AskGear
	}
	return gear
}

// Factors reads "at 5:1" beside a strength as a design factor. A ratio that
// could be parts of line as well is asked about.
func Factors(rd *reading.Reading) {
	eitherFactor(rd)
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimRatio {
			continue
		}
		switch {
		case e.Fig.Sure == parser.DesignFactor || e.Fig.Claimed == parser.DesignFactor:
		case rd.At(i - 1).Marked(lexicon.MarkAt):
			e.Fig.Sure = parser.DesignFactor
		case rd.At(i+1).Plays(parser.DesignFactor) || rd.At(rd.Past(i-1, -1, lexicon.MarkIs)).Plays(parser.DesignFactor):
		case e.Fig.Low < 5 || lifts(rd):
		case loaded(rd):
			a := e.Fig.Ask(parser.TwoReadings, rd.Text)
			a.Fields = []parser.Field{parser.DesignFactor, parser.Parts}
			rd.Asks = append(rd.Asks, a)
			e.Fig.Elsewhere = true
		default:
			e.Fig.Sure = parser.DesignFactor
		}
	}
}

// eitherFactor makes a range of "5 to 1 or 10 to 1" where what gear breaks at is told and
// nothing is lifted: of parts of line nobody has two at once.
func eitherFactor(rd *reading.Reading) {
	breaks := func(i int) bool { return rd.TermAt(i).Strength == lexicon.Breaking }
	if lifts(rd) || !rd.AnyAt(breaks) {
		return
	}
	for i := 0; i+2 < len(rd.Elems); i++ {
		a, b, or := rd.Elems[i].Fig, rd.Elems[i+2].Fig, rd.Elems[i+1]
		if !ratio(a) || !ratio(b) || rd.In.Joins[scan.Fold(rd.Text[or.Start:or.End])] != scan.Or {
			continue
		}
		both := *a
		both.Low, both.High, both.End, both.Sure, both.Elsewhere = min(a.Low, b.Low), max(a.High, b.High), b.End, parser.DesignFactor, false
		rd.Join(i, i+3, &both)
	}
}

// ratio says whether a number is a ratio as design factors are.
func ratio(f *reading.Figure) bool {
	const least = 5
	return f != nil && f.Dim == parser.DimRatio && f.Low >= least
}

// lifts says whether the message speaks of lifting or of people on the rope.
func lifts(rd *reading.Reading) bool {
	for _, e := range rd.Elems {
		if e.Term != nil && (e.Term.Intent == parser.AskLift || e.Term.Intent == parser.AskRaise) || e.Plays(parser.People) {
			return true
		}
	}
	return false
}

// loaded says whether the message tells of a load besides the strengths.
func loaded(rd *reading.Reading) bool {
	for _, e := range rd.Elems {
		if e.Piece() || e.Fig != nil && Rates(e.Fig) && e.Fig.Sure == "" {
			return true
		}
	}
	return false
}
