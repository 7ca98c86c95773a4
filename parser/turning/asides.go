package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Crews say much that is so or is not, and rests on nothing: "no room down here",
// "dont want that again", "the boss wont tell me". Where nothing that the answer
// rests on stands in the clause of the word that denies, all of it is talk: it is
// left out and said back.

// Asides leaves out all such clauses.
func Asides(rd *reading.Reading) {
	for i := range rd.Elems {
		if idleFrom(rd, i) || !sizes.Denial(rd, i) {
			continue
		}
		from, to := clause(rd, i)
		switch {
		case untriedEnd(rd, i) > 0:
			end := untriedEnd(rd, i)
			forgetIn(rd, rd.Elems[i].Start, startOf(rd, end))
			LeaveOut(rd, i, end)
		case asksAgreement(rd, i, to):
			LeaveOut(rd, i, to)
		case disbelieved(rd, i) > 0:
			LeaveOut(rd, i, disbelieved(rd, i))
		case asksNegated(rd, i), notEnough(rd, i):
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
		case contraryEnd(rd, i) > 0:
			LeaveOut(rd, i, contraryEnd(rd, i))
		case notLiked(rd, i, from, to), untold(rd, i, from, to):
			forgetIn(rd, rd.Elems[from].Start, startOf(rd, to))
			LeaveOut(rd, from, to)
		case onlySaid(rd, i, from, to) && allWeightless(rd, i+1, to) && !direAt(rd, from, to):
			LeaveOut(rd, from, to)
		default:
			if start, end := foregone(rd, i, from, to); end > 0 {
				LeaveOut(rd, start, end)
			}
		}
	}
}

// idleFrom settles a denial whose clause begins with it, "no me fío", "no hay dónde poner
// otra arriba", and a "no?" that only asks whether it is so; it says whether it did.
func idleFrom(rd *reading.Reading, i int) bool {
	if rd.TermAt(i).Ask != parser.Twist {
		return false
	}
	if tagged(rd, i) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		return true
	}
	end := clauseEnd(rd, i+1)
	if !rd.Cued(rd.Elems[i], lexicon.CueDenying) || !idleClause(rd, i, end) {
		return false
	}
	forget(rd, i, end)
	LeaveOut(rd, i, end)
	return true
}

// asksAgreement says whether the word at i and all that stands behind it only ask
// whether what stands before them is so: "isnt it", "dont they".
func asksAgreement(rd *reading.Reading, i, to int) bool {
	if i == 0 || to != i+2 || rd.At(i-1).Pause > 2 || !rd.Cued(rd.Elems[i], lexicon.CueNot) || TalkBehind(rd, i) || TalkBehind(rd, i+1) {
		return false
	}
	return !parts(rd, i-1) && (Who(rd, i+1) || rd.At(i+1).Marked(lexicon.MarkPronoun))
}

// onlySaid says whether what the word at i denies is talk: what nobody wants or
// knows, and what there is none of. How wood or gear is, nobody leaves out.
func onlySaid(rd *reading.Reading, i, from, to int) bool {
	head, end := headOf(rd, i, to)
	no := rd.TermAt(i).Corrects && !rd.Cued(rd.Elems[i], lexicon.CueNot)
	switch in := rd.In; {
	case rd.AnyAt(func(k int) bool { return k > i && k < to && rd.Cued(rd.Elems[k], lexicon.CueDrumPost) }):
		return false // "we dont have a post" may be the drum
	case rd.Cued(rd.Elems[i], lexicon.CueIgnores):
		return anyWho(rd, i+1, to) && !aloftOrUnder(rd, i+1, to) // "ignore what the boss says"
	case in.Cued(head, lexicon.CueMood):
		more, _ := scan.NextWord(rd.Text[end:startOf(rd, to)]) // "not happy with that union" is a doubt
		return more == "" && anyWho(rd, from, i) && !ofCrew(rd, from, to)
	case in.Cued(head, lexicon.CueLacking):
		return !ofCrew(rd, from, to)
	case in.Cued(head, lexicon.CueAbsent), in.Cued(head, lexicon.CueIdleThing) && machineBefore(rd, i):
		return machineBefore(rd, i) && !ofCrew(rd, from, to)
	case no, from == i && about(rd, i-1):
		return false // "no" before a verb takes back, "the rope dont" tells of the rope
	case in.Cued(head, lexicon.CueIdleIt):
		return true
	case from < i && !anyWho(rd, from, i):
		return false // "it doesnt want"
	case in.Cued(head, lexicon.CueIdleThing):
		return !rd.AnyAt(func(k int) bool { return k > i && k < to && rd.Elems[k].Start >= end && ofOthers(rd, k) })
	default:
		return in.Cued(head, lexicon.CueIdleVerb) || head != "" && rd.TermAt(i).Denies // "not the supervisor"
	}
}

