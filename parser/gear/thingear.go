package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Gear is called by how thick it is: "the 5/8", "sling is 3/4 hollow braid", "old rope.
// 1/2 in, been in the truck". No piece that is rigged is as thin, so the number is of the
// gear that is named nearest.

// ThinPart is the gear that the number at i tells the thickness of, "" where it may be
// anything else.
func ThinPart(rd *reading.Reading, i int) scan.Part {
	if !thinAsGear(rd, i) || ofOther(rd, i) {
		return ""
	}
	if p := namedBeside(rd, i); p != "" {
		return p
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && !rd.Elems[k].Piece(); k-- {
		if p := cordOr(rd, k); p != "" {
			return p
		}
	}
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0 && !rd.Elems[k].Piece() && !rd.Elems[k].Marked(lexicon.MarkAnd); k++ {
		if p := cordOr(rd, k); p != "" {
			return p
		}
	}
	for k := i - 1; k >= 0; k-- {
		if p := cordOr(rd, k); p == lexicon.PartRope {
			return p // "new rope, 9/16"; a block told before has its height behind it
		} else if p != "" {
			break
		}
	}
	return askedOf(rd, i)
}

// askedOf reads "will the 5/8 hold" and "is 13 mm alright": what is asked about as gear is,
// with no gear named, is a rope.
func askedOf(rd *reading.Reading, i int) scan.Part {
	j := rd.Past(i-1, -1, lexicon.MarkAdjective)
	own := rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle) || rd.Cued(rd.At(j), lexicon.CueAsking)
	k := i + 1
	for rd.Cued(rd.At(k), lexicon.CueAsking) {
		k++ // "wonder if the 5/8 will hold"
	}
	t := rd.TermAt(k)
	bears := rd.Cued(rd.At(k), lexicon.CueHolds) || t.Bears || t.Intent == parser.AskGear || t.Strength != "" || k == i+1 && rd.Cued(rd.At(k), lexicon.CueApproves)
	if (rd.Fraction(rd.Elems[i].Fig) || thinAsRope(rd, i)) && (own && bears || Strength(rd.At(rd.Past(i-1, -1, lexicon.MarkIs))) != "" && rd.EndsBreath(i+1)) {
		return lexicon.PartRope
	}
	return ""
}

// namedBeside is the gear that the number at i names, "5/8 double braid", "3/4 rope sling",
// or that is named by it, "rope 5/8 15k", or that it names with its strength between: "1/2
// inch 10k rope".
func namedBeside(rd *reading.Reading, i int) scan.Part {
	k := rd.Past(i+1, +1, lexicon.MarkAdjective)
	if p, next := cordOr(rd, k), cordOr(rd, k+1); p != "" && next != "" {
		return next
	} else if p != "" {
		return p
	}
	if p := cordOr(rd, PastIs(rd, i-1)); p != "" {
		return p
	}
	if f := rd.At(k).Fig; f != nil && Rates(f) {
		return cordOr(rd, k+1)
	}
	return ""
}

// cordOr is the kind of gear that the word at i names, a rope by any of its names.
func cordOr(rd *reading.Reading, i int) scan.Part {
	if p := Part(rd.At(i)); p != "" {
		return p
	}
	if rd.At(i).Marked(lexicon.MarkCord) {
		return lexicon.PartRope
	}
	return ""
}

// thinAsGear says whether the number at i is as thin as a rope, or a bare fraction, which
// is of an inch: common practice, no source.
func thinAsGear(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 0.006, 0.0255
	fig := rd.At(i).Fig
	if fig == nil || fig.Pair || fig.Falling || fig.Told != "" || fig.Claimed != "" || fig.Sure != "" {
		return false
	}
	return rd.Fraction(fig) && fig.High < 1 || fig.Short() && fig.Low >= thinnest && fig.High <= thickest
}

// ofOther says whether the number at i counts or measures something else: "1/2 wrap",
// "3/4 of it", "1 in bark", one of two sizes that are crossed.
func ofOther(rd *reading.Reading, i int) bool {
	next, before := rd.At(i+1), rd.At(PastIs(rd, i-1))
	named := func(e reading.Element) bool {
		return e.Piece() || e.Marked(lexicon.MarkPart|lexicon.MarkPlace) && Part(e) == "" && !e.Marked(lexicon.MarkCord)
	}
	counts := next.Term != nil && Part(next) == "" && !next.Marked(lexicon.MarkCord) && Strength(next) == "" && next.Looks(lexicon.Before)
	leads := before.Looks(lexicon.After) && cordOr(rd, PastIs(rd, i-1)) == "" && Strength(before) == ""
	behind := rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle)
	shares := next.Marked(lexicon.MarkMade|lexicon.MarkRelation) && cordOr(rd, behind) == ""
	return next.Cross || rd.At(i-1).Cross || named(next) || named(before) || counts || leads || shares
}

// ThickEnough says whether it is asked of a rope by its thickness if it is enough, "is 1/2
// in rope enough for a 900 lb log": strong enough, for nothing is told of how far it goes.
func ThickEnough(rd *reading.Reading) bool {
	enough := func(w string) bool { return rd.In.Cued(w, lexicon.CueEnough) }
	return rd.AnyAt(func(i int) bool {
		thick := rd.At(i-1).Fig != nil && OfRope(rd, i-1)
		return rd.TermAt(i).Intent == parser.AskRope && thick && slices.ContainsFunc(scan.SplitWords(rd.Word(rd.Elems[i])), enough)
	})
}
