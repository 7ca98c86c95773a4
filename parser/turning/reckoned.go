package turning

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What somebody reckons that a pull comes to is talk where the answer tells the pull:
// "two parts so i pull half?", "does each leg take half the load".

// ReckonedShare leaves out the share at i, with the load that it is of, and says whether
// it is such a one. What another line takes is no talk.
func ReckonedShare(rd *reading.Reading, i int) bool {
	if TurnedBy(rd, i) != parser.TurnsPart || !pullAnswered(rd) || rd.At(i-1).Fig != nil {
		return false
	}
	before := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdverb|lexicon.MarkTrailing)
	end := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkArticle|lexicon.MarkPronoun)
	pulls, whole := rd.Cued(rd.At(before), lexicon.CueCarries), rd.Cued(rd.At(end), lexicon.CueBorne)
	if whole {
		end++
	}
	if !pulls && !whole || !rd.SaidOut(end) || TalkBehind(rd, i) || onOtherLine(rd, before) {
		return false
	}
	LeaveOut(rd, i, end)
	return true
}

// pullAnswered says whether it is told of a lift, of a block or of two legs, so that the
// answer tells what is pulled or borne.
func pullAnswered(rd *reading.Reading) bool {
	legs := func(i int) bool { return rd.Elems[i].Marked(lexicon.MarkTwins | lexicon.MarkBridle) }
	return Lifting(rd) || gear.AsksFor(rd, parser.AskBlockLoad) || rd.AnyAt(legs)
}

// onOtherLine says whether what carries at i is gear that shares the load: "the tag line
// takes half".
func onOtherLine(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && !parts(rd, k); k-- {
		if e, in := rd.Elems[k], rd.TermAt(k).Intent; in == parser.AskBalance && !e.Marked(lexicon.MarkBridle) || in == parser.AskSwing || rd.TermAt(k).Others || rd.TermAt(k).Another || stops.Kit(rd, k) || e.Marked(lexicon.MarkGear|lexicon.MarkCord) && !e.Marked(lexicon.MarkTwins|lexicon.MarkBridle) {
			return true
		}
	}
	return false
}

// OffBys pass over how far a size may be off, "if im off by an inch": the answer tells
// what a thicker piece weighs.
func OffBys(rd *reading.Reading) {
	const most = 0.08
	for i, e := range rd.Elems {
		before := scan.SplitWords(rd.Text[:e.Start])
		n := len(before)
		if e.Fig == nil || n < 2 || e.Fig.Dim != parser.DimLength || !e.Fig.Unit.Fine || e.Fig.High > most || !rd.EndsBreath(i+1) {
			continue
		}
		if rd.In.Cued(before[n-2]+" "+before[n-1], lexicon.CueOffBy) {
			Blank(rd, i, i+1)
		}
	}
}

// Lifting says whether it is told of a lift: by the parts of line, or in so many
// words.
func Lifting(rd *reading.Reading) bool {
	return gear.AsksFor(rd, parser.AskLift) || rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Dim == parser.DimRatio || fig.Dim == parser.DimCount && rd.At(i+1).Plays(parser.Parts))
	})
}

// GuessTimes leaves out what somebody makes of another's guess, "i'd have said double
// that", "feels like half that", where the sizes tell the weight; it says whether it did.
func GuessTimes(rd *reading.Reading, i int) bool {
	from, to := clause(rd, i)
	if felt(rd, i, to) {
		for to > i+1 && rd.EndsBreath(to-1) {
			to-- // courtesy behind it is none of it
		}
		LeaveOut(rd, from, to)
		return true
	}
	that := rd.At(i + 1)
	guess := (that.Marked(lexicon.MarkArticle) || that.Marked(lexicon.MarkPronoun)) && rd.Cued(that, lexicon.CueThat)
	next := rd.At(i + 2)
	if !rd.Cued(rd.Elems[i], lexicon.CueTwofold) || !guess || next.Fig != nil || next.Piece() || stops.Kit(rd, i+2) || len(rd.TermAt(i+2).Roles) > 0 || !tellsPiece(rd) || rd.At(i-1).Fig != nil {
		return false
	}
	if said := rd.TermAt(i - 1).Wagers; !said && (!anyWho(rd, from, i) || bounds.AnyWithin(rd, from-1, i, func(k int) bool { return !smallTalk(rd, k) })) {
		return false
	}
	weighed := guessedBefore(rd, i)
	if weighed {
		LeaveOut(rd, from, i+2)
	}
	return weighed
}

// felt says whether the share at i is what a weight told before feels like, and nothing
// else is told up to the end of its clause.
func felt(rd *reading.Reading, i, to int) bool {
	if TurnedBy(rd, i) != parser.TurnsPart && !rd.Cued(rd.Elems[i], lexicon.CueTwofold) || !rd.TypedBefore(i, lexicon.CueFeelsLike) || !guessedBefore(rd, i) || !tellsPiece(rd) {
		return false
	}
	return !bounds.AnyWithin(rd, i, to, func(k int) bool {
		return rd.Elems[k].Fig != nil || rd.Elems[k].Piece() || stops.Kit(rd, k) || len(rd.TermAt(k).Roles) > 0
	})
}

// guessedBefore says whether a weight is told before i, and none that gear is rated for:
// "block 4000 lb, i reckon double that".
func guessedBefore(rd *reading.Reading, i int) bool {
	last := i - 1
	for last >= 0 && !gear.Heavy(rd, last) {
		last--
	}
	rates := stops.Kit(rd, last-1) || stops.Kit(rd, last+1) || gear.Strength(rd.At(last+1)) != ""
	return last >= 0 && !rates
}