// machineBefore says whether a machine or a car stands right before the denial at i, "crane's not
// coming": what is not there lifts nothing. What hangs on one is told of otherwise.
func machineBefore(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle)
	return rd.TermAt(k).Machine || rd.Cued(rd.At(k), lexicon.CueTruck) || rd.Cued(rd.At(k), lexicon.CueCar)
}

// ofCrew says whether somebody who does not speak stands in a clause: what they lack
// may tell how they fare, "no signal from the climber".
func ofCrew(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(k int) bool {
		return k >= from && k < to && rd.TermAt(k).Human && !rd.Cued(rd.Elems[k], lexicon.CueUs)
	})
}

// ofOthers says whether somebody stands at i who does not speak and is not spoken
// to, or what could be anybody.
func ofOthers(rd *reading.Reading, i int) bool {
	return (Who(rd, i) || rd.At(i).Marked(lexicon.MarkPronoun|lexicon.MarkPerson)) && !rd.Cued(rd.Elems[i], lexicon.CueUs)
}

// headOf finds the word behind the denial at i that says what of, or somebody, and
// where it ends; "" for none.
func headOf(rd *reading.Reading, i, to int) (head string, n int) {
	const farthest = 6
	n, end := rd.Elems[i].End, startOf(rd, to)
	for range farthest {
		word, letters := scan.NextWord(rd.Text[n:end])
		n += letters
		who := func(k int) bool { return k > i && k < to && rd.Elems[k].End == n && Who(rd, k) }
		switch {
		case word == "":
			return "", n
		case ofTalk(rd, word), rd.AnyAt(who):
			return word, n
		case !rd.In.Cued(word, lexicon.CueIdleLead):
			return "", n
		}
	}
	return "", n
}

// ofTalk says whether a word is one that a denial makes talk.
func ofTalk(rd *reading.Reading, word string) bool {
	in := rd.In
	return in.Cued(word, lexicon.CueMood) || in.Cued(word, lexicon.CueLacking) || in.Cued(word, lexicon.CueIdleVerb) || in.Cued(word, lexicon.CueIdleIt) || in.Cued(word, lexicon.CueIdleThing) || in.Cued(word, lexicon.CueAbsent)
}

// about says whether what stands at i is a thing that something can be said of.
func about(rd *reading.Reading, i int) bool {
	return i >= 0 && rd.Elems[i].Pause == 0 && rd.Elems[i].Fig == nil && !Weightless(rd, i)
}

// anyWho says whether somebody stands from one element to another.
func anyWho(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(k int) bool { return k >= from && k < to && Who(rd, k) })
}

// aloftOrUnder says whether somebody is told of from one element to another who may be under
// the piece or in the tree: nobody leaves them out.
func aloftOrUnder(rd *reading.Reading, from, to int) bool {
	return rd.AnyAt(func(k int) bool {
		return k >= from && k < to && (rd.TermAt(k).Beneath || rd.Elems[k].Marked(lexicon.MarkPerson))
	})
}

// allWeightless says whether nothing else stands from one element to another.
// What nobody has weighed or measured is told of no weight.
func allWeightless(rd *reading.Reading, from, to int) bool {
	weighs := func(k int) bool {
		return rd.TermAt(k).Intent == parser.AskWeight && rd.In.Cued(rd.Word(rd.Elems[k]), lexicon.CueIdleVerb)
	}
	turnsUp := func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueAbsent) && rd.Elems[k].Fig == nil }
	return !rd.AnyAt(func(k int) bool {
		return k >= from && k < to && !Weightless(rd, k) && !sizes.Denial(rd, k) && !weighs(k) && !turnsUp(k)
	})
}

// direAt says whether a word stands from one element to another that may be a slip
// of one that ends all arithmetic, or that is no word.
func direAt(rd *reading.Reading, from, to int) bool {
	start, end := rd.Elems[from].Start, startOf(rd, to)
	return slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Start >= start && a.End <= end && (a.Kind != parser.Unknown || LikeStop(rd, a) != "")
	})
}

// LikeStop is the word that ends all arithmetic of which an unknown word may be
// a slip, "" for none.
func LikeStop(rd *reading.Reading, a *parser.Ask) string {
	for _, f := range rd.Dire {
		if a.Kind == parser.Unknown && strings.Contains(scan.Fold(a.Words), f.Words) {
			return f.As
		}
	}
	return ""
}
