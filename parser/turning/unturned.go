package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Degree leaves out "barely" before what a rope does at a block, and before what
// somebody sees or knows. Whatever else is told, the word turns: how somebody fares,
// and what a rope holds.
func Degree(rd *reading.Reading, i int) {
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	if rd.At(i+1).Marked(lexicon.MarkDeflects) || ofTalk(rd, word) {
		LeaveOut(rd, i, i+1)
	}
}

// LeansBack takes the doubt from "it leans 4 ft the wrong way": which way it leans is told.
func LeansBack(rd *reading.Reading, i int) {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if rd.TermAt(k).Note == "lean" {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
			return
		}
	}
}

// Indeed leaves out "actually" in the middle of what is asked or said, where it
// takes nothing back: no fact stands behind it, or none of its kind before it.
func Indeed(rd *reading.Reading, i int) {
	from, to := clause(rd, i)
	fact := nextFact(rd, i+1)
	begins := from == i && (i == 0 || rd.At(i-1).Pause > 0 || parts(rd, i-1))
	switch {
	case fact >= 0 && toldBefore(rd, i, fact), fact < 0 && bounds.Turnable(rd, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkIs)):
	case begins && rd.AnyAt(func(k int) bool { return k < i && bounds.Turnable(rd, k) }):
	case begins && !tellsPiece(rd), i+1 >= to && fact < 0 && begins:
	default:
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
	}
}

// toldBefore says whether a fact of the kind of that at n is told before i.
func toldBefore(rd *reading.Reading, i, n int) bool {
	fig := rd.At(n).Fig
	return rd.AnyAt(func(k int) bool {
		other := rd.Elems[k].Fig
		return k < i && (OtherTree(rd, k, n) || fig != nil && other != nil && (other.Dim == fig.Dim || fig.Unit == nil || other.Unit == nil))
	})
}

// Twofold leaves out what somebody says that a block bears, "does it see double the
// log": the answer tells.
func Twofold(rd *reading.Reading, i int) {
	borne := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskBlockLoad })
	wraps := rd.AnyAt(func(k int) bool { return rd.Elems[k].Plays(parser.Wraps) })
	if borne && !wraps && rd.At(i+1).Fig == nil && rd.At(i-1).Fig == nil && !rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkMade)).Marked(lexicon.MarkPronoun) {
		LeaveOut(rd, i, i+1)
	}
}

// Plus takes the word at i for "and" before what adds to nothing that is told
// before it: "plus i guess 5 wraps".
func Plus(rd *reading.Reading, i int) {
	if gear.BlockBefore(rd, i) && (rd.TermAt(rd.Past(i+1, +1, lexicon.MarkArticle)).Block != "" || secondAtBase(rd, i)) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkAnd} }) // blocks in a rope's path
		return
	}
	if leavesToo(rd, i) || plusAsk(rd, i) || plusTold(rd, i) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkAnd} })
		return
	}
	n := i + 1
	for n < len(rd.Elems) && rd.Elems[n].Pause == 0 && rd.Elems[n].Fig == nil && (rd.Elems[n].Polite() || rd.Elems[n].Marked(lexicon.MarkPronoun) || rd.TermAt(n).Note == "about") {
		n++
	}
	if CountedBy(rd, n+1) && !rd.AnyAt(func(k int) bool {
		return k < n && CountedBy(rd, k) && rd.At(k).Plays(parser.Wraps) == rd.At(n+1).Plays(parser.Wraps)
	}) && rd.At(i-1).Fig == nil {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkAnd} })
	}
}

// leavesToo reads "a 13 in limb, 22 ft, plus leaves": what a limb weighs is told with
// its leaves. Behind a weight they may come on top of it.
func leavesToo(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkPronoun)
	limb := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Shape == parser.Limb })
	weighed := rd.AnyAt(func(k int) bool { return k < i && gear.Heavy(rd, k) })
	return limb && !weighed && rd.Cued(rd.At(j), lexicon.CueLeafy) && rd.EndsBreath(j+1)
}

// Lengthening leaves out "do they get longer going up" of pieces that a cut is asked
// for: the answer tells how long those from either end are.
func Lengthening(rd *reading.Reading, i int) {
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	if gear.AsksFor(rd, parser.AskCutPlan) && !bounds.Turnable(rd, i-1) && !bounds.Turnable(rd, i+1) && !rd.At(i+1).Marked(lexicon.MarkPronoun) && !rd.In.Cued(word, lexicon.CueThan) {
		LeaveOut(rd, i, i+1)
	}
}

// LessWraps leaves out "less" where how many wraps it takes is asked and none are told:
// "less wraps for me then?".
func LessWraps(rd *reading.Reading, i int) {
	word, _ := scan.NextWord(rd.Text[rd.Elems[i+1].End:])
	told := rd.AnyAt(func(k int) bool {
		return rd.Elems[k].Plays(parser.Wraps) && (rd.At(k-1).Fig != nil || rd.At(k+1).Fig != nil)
	})
	if rd.TermAt(i+1).Intent == parser.AskLower && !told && rd.At(i-1).Pause > 0 && rd.At(i+2).Fig == nil && !rd.In.Cued(word, lexicon.CueThan) {
		LeaveOut(rd, i, i+1)
	}
}

