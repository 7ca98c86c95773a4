package gear

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Hold" asks two things. Of hands, wraps and a drum it asks what holds the rope; of a
// rope, a sling, a block or a shackle, "will the 1/2 in rope hold 600 lb", whether that
// gear is strong enough. Wraps would be a go-ahead for what nobody asked about.

// GearHolds makes such a word ask about the gear that it is said of.
func GearHolds(rd *reading.Reading) {
	if rd.Worded(parser.Wraps) || rd.Worded(parser.People) {
		return
	}
	for i, e := range rd.Elems {
		t := rd.TermAt(i)
		switch {
		case !rd.Cued(e, lexicon.CueHolds) && !takesLoad(rd, i) || !asked(rd, i):
		case t.Intent == parser.AskGear:
			heldLoad(rd, i)
		case (t.Intent == parser.AskLower || takesLoad(rd, i)) && (holderBefore(rd, i) || holderBehind(rd, i)):
			rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskGear, false })
			heldLoad(rd, i)
		case t.Intent == parser.AskLower && (sizedRopeHolds(rd, i) || ratedRopeHolds(rd, i)):
			rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskGear, false })
		}
	}
}

// sizedRopeHolds says whether the word at i ends what is asked of a rope that is told by its
// thickness alone, with no drum and nobody who holds: "tengo soga de 1/2 in y el pedazo pesa
// 700 lb, aguanta?".
func sizedRopeHolds(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && (rd.At(k).Marked(lexicon.MarkPronoun) || rd.Cued(rd.At(k), lexicon.CueAsking) || rd.Cued(rd.At(k), lexicon.CueThat)) {
		k--
	}
	if !rd.EndsBreath(i+1) || k >= 0 && rd.At(k).Pause == 0 || !rd.AnyAt(rd.Is(ropeThin)) {
		return false
	}
	cord := func(t reading.DangerToken) bool {
		return slices.ContainsFunc(t.Kinds, func(s reading.Seen) bool { return s.Kind == "cord" })
	}
	return slices.ContainsFunc(rd.Tokens, cord) && !rd.AnyAt(func(n int) bool {
		return Part(rd.Elems[n]) == lexicon.PartDrum || n > k && n < i && (rd.TermAt(n).Human || rd.TermAt(n).Someone) // "will he hold it"
	})
}

// ratedRopeHolds says whether the word at i asks it of a rope whose strength is told before
// in kilonewtons or by a word, and of nobody who holds by hand: "12 mm rope, 32 kN, will it
// hold 200 kg".
func ratedRopeHolds(rd *reading.Reading, i int) bool {
	rope := func(k int) bool { return k < i && cordOr(rd, k) == lexicon.PartRope }
	rated := func(k int) bool { return k < i && (kilonewtons(rd, k) || Heavy(rd, k) && ratedBeside(rd, k)) }
	const few = 3 // "will dave hold it", and no waiter elsewhere
	byHand := func(k int) bool {
		return Part(rd.Elems[k]) == lexicon.PartDrum || k < i && (rd.TermAt(k).Human || i-k < few && rd.TermAt(k).Someone)
	}
	return rd.AnyAt(rope) && rd.AnyAt(rated) && !rd.AnyAt(byHand)
}

// ropeThin says whether the number at i can be how thick a rope is, told as such or not.
func ropeThin(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	told := fig != nil && (fig.Told == parser.RopeDiameter || fig.Sure == parser.RopeDiameter || fig.Claimed == parser.RopeDiameter)
	return told || thinAsGear(rd, i)
}

// takesLoad reads "will the rope take 900 lb": a word of bearing between gear and a mass.
func takesLoad(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Bears && bearing(rd, i-1) && Heavy(rd, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkBound))
}

// asked says whether the word at i asks, and does not tell what the gear bears: "my rope
// holds 5,000 lb" may be either figure of its label.
func asked(rd *reading.Reading, i int) bool {
	asks := func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueAsking) }
	return strings.Contains(rd.Text, "?") || rd.AnyAt(asks) || holderBehind(rd, i) || rd.TermAt(i).Intent == parser.AskGear
}

