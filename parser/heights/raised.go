package heights

import (
	"math"
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// A limb that is stood up is told by its lie and its tie in words that mean
// other things elsewhere: "level", "tied 12 ft out".

// Raised claims both where a limb is stood up. Where only a block above the
// hinge tells of that, "level" may still be how a piece is to hang.
func Raised(rd *reading.Reading) {
	asked := gear.AsksFor(rd, parser.AskRaise) || raisesOn(rd)
	if !asked && !rd.AnyAt(func(i int) bool { return gear.Beside(rd, i, parser.BlockHeight) }) {
		return
	}
	angled := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimAngle })
	for i, e := range rd.Elems {
		switch {
		case tiedOut(rd, i), asked && (tiedAt(rd, i) || iTie(rd, i)):
			places.Claim(rd, i, parser.Tie)
		case asked && (blockAbove(rd, i) || gear.Far(rd, i) && overHinge(rd, i)):
			rd.Elems[i].Fig.Told = "" // "a block 35 ft up right over the butt"
			places.Claim(rd, i, parser.BlockHeight)
		case asked && e.Term != nil && e.Term.Level && !angled && ofLimb(rd, i):
			f := &reading.Figure{Unit: scan.Degree, Dim: parser.DimAngle, Start: e.Start, End: e.End}
			rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: f}
			places.Claim(rd, i, parser.LimbAngle)
			angled = true
		case asked && measuresLong(rd, i):
			places.Claim(rd, i, parser.Length)
		case asked && tiedHalf(rd, i):
			rd.Share = &reading.Share{Start: rd.Elems[i].Start, End: rd.Elems[i].End, Of: scan.Half}
			rd.Elems[i].Term = &scan.Term{}
		}
	}
	hinged(rd)
}

// raisesOn says whether a message goes on about a piece that is stood up, and asks for nothing
// else.
func raisesOn(rd *reading.Reading) bool {
	other := func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent != "" && !t.Besides && t.Intent != parser.AskRaise
	}
	return rd.Before.Intent == parser.AskRaise && !rd.AnyAt(other)
}

// ofLimb says whether the word at i tells how the limb lies, and not the ground
// or a roof: nothing that it could belong to stands right behind it, and no
// article before. "Flat" and "level" are said of much else, "horizontal" hardly.
func ofLimb(rd *reading.Reading, i int) bool {
	next, only := rd.At(i+1), rd.Elems[i].Polite()
	if rd.Cued(next, lexicon.CueNow) {
		next = rd.At(i + 2) // "level now"
	}
	alone := next == (reading.Element{}) || next.Pause > 0 || next.Marked(lexicon.MarkAnd) || next.Fig != nil || only && next.Polite() || next.Term != nil && next.Term.Intent == parser.AskRaise
	return alone && (!rd.At(i-1).Marked(lexicon.MarkArticle) || rd.Cued(rd.At(i-1), lexicon.CueItIs))
}

// tiedOut reads "rope tied 12 ft out": out along the limb, from its cut.
func tiedOut(rd *reading.Reading, i int) bool {
	words := rd.At(rd.Back(i - 1))
	out := rd.At(i+1).Marked(lexicon.MarkOutward) && rd.At(i+1).Marked(lexicon.MarkAdverb)
	k := rd.Past(i+2, +1, lexicon.MarkRelation|lexicon.MarkArticle)
	beyond := rd.At(i+2).Marked(lexicon.MarkRelation) && !rd.At(k).Piece() // "out past the fork"
	return rd.Elems[i].Fig.Far() && words.Term != nil && words.Term.Tied && out && !beyond
}

// tiedAt reads "tied at 10 ft" of a limb whose block is told from its hinge: a
// hitch would be told from the ground, and no lower than the block is above the cut.
func tiedAt(rd *reading.Reading, i int) bool {
	words := rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt))
	if !gear.Far(rd, i) || words.Term == nil || !words.Term.Tied || goesOn(rd, i+1) || rd.At(i+1).Marked(lexicon.MarkHigh|lexicon.MarkUpward|lexicon.MarkErect) {
		return false
	}
	if rd.AnyAt(func(k int) bool { return rd.TermAt(k).Note == parser.LowestWanted }) {
		return true // the block is not told, and could be no hitch either
	}
	longer := rd.AnyAt(func(k int) bool {
		return gear.Far(rd, k) && rd.Elems[k].Fig.Low > rd.Elems[i].Fig.High && (rd.At(k+1).Plays(parser.Length) || rd.At(k+1).Piece() || rd.At(k-1).LeadsTo(parser.Length) || rd.At(k+1).Plays(parser.BlockHeight))
	})
	return longer && rd.AnyAt(func(k int) bool { return gear.Beside(rd, k, parser.BlockHeight) })
}