// Bunch takes brush that is bundled up for a load like any, where its weight is all that
// is told: "brush bundle prolly 180 lb".
func Bunch(rd *reading.Reading, i int) {
	weights := 0
	for k, e := range rd.Elems {
		switch {
		case gear.Heavy(rd, k):
			weights++
		case e.Piece(), e.Fig != nil && e.Fig.Dim == parser.DimLength:
			return
		}
	}
	if weights == 1 {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
	}
}

// EachOfAll takes the doubt from what is asked of each block, or of each leg of two:
// the answer has them all. Behind a number it says something of that.
func EachOfAll(rd *reading.Reading, i int) {
	next := rd.Past(i+1, +1, lexicon.MarkArticle)
	blocks := rd.TermAt(next).Block != "" && Redirected(rd)
	legs := (rd.At(next).Plays(parser.Legs) || rd.At(next).Marked(lexicon.MarkTwins|lexicon.MarkBridle)) && rd.AnyAt(func(k int) bool {
		return k != next && (rd.Elems[k].Marked(lexicon.MarkTwins|lexicon.MarkBridle) || rd.Elems[k].Plays(parser.Legs))
	})
	alone := legsTold(rd) && !bounds.Turnable(rd, i-1) && !bounds.Turnable(rd, next) // "does each one take the load"
	angled := legsTold(rd) && rd.At(next).Fig != nil && rd.At(next).Fig.Dim == parser.DimAngle
	if (blocks || legs || alone && rd.At(next).Fig == nil || angled) && rd.At(i-1).Fig == nil && rd.At(next+1).Fig == nil {
		rd.Alter(i, func(t *scan.Term) { t.Ask, t.Each = "", false })
	}
}

// legsTold says whether two legs bear the piece.
func legsTold(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool {
		return rd.Elems[k].Marked(lexicon.MarkTwins|lexicon.MarkBridle) || rd.Elems[k].Plays(parser.Legs)
	})
}

// Several leaves out "both" and "every" before words of talk.
func Several(rd *reading.Reading, i int) {
	next := i + 1
	if e := rd.At(next); e.Fig == nil && (e.Marked(lexicon.MarkTwins|lexicon.MarkBridle) || e.Plays(parser.Legs)) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} }) // "both legs at 45°"
		return
	}
	if bothLines(rd, i) {
		rd.Elems[i].Term = &scan.Term{} // "lifting line and lowering line both on one lead"
		return
	}
	talk := TalkBehind(rd, i) || rd.At(next).Pause == 0 && rd.TermAt(next).Chatter && !Who(rd, next)
	if few := rd.Cued(rd.Elems[i], lexicon.CueFew) && gear.AsksFor(rd, parser.AskCutPlan) && !bounds.Turnable(rd, next); talk && !bounds.Turnable(rd, i-1) || few {
		LeaveOut(rd, i, i+1)
	}
}

// bothLines says whether the word at i speaks of the two lines right before it.
func bothLines(rd *reading.Reading, i int) bool {
	k := i - 1
	if gear.Part(rd.At(k)) != lexicon.PartRope || rd.At(i+1).Fig != nil || rd.At(i+1).Piece() {
		return false
	}
	for k--; k >= 0 && !rd.At(k).Marked(lexicon.MarkAnd); k-- {
		if rd.At(k).Pause > 0 || rd.At(k).Fig != nil {
			return false
		}
	}
	return gear.Part(rd.At(k-1)) == lexicon.PartRope
}

// RopeLegs reads the legs that are told with a redirect as those of the rope
// there, where no sling is named: the two at the block, or as many as the load
// is roved on, "150 kg en tres ramales".
func RopeLegs(rd *reading.Reading) {
	if !Redirected(rd) || gear.SlingNamed(rd) {
		return
	}
	places.BetweenTwo(rd)
	for i := 0; i < len(rd.Elems); i++ {
		e := rd.Elems[i]
		if !e.Plays(parser.Legs) {
			continue
		}
		roved := e.Term.Roved
		rd.Alter(i, func(t *scan.Term) {
			*t = scan.Term{Marks: t.Marks &^ (lexicon.MarkBridle | lexicon.MarkTwins), Part: t.Part}
		})
		switch fig := rd.At(i - 1).Fig; {
		case places.Bare(fig, 2):
			rd.Elems = slices.Delete(rd.Elems, i-1, i)
			i--
		case fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil:
		case roved && fig.Low > 2:
			fig.Dim, fig.Told = parser.DimRatio, parser.Parts
		default:
			fig.Elsewhere = true // "on 3 legs" could be a sling all the same
		}
	}
}

// Redirected says whether a block is named that leads the rope on.
func Redirected(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return parser.Redirecting(rd.TermAt(i).Block) })
}