// heldLoad makes the mass behind the word at i what is to be held, where no word tells that
// it is a strength.
func heldLoad(rd *reading.Reading, i int) {
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkBound)
	for rd.At(j).Marked(lexicon.MarkMade|lexicon.MarkCord|lexicon.MarkArticle) || Part(rd.At(j)) != "" || rd.At(j).Fig != nil && thinAsGear(rd, j) {
		j++ // "aguanta la cuerda de media pulgada 300 kg"
	}
	if CalledBy(rd, j) != "" {
		return
	}
	if s, _ := StrengthBeside(rd, j-1, j+1); s != "" || !Heavy(rd, j) || rd.TermAt(j+1).Rated || rd.Elems[j].Fig.Told != "" {
		return
	}
	rd.Elems[j].Fig.Told, rd.Elems[j].Fig.Sure = parser.Weight, parser.Weight
}

// ApprovalAsked says whether it is asked of gear if it is good, in words that could be of
// anything, beside a load and nothing that would lower or lift it: "sling is 3/4 hollow
// braid, ok for 300 lb".
func ApprovalAsked(rd *reading.Reading, q parser.Question) bool {
	other := q.Has(parser.HitchHeight, parser.Wraps, parser.People, parser.Parts, parser.WinchPull, parser.RopeLength, parser.BlockAngle, parser.Limit)
	gear := func(i int) bool {
		p := Part(rd.Elems[i])
		return p != "" && p != lexicon.PartDrum
	}
	alone := q.Pieceless() && q.Has(parser.RopeDiameter)
	return !other && approvalWorded(rd) && (alone || rd.AnyAt(gear) && len(q.MissingPiece()) == 0)
}

// approvalWorded says whether a message has words that ask whether something is good.
func approvalWorded(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueApproves) })
}

// WhetherHolds says whether a message asks whether gear holds, or is good.
func WhetherHolds(rd *reading.Reading, q parser.Question) bool {
	return ApprovalAsked(rd, q) || rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Intent == parser.AskGear && rd.Cued(rd.Elems[i], lexicon.CueHolds)
	})
}

// onIt says whether the element at i is what something else is on: "rope on the bollard".
func onIt(rd *reading.Reading, i int) bool {
	return rd.At(rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkIn)
}

// drumBehind reads "will the rope hold on the drum": by its wraps.
func drumBehind(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool { return k > i && Part(rd.Elems[k]) == lexicon.PartDrum })
}

// holderBefore says whether gear is named before the word at i, in the same breath and
// with nothing before it that is on the gear: "the guy on the rope" holds by hand.
func holderBefore(rd *reading.Reading, i int) bool {
	const most = 6
	for k := i - 1; k >= 0 && i-k <= most; k-- {
		e := rd.Elems[k]
		switch {
		case bearing(rd, k):
			return !onIt(rd, k) && !drumBehind(rd, i)
		case Part(e) == lexicon.PartDrum && onIt(rd, k):
		case Part(e) == lexicon.PartDrum, e.Pause > 0, e.Piece(), rd.TermAt(k).Human, rd.TermAt(k).Someone, e.Marked(lexicon.MarkPronoun) && !e.Marked(lexicon.MarkArticle), e.Fig != nil && !ofGear(e.Fig) && !ratedBeside(rd, k):
			return false
		}
	}
	return false
}

// ratedBeside says whether the number at i has the word for a strength beside it.
func ratedBeside(rd *reading.Reading, i int) bool {
	s, _ := StrengthBeside(rd, i-1, i+1)
	return s != ""
}

// holderBehind reads "aguanta la soga de 1/2": the gear right behind its article.
func holderBehind(rd *reading.Reading, i int) bool {
	k := rd.Past(i+1, +1, lexicon.MarkArticle)
	return k > i+1 && bearing(rd, k)
}

// bearing says whether the element at i is gear that bears a load, or a fraction of an
// inch that such gear is called by.
func bearing(rd *reading.Reading, i int) bool {
	switch p := Part(rd.At(i)); p {
	case lexicon.PartRope, lexicon.PartSling, lexicon.PartBlock, lexicon.PartConnector:
		return true
	}
	return rd.At(i).Marked(lexicon.MarkCord) || ThinPart(rd, i) != ""
}
