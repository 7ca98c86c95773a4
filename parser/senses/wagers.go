package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
	"heft/parser/turning"
)

// Two who differ in what a piece weighs want to be told: "the boss says 500, I say
// 800". Neither is what it weighs where its sizes tell that.

// Wagers passes over what two or more people say that a piece weighs, where the
// sizes tell it and nothing but the weight is asked for.
func Wagers(rd *reading.Reading) {
	var from, to []int
	for i := 0; i < len(rd.Elems); i++ {
		if k := wagered(rd, i); k > 0 {
			from, to = append(from, i), append(to, k+1)
			i = k
		}
	}
	if len(from) < 2 || !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Wagers }) || !sizesTold(rd) {
		return
	}
	gone := 0
	for n := range from {
		rd.Pass(from[n]-gone, to[n]-gone)
		gone += to[n] - from[n]
	}
}

// MadeIt reads "I make the first log 640 lb, agree?" and "750 lb sound right?" as what somebody says that a piece
// weighs whose sizes are told: the answer holds it against them.
func MadeIt(rd *reading.Reading) {
	if !sizesTold(rd) {
		return
	}
	for i := range rd.Elems {
		asked := rd.TypedAfter(i, lexicon.CueSeemsRight)
		if !gear.Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || !rd.EndsBreath(i+1) && !asked {
			continue
		}
		k := i
		for k > 0 && !rd.TypedBefore(k, lexicon.CueMakesIt) && ofPieceOrTalk(rd, k-1) {
			k--
		}
		alone := k == 0 || rd.At(k-1).Pause > 0
		if (rd.TypedBefore(k, lexicon.CueMakesIt) || asked && alone) && !onGear(rd, k) {
			rd.Elems[i].Fig.Told = parser.Weight
		}
	}
}

// onGear says whether gear or its label stands in the breath before the element at i: "la
// etiqueta dice 2000 kg" weighs nothing.
func onGear(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if stops.Kit(rd, k) || rd.TermAt(k).Label || gear.Part(rd.Elems[k]) != "" {
			return true
		}
	}
	return false
}

// ofPieceOrTalk says whether the element at i only names a piece, or says nothing.
func ofPieceOrTalk(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Pause == 0 && (e.Piece() || rd.TermAt(i).Unnamed || e.Marked(lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkAdjective) || e.Polite() || rd.TermAt(i).Note == "about")
}

// sizesTold says whether the message tells a tree, a thickness and one length, and
// nothing but the weight is asked for.
func sizesTold(rd *reading.Reading) bool {
	tree, thick, long := false, false, 0
	for i, e := range rd.Elems {
		tree = tree || rd.TermAt(i).Tree != nil
		thick = thick || e.Fig.Short() && !gear.OfRope(rd, i)
		if gear.Far(rd, i) {
			long++
		}
	}
	more := func(i int) bool {
		somebody := rd.TermAt(i).Human && rd.At(i-1).Fig == nil // "the new guy says 500"
		return turning.BesidesWeight(rd, i) && !somebody
	}
	return tree && thick && long == 1 && !rd.AnyAt(more)
}

// wagered is the number that somebody says at i that a piece weighs, 0 where none
// is: "dice que pesa como 500", "i say more than 800".
func wagered(rd *reading.Reading, i int) int {
	const least = 20 // what is less is rather no weight
	if !rd.TermAt(i).Wagers && !rd.At(i).Plays(parser.Weight) {
		return 0
	}
	k := i + 1
	for n := 0; n < 4 && rd.At(k).Fig == nil && !rd.At(k).Plays(parser.Limit) && (rd.At(k).Marked(lexicon.MarkBound|lexicon.MarkIs|lexicon.MarkPronoun|lexicon.MarkMade|lexicon.MarkArticle) || rd.At(k).Plays(parser.Weight) || rd.TermAt(k).Note == "about" || rd.At(k).Polite()); n++ {
		k++
	}
	fig := rd.At(k).Fig
	if fig == nil || fig.Dim != parser.DimMass && (fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low < least) {
		return 0
	}
	return k
}

// HeldAgainst reads "is a white ash log 22 in by 4 ft over 600 lb?" as what the piece
// may weigh: the answer says whether it does. Where nothing asks so, the weight could
// be told of it.
func HeldAgainst(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if than := rd.TermAt(i).Turning == parser.TurnsCompared && rd.Cued(rd.At(i+1), lexicon.CueThan); than && gear.Heavy(rd, i+2) && turning.AsksOver(rd, i) {
			rd.Elems[i].Term = &scan.Term{}
			places.Claim(rd, i+2, parser.Limit) // "is that heavier than 500 lb"
			return
		}
		if !e.Marked(lexicon.MarkBound) || !gear.Heavy(rd, i+1) || !turning.AsksOver(rd, i) && !(turning.AsksOfPiece(rd, i) && (turning.SizedWhole(rd) || sizesTold(rd))) && !(turning.OverAlone(rd, i) && sizesTold(rd)) {
			continue
		}
		places.Claim(rd, i+1, parser.Limit)
		return
	}
}
