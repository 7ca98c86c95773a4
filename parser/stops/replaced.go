package stops

import (
	"slices"

	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What broke yesterday and is out of use is no danger to what is rigged today: "yesterday
// the rope broke, today new rope". It is none only where the same kind of gear is told to
// be another one, behind what broke, and nothing says that it is yet to come.

// NoteReplaced is the note of gear that came to harm and is told to be out of use.
const NoteReplaced = "replaced"

// Replaced says whether the harm to gear that a stop tells of is past, and the gear is
// another one now.
func Replaced(rd *reading.Reading, stop reading.Element) bool {
	if !tokenOf(rd, "past", 0) && !tokenOf(rd, "discarded", 0) || tokenOf(rd, "not-yet", 0) {
		return false
	}
	if newBefore(rd, stop) || stillSo(rd, stop) {
		return false
	}
	old, fresh := partsTold(rd, stop)
	return len(old) > 0 && !slices.ContainsFunc(old, func(part scan.Part) bool { return !slices.Contains(fresh, part) })
}

// tokenOf says whether a kind of words begins from a place of the text on.
func tokenOf(rd *reading.Reading, kind string, from int) bool {
	return slices.ContainsFunc(rd.Tokens, func(t reading.DangerToken) bool { return t.Start >= from && Is(t, kind) })
}

// newBefore says whether another piece of gear is told of before the harm, which may be
// that one's: "got a new rope and its cut".
func newBefore(rd *reading.Reading, stop reading.Element) bool {
	return slices.ContainsFunc(rd.Tokens, func(t reading.DangerToken) bool {
		return t.Start < stop.Start && (Is(t, "other-one") || Is(t, "another-one"))
	})
}

// stillSo says whether the harm is told as it is now: "swapped the block, its sheave is
// cracked".
func stillSo(rd *reading.Reading, stop reading.Element) bool {
	for i, e := range rd.Elems {
		if e.Start < stop.Start && stop.Start <= rd.At(i+1).Start || e.Start >= stop.Start && e.End < stop.End {
			k := rd.Past(i, -1, lexicon.MarkAdverb)
			was := slices.ContainsFunc(rd.Tokens, func(t reading.DangerToken) bool {
				return rd.At(k).Start <= t.Start && t.Start < rd.At(k).End && Is(t, "was-so")
			})
			if rd.At(k).Marked(lexicon.MarkIs) && !rd.At(k).Marked(lexicon.MarkRelation) && !was {
				return true
			}
		}
	}
	return false
}

// partsTold are the parts of the rigging that are named without being told to be other
// ones, and those that are: behind the harm as "new", or as what was replaced.
func partsTold(rd *reading.Reading, stop reading.Element) (old, fresh []scan.Part) {
	anyNew := tokenOf(rd, "another-one", stop.End)
	for i := range rd.Elems {
		part := partAt(rd, i)
		if part == "" {
			continue
		}
		if toldNew(rd, i) {
			if rd.Elems[i].Start > stop.Start {
				fresh = append(fresh, part)
			}
			continue
		}
		old = append(old, part)
		if replacedAt(rd, i) || anyNew && rd.Elems[i].Start < stop.End+1 {
			fresh = append(fresh, part)
		}
	}
	return old, fresh
}

// partAt is what part of the rigging the element at i names, "" for none.
func partAt(rd *reading.Reading, i int) scan.Part {
	switch part := gear.Part(rd.At(i)); {
	case rd.At(i).Marked(lexicon.MarkCord):
		return lexicon.PartRope
	case part != "":
		return part
	}
	return ""
}

// toldNew says whether the gear at i is called another one: "new rope", "cuerda nueva".
func toldNew(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	for k, t := range rd.Tokens {
		if !Is(t, "other-one") {
			continue
		}
		before := t.End <= e.Start && (k+1 >= len(rd.Tokens) || rd.Tokens[k+1].End >= e.Start) && rd.Tokens[min(k+1, len(rd.Tokens)-1)].Pause == 0
		within := e.Start <= t.Start && t.End <= e.End
		behind := t.Start >= e.End && k > 0 && rd.Tokens[k-1].Start < e.End && t.Pause == 0
		if before || within || behind {
			return true
		}
	}
	return false
}

// replacedAt says whether the gear at i is what was replaced: "swapped the cracked block".
func replacedAt(rd *reading.Reading, i int) bool {
	const most = 4
	for k, t := range rd.Tokens {
		if !Is(t, "swapped-out") {
			continue
		}
		for j := k + 1; j < len(rd.Tokens) && j <= k+most && rd.Tokens[j].Pause == 0; j++ {
			if rd.Elems[i].Start <= rd.Tokens[j].Start && rd.Tokens[j].Start < rd.Elems[i].End {
				return true
			}
		}
	}
	return false
}

// PutAway takes the words of such a harm for the note that it was told.
func PutAway(rd *reading.Reading, stop reading.Element) {
	noted := false
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		e := rd.Elems[i]
		if e.Term == nil || e.Start < stop.Start || e.End > stop.End || partAt(rd, i) != "" || e.Fig != nil {
			continue
		}
		term := &scan.Term{Chatter: true}
		if !noted {
			term, noted = &scan.Term{Note: NoteReplaced}, true
		}
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Pause: e.Pause, Term: term}
	}
}