// blockAbove reads "block 10 ft above" with nothing behind it that it is above.
func blockAbove(rd *reading.Reading, i int) bool {
	if over := rd.At(i + 1); !gear.Far(rd, i) || !rd.Cued(over, lexicon.CueAbove) && !rd.Cued(over, lexicon.CueOverHinge) || !gear.BlockBefore(rd, i) && !sizes.BlockAt(rd, i-1) && !anchorAt(rd, rd.Back(i-1)) && !gotAbove(rd, i) {
		return false
	}
	next := rd.At(i + 2)
	ofIt := rd.Cued(next, lexicon.CueLoad) && rd.EndsBreath(i+3) // "block 14 ft above it"
	return ofIt || rd.EndsBreath(i+2) || next.Polite() && !next.Marked(lexicon.MarkArticle|lexicon.MarkPlace|lexicon.MarkPronoun) || next.Term != nil && next.Term.Note == parser.TieWanted
}

// gotAbove reads "I only got about 8 ft over it", where the top block is named before.
func gotAbove(rd *reading.Reading, i int) bool {
	got := rd.TermAt(rd.Back(i-1)).State || rd.Cued(rd.At(rd.Back(i-1)), lexicon.CueOwns)
	return got && rd.Cued(rd.At(i+2), lexicon.CueLoad) && rd.AnyAt(func(k int) bool {
		return k < i && (gear.Part(rd.Elems[k]) == lexicon.PartBlock || rd.Cued(rd.Elems[k], lexicon.CueTopBlock))
	})
}

// anchorAt says whether the words at i say where the line lowers from: "anchor point".
func anchorAt(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Plays(parser.HitchHeight) && e.Looks(lexicon.After) && gear.Part(e) != lexicon.PartRope
}

// iTie reads "polea 3 m encima del corte, amarro a 4 m", where no other tie is
// told, as how far along the limb.
func iTie(rd *reading.Reading, i int) bool {
	told := rd.AnyAt(func(k int) bool { return gear.Beside(rd, k, parser.Tie) })
	return gear.Far(rd, i) && rd.Cued(rd.At(i-1), lexicon.CueTies) && rd.AnyAt(func(k int) bool { return gear.Beside(rd, k, parser.BlockHeight) }) &&
		!told && !rd.At(i+1).Marked(lexicon.MarkHigh|lexicon.MarkUpward|lexicon.MarkRelation)
}

// TellsOfHinge says whether a message speaks of what only a raise has: a hinge, a
// block above it, where to tie.
func TellsOfHinge(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskNotch || t.Note == parser.TieWanted || t.Note == parser.BlocksMeet || rd.Elems[i].Plays(parser.BlockHeight) || gear.Beside(rd, i, parser.BlockHeight)
	})
}

// measuresLong reads "pesa 210 kg y mide 7 m": beside a weight, a length of the piece
// that says no more of itself.
func measuresLong(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.TermAt(j).Note == "about" {
		j--
	}
	weighed := rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimMass })
	return weighed && gear.Far(rd, i) && rd.Cued(rd.At(j), lexicon.CueMeasures) && !goesOn(rd, i+1)
}

// tiedHalf reads "tied halfway" as where the tie is, and not as where a thickness
// was taken.
func tiedHalf(rd *reading.Reading, i int) bool {
	words := rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkArticle))
	return rd.Cued(rd.Elems[i], lexicon.CueHalf) && words.Term != nil && words.Term.Tied && rd.At(i+1).Fig == nil && !rd.At(i+1).Marked(lexicon.MarkMade)
}

// thirdsAt is how many elements from i on are two thirds of a limb: "2/3 out", "dos
// tercios"; 0 for none.
func thirdsAt(rd *reading.Reading, i int) int {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil {
		return 0
	}
	if places.Bare(fig, 2) && rd.Cued(rd.At(i+1), lexicon.CueThird) {
		return 2
	}
	if out := rd.At(i + 1); math.Abs(fig.Low-twoThirds) < 0.01 && fig.Low == fig.High && (rd.EndsBreath(i+1) || out.Marked(lexicon.MarkOutward)) {
		return 1
	}
	return 0
}

const twoThirds = 2.0 / 3

// TiedAtThirds takes two thirds for the tie where the limb is told to be tied there.
// Beside another tie they are one to choose from: "tip tie or 2/3 out?".
func TiedAtThirds(rd *reading.Reading, i int) {
	n := thirdsAt(rd, i)
	if n == 0 {
		return
	}
	start, end := rd.Elems[i].Start, rd.Elems[i+n-1].End
	words := rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkArticle))
	t := &scan.Term{}
	if words.Term != nil && words.Term.Tied {
		rd.Share = &reading.Share{Start: start, End: end, Of: twoThirds}
	} else {
		t = &scan.Term{Intent: parser.AskRaise, Note: parser.TieWanted}
	}
	rd.Elems = slices.Replace(rd.Elems, i, i+n, reading.Element{Start: start, End: end, Term: t})
}
