package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How thick a rope is, where no word beside the number names the rope.

// thinMillimetres reads "100 kg log, block at 10 m, 13 mm": what is told in millimetres
// and is as thin as a rigging rope is across no piece. Beside other gear, or crossed with
// another size, or one of several, it may be anything.
func thinMillimetres(rd *reading.Reading, i int) bool {
	if !thinAsRope(rd, i) || rd.At(i+1).Cross || rd.At(i-1).Cross || rd.Elems[i].Fig.Sure != "" {
		return false
	}
	others := func(e reading.Element, s scan.Side) bool {
		return e.Piece() || e.Looks(s) || e.Marked(lexicon.MarkGear|lexicon.MarkPart|lexicon.MarkPlace) && Part(e) != lexicon.PartRope
	}
	if others(rd.At(i+1), lexicon.Before) || others(rd.At(PastIs(rd, i-1)), lexicon.After) {
		return false
	}
	loaded := rd.AnyAt(rd.Is(Heavy)) || rd.AnyAt(func(k int) bool { return Part(rd.Elems[k]) != "" })
	return loaded && !rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig.Short() }) // "12 mm, the sheave is 45 mm" is asked about
}

// thinAsRope says whether the number at i is told in millimetres and as thin as a
// rigging rope is: common practice, no source.
func thinAsRope(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 0.008, 0.0245
	fig := rd.Elems[i].Fig
	return fig.Short() && fig.Unit.Factor == 0.001 && fig.Low >= thinnest && fig.High <= thickest && !fig.Pair && !fig.Falling
}

// fractionRated reads "my 5/8 15,500 lb": a fraction with a strength right behind it, as
// the trade names its ropes. Behind other gear it is that one's: "shackle 3/4, 15k".
func fractionRated(rd *reading.Reading, i int) bool {
	rated := rd.At(rd.Forth(i + 1)).Fig
	own := rd.At(i - 1).Marked(lexicon.MarkPronoun | lexicon.MarkArticle)
	return own && rd.Fraction(rd.Elems[i].Fig) && rated != nil && Rates(rated) && Part(rd.At(i+1)) == ""
}

// thinBeforeBreak reads "half inch, 10,000 lb breaking strength" at the head of a breath: how
// thick the rope is whose strength stands behind it, where no other gear is named.
func thinBeforeBreak(rd *reading.Reading, i int) bool {
	rated := rd.At(i + 2).Fig
	if i > 0 && rd.At(i-1).Pause == 0 || rd.At(i+1).Pause != 2 || rated == nil || !thinAsGear(rd, i) {
		return false
	}
	ofRope := rated.Sure == parser.RopeBreak || rated.Sure == parser.RopeWorking
	p := PartMeant(rd)
	return ofRope && (p == "" || p == lexicon.PartRope) && !rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig.Short() })
}
