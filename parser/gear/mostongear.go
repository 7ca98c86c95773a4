package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How much nobody wants on the block, or on the anchor, where it is asked how a piece is
// cut: "i don't want the block over 3000 lb", "so the top block stays under 3000 lb", "3000
// lb is the most i want on the anchor". Lowered steady the block sees about twice the piece:
// taken for what a piece may weigh, twice as much would be cut.

// keptBelow finds the gear that the number at i bounds, named before it with a bound between
// and where those words begin; -1 for none, and where a strength is told.
func keptBelow(rd *reading.Reading, i int) (at, from int) {
	const most = 8
	bound := false
	for k := i - 1; k >= 0 && i-k <= most; k-- {
		e, t := rd.At(k), rd.TermAt(k)
		switch {
		case e.Pause > 0, e.Fig != nil, Strength(e) != "", t.Rated, t.Label, e.Piece():
			return -1, -1
		case bound && (Part(e) == lexicon.PartBlock || Part(e) == lexicon.PartSling || Part(e) == "" && (t.Anchors || namesAnchor(rd, e))):
			return k, unwantedFrom(rd, k)
		case Part(e) != "":
			return -1, -1
		}
		bound = bound || boundsNext(rd, k)
	}
	return -1, -1
}

// boundsNext says whether the word at i bounds a number behind it: "over", "past", "up to".
func boundsNext(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Marked(lexicon.MarkBound) || rd.Cued(e, lexicon.CuePast) || rd.Cued(e, lexicon.CueExceeds)
}

// unwantedFrom is where "i don't want the block" begins that ends at i.
func unwantedFrom(rd *reading.Reading, i int) int {
	from := i
	for k := i - 1; k >= 0 && rd.At(k).Pause == 0; k-- {
		t := rd.TermAt(k)
		switch {
		case t.Denies || t.Purpose || t.Ask == parser.Twist || rd.Cued(rd.At(k), lexicon.CueWilling) || rd.Cued(rd.At(k), lexicon.CueKeepsOff):
			from = k
		case !rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkPronoun) && !rd.At(k).Polite():
			return from
		}
	}
	return from
}

// mostWantedOn finds the gear that the number at i is told to be the most on, behind it:
// "3000 lb is the most i want on the block"; -1 for none.
func mostWantedOn(rd *reading.Reading, i int) int {
	const most = 8
	bound := false
	for k := i + 1; k < len(rd.Elems) && k-i <= most; k++ {
		e := rd.At(k)
		if e.Pause > 0 || e.Fig != nil || e.Piece() || Strength(e) != "" {
			return -1
		}
		if bound && on(rd, k) && (Part(e) == lexicon.PartBlock || rd.TermAt(k).Anchors || namesAnchor(rd, e)) {
			return k
		}
		bound = bound || rd.Cued(e, lexicon.CueMostOf) || e.Plays(parser.Limit) || rd.Cued(e, lexicon.CueTops)
	}
	return -1
}

// MostOnGear makes such numbers what the block may carry.
func MostOnGear(rd *reading.Reading) {
	if !AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := range rd.Elems {
		if !Heavy(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		at, from := keptBelow(rd, i)
		to := i
		if at < 0 {
			at, from = mostWantedOn(rd, i), i+1
			to = at
		}
		if at < 0 {
			continue
		}
		field := parser.BlockWorking
		if Part(rd.Elems[at]) == lexicon.PartSling {
			field = parser.SlingWorking
		}
		rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Sure = field, field
		for k := from; k < to; k++ {
			rd.Elems[k].Term = &scan.Term{}
		}
		rd.Elems[at].Term = &scan.Term{Part: rd.TermAt(at).Part}
		return
	}
}
