package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Who speaks tells a weight that is nobody's load where that one holds or lifts: it is
// passed over and said back.

// sizedBesides says whether a piece is told by its tree and sizes, and nothing is to hold
// who speaks: "red oak 14 in 6 ft, can i lower it by hand, i weigh 58 kg".
func sizedBesides(rd *reading.Reading) bool {
	me := func(i int) bool {
		return rd.Cued(rd.Elems[i], lexicon.CueSelf) || rd.Cued(rd.Elems[i], lexicon.CueHoldsMe)
	}
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Tree != nil }) && rd.AnyAt(rd.Is(thick)) && !rd.AnyAt(me)
}

// thick says whether the number at i is how thick a piece is.
func thick(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig != nil && fig.Dim == parser.DimLength && !fig.Far()
}

// selfWeighs is where the words begin by which who speaks, and works alone, tells at i what
// that one weighs: "yo nomás peso 58 kilos", or "cuánto puedo levantar yo solo, peso 165
// libras", where it is asked how much that one lifts. -1 where it may be a load's.
func selfWeighs(rd *reading.Reading, i int) int {
	fig, k := rd.Elems[i].Fig, i-1
	if fig == nil || !bodily(fig) || !rd.SaidOut(i+1) && rd.TermAt(i+1).Note != wetRope {
		return -1
	}
	for k > 0 && (rd.Cued(rd.At(k), lexicon.CueOwnWeight) || rd.At(k).Plays(parser.Weight) || rd.At(k).Marked(lexicon.MarkAt)) {
		k--
	}
	for k > 0 && k < i-1 && rd.At(k).Pause == 0 && (rd.TermAt(k).Chatter || rd.At(k).Polite()) && rd.TermAt(k).Count == 0 {
		k-- // "sin ayuda, oye peso 80 kilos"
	}
	apart := rd.At(k).Pause == 2
	if apart {
		k--
	}
	if k == i-1 || rd.TermAt(k).Count != 1 {
		return -1
	}
	most := rd.AnyAt(func(j int) bool { return rd.TermAt(j).Note == parser.MostWanted })
	switch {
	case !apart && most:
		return k + 1
	case !apart && rd.At(k-1).Fig != nil && rd.At(k-1).Fig.Sure == parser.People:
		return k - 1 // nobody but who speaks weighs that, and who holds is told nowhere
	case apart && most:
		return k + 2
	}
	return -1
}

// bodily says whether a number may be what somebody weighs: in pounds or kilograms where it
// has no unit.
func bodily(fig *reading.Figure) bool {
	const least, most = 40, 350
	if fig.Low != fig.High {
		return false
	}
	if fig.Dim == parser.DimCount && fig.Unit == nil {
		return fig.Low >= least && fig.High <= most
	}
	return fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest
}
