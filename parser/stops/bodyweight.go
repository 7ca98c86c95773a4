package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What somebody on the ground weighs is no load, wherever it stands and whether or not
// the piece is told: "bloke on the ground is only 65 kg, how many wraps for half a log".
// Nor is how new somebody is to the work: "and a bit green" is said of no wood then.

// othersBodies passes over what somebody weighs of whom a noun tells.
func othersBodies(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		k := weighs(rd, i)
		if k < 0 || Hangs(rd, i) || hungUp(rd, i) || rd.Cued(rd.At(k), lexicon.CueClimber) {
			continue
		}
		if weak := rd.Cued(rd.At(k), lexicon.CuePeople) && !rd.Cued(rd.At(k), lexicon.CueFolk) || rd.TermAt(k).LowEnd || rd.Cued(rd.At(k), lexicon.CueItself) && !selfBehind(rd, i); weak && !loadBesides(rd, i) {
			continue // "he weighs 65 kg" may be the log
		}
		if named := rd.TermAt(k).Someone && !rd.TermAt(k).RopeEnd && k == i-2; named && !loadBesides(rd, i) && !thenHolds(rd, i+1) && !rd.Worded(parser.Wraps) {
			continue // nothing is asked that a hand on the rope has a part in
		}
		end := raw(rd, i+1)
		if selfBehind(rd, i) {
			end = i + 2
		}
		rd.Pass(min(k+1, i), end)
		i = k
	}
	for i := range rd.Elems {
		if k := raw(rd, i); k > i+1 && somebodyBefore(rd, i) {
			rd.Pass(i, k) // "the groundie is a bit green"
			return
		}
	}
}

// weighs is the person that the number at i is the weight of, -1 for none. "Is dave over
// 200 lb" may ask about a log that is called so.
func weighs(rd *reading.Reading, i int) int {
	const least, most = 40, 350 // of a bare number, in either unit
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Low != fig.High || !weightEnds(rd, i+1) && !selfBehind(rd, i) {
		return -1
	}
	if bare := fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= least && fig.High <= most; selfBehind(rd, i) && rd.Cued(rd.At(i-1), lexicon.CueItself) && (bare || fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest) {
		return i - 1 // "he weighs 140 himself"
	}
	said, told := false, false
	k := i - 1
	if weighsIt := rd.Cued(rd.At(k), lexicon.CueItself) && !rd.Cued(rd.At(k), lexicon.CuePeople); weighsIt && fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest && rd.At(i+1).Pause > 0 {
		return k // "she weighs 60 kg"
	}
	for ; k >= 0 && !rd.Cued(rd.At(k), lexicon.CueHolds) && (saysWeight(rd, k) || rd.At(k).Marked(lexicon.MarkIs) || whoIs(rd, k) || atPost(rd, k)); k-- {
		said = said || rd.At(k).Plays(parser.Weight)
		told = told || !atPost(rd, k)
	}
	comma := !told && rd.At(k).Pause == 2
	for comma && (rd.At(k).Pause == 2 || atPost(rd, k)) {
		k--
	}
	switch {
	case !someone(rd, k) || rd.At(k-1).Marked(lexicon.MarkIs) || !told && !(comma && loadBesides(rd, i) && rd.At(i+1).Pause > 0 && rd.Cued(rd.At(k), lexicon.CueBuilt)):
		return -1
	case fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest:
		return k
	case fig.Dim == parser.DimCount && fig.Unit == nil && said && fig.Low >= least && fig.High <= most:
		return k
	}
	return -1
}

// selfBehind says whether the number at i is told of somebody's own self: "140 himself".
func selfBehind(rd *reading.Reading, i int) bool {
	e := rd.At(i + 1)
	return e.Term != nil && rd.Cued(e, lexicon.CueOneself) && rd.EndsBreath(i+2)
}

// hungUp says whether something behind the weight at i is asked for who weighs it: "how
// many wraps for him".
func hungUp(rd *reading.Reading, i int) bool {
	for j := i + 1; j < len(rd.Elems); j++ {
		if rd.Cued(rd.At(j-1), lexicon.CueFor) && Person(rd, j) && rd.EndsBreath(j+1) {
			return true
		}
	}
	return false
}

// someone says whether the element at i names a person: a noun, and no wood that is
// also called so.
func someone(rd *reading.Reading, i int) bool {
	e, t := rd.At(i), rd.TermAt(i)
	if e.Piece() || e.Marked(lexicon.MarkArticle) || e.Plays(parser.Weight) || t.LowEnd && !rd.At(i-1).Marked(lexicon.MarkArticle) {
		return false
	}
	return Person(rd, i) || t.RopeEnd || rd.Cued(e, lexicon.CueFolk)
}

// atPost says whether the element at i only tells where somebody works.
func atPost(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	post := rd.Cued(e, lexicon.CuePost) || rd.Cued(e, lexicon.CueGround)
	return post && !rd.TermAt(i).RopeEnd && !rd.TermAt(i).Human || gear.Part(e) != "" && (rd.TermAt(i).Human || i > 0 && someone(rd, i-1))
}

// whoIs reads the "who's" behind somebody: "a kid who's maybe 55 kg".
func whoIs(rd *reading.Reading, i int) bool { return rd.Cued(rd.At(i), lexicon.CueWhoIs) }

// weightEnds says whether nothing from the element at i on makes the weight before it
// a load's, or hangs who weighs it on one.
func weightEnds(rd *reading.Reading, i int) bool {
	if rd.TermAt(i).Note == wetRope {
		i++
	}
	if rd.At(i).Marked(lexicon.MarkAnd) {
		return raw(rd, i) > i || rd.Cued(rd.At(i+1), lexicon.CueAsking) || rd.Cued(rd.At(i+1), lexicon.CueItIs) || loadIs(rd, i+1)
	}
	next := rd.At(i)
	return rd.SaidOut(i) || rd.Cued(next, lexicon.CueAsking) || next.Term != nil && next.Term.Intent == parser.AskLower && len(next.Term.Roles) == 0
}

// loadIs says whether the words from i on go on about the load: "and the log's 300 kg".
func loadIs(rd *reading.Reading, i int) bool {
	j := rd.Past(i, +1, lexicon.MarkArticle)
	return rd.At(j).Piece() || gear.Heavy(rd, j) && rd.At(j+1).Piece()
}

// raw is the element behind "and a bit green" from the one at i on, or i, where somebody
// is called so; a pause must follow.
func raw(rd *reading.Reading, i int) int {
	at := i
	if rd.TermAt(at).Note == wetRope {
		at++ // "140 soaking wet" says it of who weighs that
		i = at
	}
	for rd.At(at).Marked(lexicon.MarkAnd|lexicon.MarkArticle|lexicon.MarkIs) || rd.TermAt(at).State || rd.Cued(rd.At(at), lexicon.CueMerely) {
		at++
	}
	if rd.TermAt(at).Condition == parser.Green && at > i && rd.EndsBreath(at+1) {
		return at + 1
	}
	return i
}

// somebodyBefore says whether a person is named right before the element at i, or before
// where that person works.
func somebodyBefore(rd *reading.Reading, i int) bool {
	k := i - 1
	for atPost(rd, k) {
		k--
	}
	return someone(rd, k)
}

// loadBesides says whether another mass is told than the one at i, and none that gear
// is held to.
func loadBesides(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(j int) bool {
		return j != i && gear.Heavy(rd, j) && !rd.At(rd.Back(j-1)).Marked(lexicon.MarkBound|lexicon.MarkRating)
	})
}
