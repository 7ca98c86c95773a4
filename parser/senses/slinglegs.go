package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// SlingLegs reads "two slings, 90 degrees between them, 800 lb" as the two legs that one
// load hangs on: the weight is the load's, and none that a sling is rated for.
func SlingLegs(rd *reading.Reading) {
	at := twoSlings(rd)
	if at < 0 || !onSlings(rd, at) {
		return
	}
	places.Claim(rd, at-1, parser.Lines)
	rd.Elems[at].Term = &scan.Term{Note: parser.Bridled, Marks: lexicon.MarkBridle, Intent: parser.AskBalance}
	for i := at + 1; i < len(rd.Elems); i++ {
		if sling(rd, i) && !rd.TermAt(i-1).Each {
			rd.Elems[i].Term = &scan.Term{}
		}
	}
}

// twoSlings is the element of the slings behind a "two", -1 where there is none.
func twoSlings(rd *reading.Reading) int {
	for i := range rd.Elems {
		fig := rd.At(i - 1).Fig
		if sling(rd, i) && fig != nil && fig.Dim == parser.DimCount && fig.Low == 2 && fig.High == 2 {
			return i
		}
	}
	return -1
}

func sling(rd *reading.Reading, i int) bool { return gear.Part(rd.At(i)) == lexicon.PartSling }

// onSlings says whether one load and the angle between the slings at i are told, and
// nothing of what a sling is rated for.
func onSlings(rd *reading.Reading, at int) bool {
	angle, heavy := false, 0
	for i, e := range rd.Elems {
		switch {
		case gear.Strength(e) != "":
			return false
		case gear.Heavy(rd, i):
			heavy++
		case e.Fig != nil && e.Fig.Dim == parser.DimAngle && i > at:
			angle = angle || rd.At(i+1).Plays(parser.BlockAngle)
		}
	}
	return angle && heavy == 1
}
