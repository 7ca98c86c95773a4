package stops

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What somebody weighs who holds the rope is told beside the piece: "ground guy
// weighs 140 lb, will he hold a 700 lb limb with 3 wraps". It is passed over and
// said back: what a hand holds does not come from it.

// Bodies passes over such a number where it is asked whether that person holds.
func Bodies(rd *reading.Reading) {
	pullersBodies(rd)
	namedBodies(rd)
	othersBodies(rd)
	bareBodies(rd)
	ownBody(rd)
	if !rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() }) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		k := bodyOf(rd, i)
		if k < 0 || !thenHolds(rd, i+1) || !rd.AnyAt(func(j int) bool { return j != i && gear.Heavy(rd, j) }) {
			continue
		}
		rd.Pass(k+1, i+1)
		i = k
	}
}

// ownBody passes over what who speaks weighs, "i'm not big, 55 kilos", where a load is
// told besides or how that person is built: no piece is "i". Likewise of somebody who is
// called one of the people. Who is to be lifted is left for the stops.
func ownBody(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if from := selfWeighs(rd, i); from >= 0 {
			rd.Pass(from, raw(rd, i+1))
			return
		}
		if fig == nil || fig.Dim != parser.DimMass || fig.Low != fig.High || fig.Low < Lightest || fig.High > heaviest || !rd.SaidOut(i+1) && rd.TermAt(i+1).Note != wetRope || Hangs(rd, i) {
			continue
		}
		k, built, person := i-1, false, false
		for k >= 0 && (rd.At(k).Pause == 2 || rd.At(k).Pause == 0 && howBuilt(rd, k)) {
			built, person = built || rd.Cued(rd.At(k), lexicon.CueBuilt), person || rd.At(k).Plays(parser.People)
			k--
		}
		loaded := rd.AnyAt(func(j int) bool { return j != i && gear.Heavy(rd, j) })
		own := rd.Cued(rd.At(k), lexicon.CueOwnWeight) && (built || loaded || sizedBesides(rd))
		if !own && !(person && loaded && rd.Cued(rd.At(k), lexicon.CueItself)) {
			continue // "he's a small lad, 60 kg"
		}
		rd.Pass(min(k+1, i), raw(rd, i+1))
		return
	}
}

// howBuilt says whether the element at i only tells of somebody's build, "a small lad".
func howBuilt(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return !rd.Cued(e, lexicon.CueOwnWeight) && (saysWeight(rd, i) || rd.Cued(e, lexicon.CueBuilt) || e.Marked(lexicon.MarkArticle) || e.Plays(parser.People))
}

// bareBodies passes over what somebody weighs by a bare number where a load is told
// with its unit: "groundie is maybe 140 soaking wet, 2 wraps, 500 lb". Of who is told
// to be "at" so much, it is how high he is.
func bareBodies(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		k := bareBody(rd, i)
		if k < 0 || !loadBesides(rd, i) {
			continue
		}
		end := i + 1
		if rd.TermAt(end).Note == wetRope {
			end++ // "140 soaking wet" says it of him
		}
		rd.Pass(k+1, end)
		i = k
	}
}

// bareBody is the person that the bare number at i is the weight of, -1 for none.
func bareBody(rd *reading.Reading, i int) int {
	const least, lightest, most = 40, 90, 350 // in kilograms where it says that he weighs, and in pounds
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low != fig.High || fig.High > most || !rd.EndsBreath(i+1) && rd.TermAt(i+1).Note != wetRope {
		return -1
	}
	k := i - 1
	for k >= 0 && rd.Elems[k].Pause == 0 && saysWeight(rd, k) && !Person(rd, k) {
		k--
	}
	of := rd.At(k)
	if k < 0 || !Person(rd, k) && !rd.TermAt(k).RopeEnd && !rd.Cued(of, lexicon.CueItself) || k == i-1 && !rd.Cued(of, lexicon.CueItself) || next.Piece() {
		return -1
	}
	weighs := of.Plays(parser.Weight)
	for j := k + 1; j < i; j++ {
		weighs = weighs || rd.At(j).Plays(parser.Weight)
	}
	if fig.Low < lightest && !(weighs && fig.Low >= least) {
		return -1
	}
	return k
}

// bodyOf is the person that the number at i is the weight of, -1 for none: "guy
// is only 140 lb". A bare number needs a word that weighs.
func bodyOf(rd *reading.Reading, i int) int {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Low != fig.High || rd.At(i+1).Piece() || rd.At(i+1).Fig != nil || rd.TermAt(i+1).Strength != "" || rd.At(i+1).Plays(parser.PersonPull) || rd.At(i+1).Cross {
		return -1
	}
	k := i - 1
	for k >= 0 && rd.Elems[k].Pause == 0 && saysWeight(rd, k) && !Person(rd, k) {
		k--
	}
	said := k >= 0
	weighs := said && strings.Contains(strings.ToLower(rd.Text[rd.Elems[k].Start:fig.Start]), "weigh")
	const least, most = 30, 450 // what a bare number may be, in either unit
	switch {
	case !said || !Person(rd, k) || k == i-1 && !rd.Cued(rd.Elems[k], lexicon.CueItself):
		return -1
	case fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest:
		return k
	case fig.Dim == parser.DimCount && fig.Unit == nil && weighs && fig.Low >= least && fig.High <= most:
		return k
	}
	return -1
}

// saysWeight says whether the element at i only links somebody to what he weighs.
func saysWeight(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.Elems[i], lexicon.CueWeighing)
}

// thenHolds says whether nothing from the element at i on comes before it is
// asked whether that person holds: not where he is, nor what he hangs on.
func thenHolds(rd *reading.Reading, i int) bool {
	for ; i < len(rd.Elems); i++ {
		e, t := rd.Elems[i], rd.TermAt(i)
		switch {
		case personHolds(rd, i):
			return true
		case e.Fig != nil, e.Piece(), e.Marked(lexicon.MarkRelation | lexicon.MarkIn | lexicon.MarkPlace), t.Hung, t.Hangs, len(t.Roles) > 0:
			if !Person(rd, i) {
				return false
			}
		}
	}
	return false
}

// personHolds reads "will he hold", "can the ground guy hold it".
func personHolds(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Term != nil && e.Term.Intent == parser.AskLower && rd.Cued(e, lexicon.CueHolds) && (Person(rd, i-1) || rd.At(i-1).Marked(lexicon.MarkPronoun))
}
