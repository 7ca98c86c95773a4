package talk

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/turning"
)

// Fewer hold the rope than was said: "only 2 actually, third guys feeding the chipper". What
// the number counts is told by the one who is missing.

// ShortHanded claims such a number for the people on the rope.
func ShortHanded(rd *reading.Reading) {
	for i := range rd.Elems {
		if crewAlone(rd, i) && onlyNow(rd, i) && missingOne(rd, i) {
			if !rd.At(i + 1).Plays(parser.People) { // else the words behind it take it
				places.Claim(rd, i, parser.People)
			}
			return
		}
	}
}

// onlyNow says whether words before the number at i say that no more are left.
func onlyNow(rd *reading.Reading, i int) bool {
	return rd.TypedBefore(i, lexicon.CueOnlyNow) || rd.Cued(rd.At(i-1), lexicon.CueOnlyNow)
}

// crewAlone says whether the number at i can be a count of people, and counts nothing else.
func crewAlone(rd *reading.Reading, i int) bool {
	const idle = lexicon.MarkAdverb | lexicon.MarkHello | lexicon.MarkIs
	next := rd.At(i + 1)
	return headcount(rd, i) && (rd.EndsBreath(i+1) || next.Plays(parser.People) || next.Marked(idle) || rd.TermAt(i+1).Chatter || rd.TermAt(i+1).Day)
}

// missingOne says whether behind the number at i somebody is told of who is not on the rope:
// "third guy", "the other guys on the saw", "mike went home". "Third" counts nothing then.
func missingOne(rd *reading.Reading, i int) bool {
	missing := false
	for k := i + 1; k < len(rd.Elems); k++ {
		rest := rd.Text[rd.Elems[k].Start:]
		man := rd.Begin(lexicon.CueMissingMan, rest)
		if man && rd.TermAt(k).Ask == parser.Twist {
			turning.LeaveOut(rd, k, k+1)
		}
		missing = missing || man || rd.Begin(lexicon.CueGone, rest)
	}
	return missing
}
