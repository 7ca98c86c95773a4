package parser

import (
	"slices"
	"strings"
	"unicode"
)

// wordAsks are the known words that must be asked about.
func (rd *reading) wordAsks() []*Ask {
	var out []*Ask
	for i, e := range rd.elems {
		switch {
		case e.term != nil && e.term.ask == Girth && rd.at(i-1).part() == partSling && rd.loadWanted():
			// a sling goes round the stem that holds it
		case e.term != nil && e.term.ask != "":
			a := askAt(e.term.ask, rd.text, e.start, e.end-e.start)
			if a.Turning = rd.turnedBy(i); a.Turning == TurnsLength {
				a.Fields = []Field{Length}
			}
			out = append(out, a)
		case rd.girth(i):
			out = append(out, askAt(Girth, rd.text, e.start, rd.elems[i+1].end-e.start))
		case rd.runsOn(i):
			out = append(out, askAt(OddNumber, rd.text, e.start, rd.elems[i+1].end-e.start))
		case rd.speed(i):
			out = append(out, askAt(OddNumber, rd.text, e.start, rd.elems[rd.past(i+1, +1, markArticle)].end-e.start))
		case rd.twoUnits(i):
			out = append(out, askAt(OddNumber, rd.text, e.start, rd.elems[i+1].end-e.start))
		}
	}
	return out
}

// thickTwice asks about a piece that is told as thick and as deep, "3 ft thick 18 in
// deep": either may be what it measures across.
func (rd *reading) thickTwice() []*Ask {
	told := 0
	for i, e := range rd.elems {
		if !e.marked(markThick) || !rd.lengthAt(i-1) {
			continue
		}
		if told++; told == 2 {
			a := rd.elems[i-1].fig.ask(TwoReadings, rd.text)
			a.Fields = []Field{Diameter, Length}
			return []*Ask{a}
		}
	}
	return nil
}

// doubtful says whether the number must be asked about whatever its place.
func (rd *reading) doubtful(i int) bool {
	return rd.girth(i) || rd.twoUnits(i) || rd.speed(i) || rd.touched(i) || rd.runsOn(i) || rd.runsOn(i-1)
}

// runsOn says whether the number is typed as words and another such stands
// right behind it: "six fifty pounds" are no two numbers.
func (rd *reading) runsOn(i int) bool {
	spoken := func(e element) bool { return e.fig != nil && letterAt(rd.text, e.start) }
	return spoken(rd.at(i)) && rd.at(i).fig.unit == nil && spoken(rd.at(i+1))
}

// touched says whether something unknown stands right beside the number:
// "14±1 in".
func (rd *reading) touched(i int) bool {
	e := rd.elems[i]
	return slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Kind == Unknown && (a.End == e.start || a.Start == e.end) })
}

// girth reads "44 in around", and "60 in around 6 ft long" where the tape may
// have been round the stem too; "14 in, around 22 ft" is none.
func (rd *reading) girth(i int) bool {
	e := rd.elems[i]
	if rd.roundAcross(i) {
		return true
	}
	return e.fig != nil && e.fig.dim == dimLength && rd.at(i+1).marked(markAround) && (rd.at(i+2).fig == nil || e.fig.unit.fine)
}

// roundAcross reads "a log 50 in round, 6 ft long" and "2.1 m round", which is
// hardly across.
func (rd *reading) roundAcross(i int) bool {
	fig := rd.at(i).fig
	if fig == nil || fig.dim != dimLength || !rd.at(i+1).marked(markRound) {
		return false
	}
	return fig.unit.fine && rd.twoShapes(i+1) || fig.low > roundest
}

// twoShapes says whether the message names another shape before the round at i.
func (rd *reading) twoShapes(i int) bool {
	return slices.ContainsFunc(rd.elems[:i], func(e element) bool { return e.term != nil && e.term.shape != "" && !e.marked(markRound) })
}

// twoUnits reads "600 ft lbs".
func (rd *reading) twoUnits(i int) bool {
	e := rd.elems[i]
	return e.fig != nil && e.fig.unit != nil && rd.at(i+1).marked(markUnit) && !rd.wantedIn(i)
}

