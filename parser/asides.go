package parser

import "slices"

// Crews say much that is so or is not, and rests on nothing: "no room down here",
// "dont want that again", "the boss wont tell me". Where nothing that the answer
// rests on stands in the clause of the word that denies, all of it is talk: it is
// left out and said back.

// asides leaves out all such clauses.
func (rd *reading) asides() {
	for i := range rd.elems {
		if !rd.denial(i) {
			continue
		}
		from, to := rd.clause(i)
		switch {
		case rd.asksAgreement(i, to):
			rd.leaveOut(i, to)
		case rd.asksNegated(i):
			rd.alter(i, func(t *term) { *t = term{chatter: true} })
		case rd.contraryEnd(i) > 0:
			rd.leaveOut(i, rd.contraryEnd(i))
		case rd.onlySaid(i, from, to) && rd.allWeightless(i+1, to) && !rd.direAt(from, to):
			rd.leaveOut(from, to)
		}
	}
}

// denial says whether the word at i is still in doubt, and denies.
func (rd *reading) denial(i int) bool {
	t := rd.termAt(i)
	return t.ask == Twist && !t.fresh && (t.denies || t.lacks || t.turning == TurnsDenied)
}

// asksAgreement says whether the word at i and all that stands behind it only ask
// whether what stands before them is so: "isnt it", "dont they".
func (rd *reading) asksAgreement(i, to int) bool {
	if i == 0 || to != i+2 || rd.at(i-1).pause > 2 || !rd.cued(rd.elems[i], cueNot) || rd.talkBehind(i) || rd.talkBehind(i+1) {
		return false
	}
	return !rd.parts(i-1) && (rd.who(i+1) || rd.at(i+1).marked(markPronoun))
}

// onlySaid says whether what the word at i denies is talk: what nobody wants or
// knows, and what there is none of. How wood or gear is, nobody leaves out.
func (rd *reading) onlySaid(i, from, to int) bool {
	head, end := rd.headOf(i, to)
	no := rd.termAt(i).corrects && !rd.cued(rd.elems[i], cueNot)
	switch cues := rd.in.cues; {
	case rd.cued(rd.elems[i], cueIgnores):
		return rd.anyWho(i+1, to) && !rd.aloftOrUnder(i+1, to) // "ignore what the boss says"
	case cues[cueLacking][head]:
		return !rd.ofCrew(from, to)
	case no, from == i && rd.about(i-1):
		return false // "no" before a verb takes back, "the rope dont" tells of the rope
	case cues[cueIdleIt][head]:
		return true
	case from < i && !rd.anyWho(from, i):
		return false // "it doesnt want"
	case cues[cueIdleThing][head]:
		return !rd.anyAt(func(k int) bool { return k > i && k < to && rd.elems[k].start >= end && rd.ofOthers(k) })
	default:
		return cues[cueIdleVerb][head] || head != "" && rd.termAt(i).denies // "not the supervisor"
	}
}

// ofCrew says whether somebody who does not speak stands in a clause: what they lack
// may tell how they fare, "no signal from the climber".
func (rd *reading) ofCrew(from, to int) bool {
	return rd.anyAt(func(k int) bool { return k >= from && k < to && rd.termAt(k).human && !rd.cued(rd.elems[k], cueUs) })
}

// ofOthers says whether somebody stands at i who does not speak and is not spoken
// to, or what could be anybody.
func (rd *reading) ofOthers(i int) bool {
	return (rd.who(i) || rd.at(i).marked(markPronoun|markPerson)) && !rd.cued(rd.elems[i], cueUs)
}

// headOf finds the word behind the denial at i that says what of, or somebody, and
// where it ends; "" for none.
func (rd *reading) headOf(i, to int) (head string, n int) {
	const farthest = 6
	n, end := rd.elems[i].end, rd.startOf(to)
	for range farthest {
		word, letters := nextWord(rd.text[n:end])
		n += letters
		who := func(k int) bool { return k > i && k < to && rd.elems[k].end == n && rd.who(k) }
		switch {
		case word == "":
			return "", n
		case rd.ofTalk(word), rd.anyAt(who):
			return word, n
		case !rd.in.cues[cueIdleLead][word]:
			return "", n
		}
	}
	return "", n
}

// ofTalk says whether a word is one that a denial makes talk.
func (rd *reading) ofTalk(word string) bool {
	cues := rd.in.cues
	return cues[cueLacking][word] || cues[cueIdleVerb][word] || cues[cueIdleIt][word] || cues[cueIdleThing][word]
}

// about says whether what stands at i is a thing that something can be said of.
func (rd *reading) about(i int) bool {
	return i >= 0 && rd.elems[i].pause == 0 && rd.elems[i].fig == nil && !rd.weightless(i)
}

// anyWho says whether somebody stands from one element to another.
func (rd *reading) anyWho(from, to int) bool {
	return rd.anyAt(func(k int) bool { return k >= from && k < to && rd.who(k) })
}

// aloftOrUnder says whether somebody is told of from one element to another who may be under
// the piece or in the tree: nobody leaves them out.
func (rd *reading) aloftOrUnder(from, to int) bool {
	return rd.anyAt(func(k int) bool {
		return k >= from && k < to && (rd.termAt(k).beneath || rd.elems[k].marked(markPerson))
	})
}

// allWeightless says whether nothing else stands from one element to another.
// What nobody has weighed or measured is told of no weight.
func (rd *reading) allWeightless(from, to int) bool {
	weighs := func(k int) bool {
		return rd.termAt(k).intent == AskWeight && rd.in.cues[cueIdleVerb][rd.word(rd.elems[k])]
	}
	return !rd.anyAt(func(k int) bool {
		return k >= from && k < to && !rd.weightless(k) && !rd.denial(k) && !weighs(k)
	})
}

// direAt says whether a word stands from one element to another that may be a slip
// of one that ends all arithmetic, or that is no word.
func (rd *reading) direAt(from, to int) bool {
	start, end := rd.elems[from].start, rd.startOf(to)
	return slices.ContainsFunc(rd.asks, func(a *Ask) bool {
		return a.Start >= start && a.End <= end && (a.Kind != Unknown || rd.likeStop(a) != "")
	})
}
