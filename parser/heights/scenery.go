package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What the whole tree measures is often told before the piece is: "a Douglas-fir, 34 inches
// at breast height and 130 feet tall. What would a 12 foot top weigh, 9 inches at the cut?"
// Where the piece has sizes of its own, those of the tree are passed over and said back. So
// is how far a tree or a piece leans, "leans 8 degrees": no rope turns by that.

// TreesSizes passes over how thick the trunk is at chest height, and how tall the tree.
func TreesSizes(rd *reading.Reading) {
	for k := range rd.Elems {
		if rd.TermAt(k).Ask != parser.BreastHigh {
			continue
		}
		at := rd.Back(k - 1)
		if !rd.At(at).Fig.Short() || !pieceThick(rd, at) {
			continue
		}
		rd.Pass(at, k+1)
		treesTall(rd)
		return
	}
}

// pieceThick says whether another thickness than that at i is told, and no thin end's.
func pieceThick(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool {
		f := rd.Elems[k].Fig
		tip := rd.At(k+1).Plays(parser.TipDiameter) || rd.At(rd.Back(k-1)).Plays(parser.TipDiameter)
		return k != i && f.Short() && f.High > reading.ThickestRope && !tip && !gear.OfRope(rd, k)
	})
}

// treesTall passes over how tall the tree is beside how long the piece is.
func treesTall(rd *reading.Reading) {
	for i := range rd.Elems {
		tall := rd.At(i + 1).Marked(lexicon.MarkTall | lexicon.MarkHigh)
		other := func(k int) bool { return k != i && gear.Far(rd, k) }
		if gear.Far(rd, i) && tall && rd.Elems[i].Fig.Low >= leastTall && rd.AnyAt(other) {
			rd.Pass(i, i+2)
			return
		}
	}
}

// Leans passes over the angle at which wood leans. That of a limb which is stood up is
// asked for.
func Leans(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskRaise) || TellsOfHinge(rd) {
		return
	}
	for i := 1; i < len(rd.Elems); i++ {
		f, by := rd.Elems[i].Fig, rd.Back(i-1)
		if f == nil || f.Dim != parser.DimAngle || f.Told != "" || rd.TermAt(by).Note != noteLean || rd.At(by-1).Marked(lexicon.MarkCord) {
			continue
		}
		rd.Pass(i, i+1)
		return
	}
}

// noteLean is the note of wood that leans.
const noteLean = "lean"
