package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What puts a number right is of the same thing, and mostly says so no second time: "2 guys
// on the rope, i mean 3", "the limit is 400 lb, sorry, 300 lb".

// ofOneRole finds the one number before i that has what is counted behind it, as the one
// at n has, however far it is: "2 people on the rope, a 600 lb limb, i mean 3 people". It is
// -1 where there is none or another.
func ofOneRole(rd *reading.Reading, i, n int) int {
	if b := rd.At(n).Fig; b == nil || b.Pair || !CountedBy(rd, n+1) {
		return -1
	}
	words, found := RoleBehind(rd, n), -1
	for p := range i {
		a := rd.Elems[p].Fig
		if a == nil || !CountedBy(rd, p+1) || RoleBehind(rd, p) != words {
			continue
		}
		if found >= 0 || a.Pair || words == "" {
			return -1
		}
		found = p
	}
	return found
}

// countedAlone finds what the bare number at n counts, which the words of taking back at i
// lead to: so many as are counted right before them, "2 guys on the rope, i mean 3".
func countedAlone(rd *reading.Reading, i, n int) int {
	const most, farthestBack = 2, 6
	b := rd.At(n).Fig
	if b == nil || b.Unit != nil || b.Dim != parser.DimCount || b.Pair || n != i+1 || !rd.EndsBreath(n+1) {
		return -1
	}
	for p := i - 1; p >= max(0, i-farthestBack) && rd.Elems[p].Pause < 4; p-- {
		if a := rd.Elems[p].Fig; a != nil {
			if a.Unit == nil && !a.Pair && CountedBy(rd, p+1) && a.High <= most*b.High && b.High <= most*a.High {
				return p
			}
			return -1
		}
	}
	return -1
}

// inherit gives the number at n what is told of the one at p that it puts right, where
// nothing is told of it: what is counted, or that it is a limit.
func inherit(rd *reading.Reading, p, n int) {
	if rd.At(n).Fig == nil || rd.At(p).Fig == nil || RoleBehind(rd, n) != "" {
		return
	}
	lead := rd.WordsBefore(p)
	switch {
	case CountedBy(rd, p+1):
		lend(rd, n+1, rd.Elems[n].End, rd.Elems[p+1])
	case gear.Heavy(rd, p) && rd.At(lead).Plays(parser.Limit) && !rd.At(rd.WordsBefore(n)).Plays(parser.Limit):
		lend(rd, n, rd.Elems[n].Start, rd.Elems[lead])
		rd.Elems[lead].Term = &scan.Term{Chatter: true}
	case lead >= 0 && ofEnd(rd.At(lead)) && !ofEnd(rd.At(rd.WordsBefore(n))):
		lend(rd, n, rd.Elems[n].Start, rd.Elems[lead]) // "butt end is 42 cm... no sorry 46"
		rd.Elems[lead].Term = &scan.Term{Chatter: true}
	}
}

// ofEnd says whether words before a number tell at which end of the piece it is so thick.
func ofEnd(e reading.Element) bool {
	return e.Fig == nil && e.Looks(lexicon.After) && slices.ContainsFunc(parser.Across, e.Plays)
}

// lend puts the words of another number beside one, at a place of the text where none are.
func lend(rd *reading.Reading, i, at int, words reading.Element) {
	words.Start, words.End = at, at
	rd.Elems = slices.Insert(rd.Elems, i, words)
}

// sizedOver finds the one number before i of the unit of that at n, where words say of that
// what a bare size is by itself: "20 in log, 8 ft, no sorry 22 in across". A number with words
// of its own is another, and so is one whose words stand before it.
func sizedOver(rd *reading.Reading, i, n int) int {
	switch f := RoleBehind(rd, n); f {
	case parser.Diameter, parser.ButtDiameter:
	default:
		return -1
	}
	b, found := rd.Elems[n].Fig, -1
	if b == nil || b.Unit == nil || b.Pair {
		return -1
	}
	for p := range i {
		a := rd.Elems[p].Fig
		if a == nil || a.Unit != b.Unit {
			continue
		}
		lead := rd.At(rd.WordsBefore(p))
		if found >= 0 || a.Pair || RoleBehind(rd, p) != "" || lead.Looks(lexicon.After) && !lead.Plays(parser.Diameter) || max(a.High/b.High, b.High/a.High) > mostApart {
			return -1
		}
		found = p
	}
	return found
}
