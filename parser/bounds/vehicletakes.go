package bounds

import (
	"regexp"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a truck or a trailer has room for is told as the longest piece that it takes, "the
// truck only takes pieces up to 6 ft", "el camión solo lleva trozos hasta 1,80": that bounds
// every piece of a cut, and is no length of the wood.

// tapeMetres is how a tape in metres is read off, and none in feet.
var tapeMetres = regexp.MustCompile(`^[0-9][.,][0-9]{2}$`)

// VehicleTakes claims such a length.
func VehicleTakes(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Told != "" || fig.Sure != "" || fig.Pair || fig.Falling {
			continue
		}
		bare := fig.Dim == parser.DimCount && fig.Unit == nil && rd.In.Comma && tapeMetres.MatchString(fig.Words(rd.Text))
		if !fig.Far() && !bare {
			continue
		}
		from, to := vehicleAt(rd, i)
		if from < 0 {
			continue
		}
		if bare {
			fig.Lent(scan.Metre)
		}
		for k := from; k < to; k++ {
			if k != i {
				rd.Elems[k].Term = &scan.Term{}
			}
		}
		rd.Elems[from].Term = &scan.Term{Intent: parser.AskCutPlan, Besides: true}
		fig.Elsewhere = false
		places.Claim(rd, i, parser.LongestPiece)
		return
	}
}

// vehicleAt finds the truck in the breath of the number at i that takes pieces so long, and
// where the words end that say so; -1 where there is none.
func vehicleAt(rd *reading.Reading, i int) (from, to int) {
	const farthest = 8 // words: "the truck can only take pieces no longer than"
	piece := func(k int) bool {
		t := rd.TermAt(k)
		return t.Unnamed || PluralAt(rd, k) || rd.At(k).Plays(parser.Length) && rd.At(k).Fig == nil
	}
	takes, pieces := false, false
	for from = i - 1; from >= 0 && i-from <= farthest; from-- {
		e, t := rd.Elems[from], rd.TermAt(from)
		if e.Pause > 0 || e.Fig != nil || t.Tree != nil || t.Stop != "" {
			return -1, 0
		}
		if load := e.Plays(parser.Payload); load || rd.Cued(e, lexicon.CueVehicle) {
			takes = takes || load // "truck takes" in one
			break
		}
		takes = takes || t.Bears || t.Receives || rd.Cued(e, lexicon.CueTakesLoad)
		pieces = pieces || piece(from) || e.Plays(parser.Limit) && !e.Marked(lexicon.MarkBound)
	}
	if from < 0 || i-from > farthest || !takes {
		return -1, 0
	}
	for to = i + 1; rd.At(to).Fig == nil && rd.At(to).Pause == 0 && piece(to); to++ {
		pieces = true
	}
	if !pieces {
		return -1, 0
	}
	return from, to
}