// wantedIn reads "horse chestnut 55 cm, kg?": the unit behind a thickness, with
// nothing more to follow, is what the weight is wanted in.
func (rd *reading) wantedIn(i int) bool {
	e := rd.at(i + 1)
	u := rd.in.units[fold(rd.text[e.start:e.end])]
	return rd.elems[i].fig.short() && u != nil && u.dim == dimMass && (i+2 >= len(rd.elems) || rd.elems[i+2].pause > 2)
}

// speed reads "5 ft a second", which is no length. "turns 45 degrees, the second
// one 90" tells none.
func (rd *reading) speed(i int) bool {
	return rd.at(i).fig != nil && rd.at(i).fig.unit != nil && rd.elems[i].fig.dim != dimAngle && rd.termAt(rd.past(i+1, +1, markArticle)).rate
}

// boundAsk asks about the first number that is only a bound: "over 14 in", "at
// least 22 ft". The limit of a load is one by its nature, and a taper runs
// over a length.
func (rd *reading) boundAsk(full bound, limb bool) *Ask {
	for i, e := range rd.elems {
		if !e.marked(markBound) {
			continue
		}
		j := rd.past(i+1, +1, markIs|markBound|markArticle)
		fig := rd.at(j).fig
		if fig == nil || fig.elsewhere && fig.claimed == "" || fig.dim == dimLength && rd.at(j+1).obstacle() != "" || full[j] == Limit || full[j] == Redirects || full[j] == Length && rd.has(markTaper) {
			continue
		}
		if fig.dim == dimCount && fig.unit == nil && e.plays(Limit) && !e.plays(Length) && rd.anyAt(rd.cuts) {
			continue // "cut lengths, max 250" is asked for its unit
		}
		if e.term.intent == AskCutPlan && thickness(full[j]) || full[j] == PersonPull && rd.termAt(j+1).inHand {
			continue // "max length of a 20 in log", "under 40 lb in the hand"
		}
		a := askAt(Twist, rd.text, e.start, fig.end-e.start)
		a.Turning = TurnsBound
		switch f := full[j]; f {
		case "":
		case Diameter:
			a.Fields = []Field{acrossField(limb)}
		default:
			a.Fields = []Field{f}
		}
		return a
	}
	return nil
}

// peakOfAnother asks about "the peak" where the answer tells what a load does
// that moves smoothly.
func (rd *reading) peakOfAnother(q Question) (out []*Ask) {
	if q.Intent == AskDrop || q.Intent == AskSwing {
		return nil
	}
	for _, e := range rd.elems {
		if e.term != nil && e.term.intent == AskDrop && e.term.besides {
			out = append(out, askAt(Unknown, rd.text, e.start, e.end-e.start))
		}
	}
	return out
}

// glued says whether a word is typed in one with more: the first part of a key
// or a link.
func (rd *reading) glued(a *Ask) bool {
	const joins = "-_/@=:"
	before, after := rd.text[:a.Start], rd.text[a.End:]
	return before != "" && strings.ContainsRune(joins, rune(before[len(before)-1])) ||
		len(after) > 1 && strings.ContainsRune(joins, rune(after[0])) && after[1] != ' '
}

// asTree says whether an unknown word stands where the tree does: the only such
// word, right before or behind "limb" or "log", in a message that names no tree.
func (rd *reading) asTree(a *Ask) bool {
	if a.Kind != Unknown || strings.ContainsFunc(a.Words, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' && r != '\'' }) {
		return false
	}
	if slices.ContainsFunc(rd.asks, func(other *Ask) bool { return other != a && other.Kind == Unknown }) {
		return false
	}
	next := len(rd.elems)
	for i, e := range rd.elems {
		if e.term != nil && e.term.tree != nil {
			return false
		}
		if e.start >= a.Start {
			next = min(next, i)
		}
	}
	return rd.termAt(next).shape != "" || rd.termAt(rd.past(next-1, -1, markArticle|markMade)).shape != ""
}

// likeStop is the word that ends all arithmetic of which an unknown word may be
// a slip, "" for none.
func (rd *reading) likeStop(a *Ask) string {
	for _, f := range rd.dire {
		if a.Kind == Unknown && strings.Contains(fold(a.Words), f.Words) {
			return f.As
		}
	}
	return ""
}
