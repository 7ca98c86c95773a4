package stops

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A load that runs takes whoever holds the rope along: that is a rope that slipped, and
// nobody lifts anybody.

// OffFeet reads "that one lifted Sam clean off his feet" and "the log lifted him off the
// ground with 1 wrap" so. Who it was needs no name that is known. "Will it lift him off his
// feet" asks whether the wraps are enough.
func OffFeet(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.Cued(rd.Elems[i], lexicon.CueSwept) && Person(rd, i+1) && rd.At(i-1).Piece() && rd.Worded(parser.Wraps) {
			rd.Elems[i].Term = &scan.Term{Slips: true} // "the log lifted Sam, 1 wrap"
		}
		from := sweptBy(rd, i)
		if from < 0 {
			continue
		}
		rd.Elems[from].Term = &scan.Term{Slips: rd.Cued(rd.Elems[from], lexicon.CueSwept)}
		start, end := rd.Elems[from].End, rd.Elems[i].Start
		rd.Elems[i].Term = &scan.Term{}
		rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
			return a.Kind == parser.Unknown && start <= a.Start && a.End <= end
		})
	}
}

// sweptBy is the verb before the words at i that take somebody's feet from the ground; -1
// where none is there. Of the ground alone it is so only where a load has done it to who
// had a rope on wraps: "lift Sam off the ground" asks to lift him.
func sweptBy(rd *reading.Reading, i int) int {
	feet := rd.Cued(rd.Elems[i], lexicon.CueOffFeet)
	if !feet && !(rd.Cued(rd.Elems[i], lexicon.CueOffGround) && rd.Worded(parser.Wraps)) {
		return -1
	}
	for j := i - 1; j >= max(0, i-Few) && rd.Elems[j].Pause == 0 && rd.Elems[j].Fig == nil && !rd.Elems[j].Piece(); j-- {
		swept := rd.Cued(rd.Elems[j], lexicon.CueSwept)
		if feet && (swept || rd.TermAt(j).Lifts) || swept && byLoad(rd, j) {
			return j
		}
	}
	return -1
}

// byLoad says whether what stands before the verb at i is a load or its rope: "the log",
// "that one".
func byLoad(rd *reading.Reading, i int) bool {
	j := i - 1
	for j > 0 && rd.Elems[j].Pause == 0 && !Person(rd, j) && rd.Elems[j].Polite() {
		j--
	}
	e := rd.At(j)
	return e.Piece() || rd.TermAt(j).Unnamed || e.Marked(lexicon.MarkCord)
}
