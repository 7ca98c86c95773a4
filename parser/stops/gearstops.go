package stops

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Unlabelled says whether the word at i tells that the label of gear is missing or
// cannot be read: "no stamp on the block", "the tag wore off the sling", "the other
// you cant read". A rope without a label is noted.
func Unlabelled(rd *reading.Reading, i int) bool {
	switch t := rd.TermAt(i); {
	case t.Unread:
		next := rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective))
		ends := next.Term == nil || gear.Part(next) != "" || next.Term.Label || next.Marked(lexicon.MarkGear|lexicon.MarkPronoun|lexicon.MarkIn|lexicon.MarkWhere|lexicon.MarkAnd) || gear.Strength(next) != ""
		return ends && next.Fig == nil && nearKit(rd, i, true)
	case t.Label:
		return (lacking(rd, i) >= 0 || worn(rd, i) >= 0) && nearKit(rd, i, false)
	}
	return false
}

// lacking is what denies the label at i before it, -1 for nothing: "no stamp",
// "doesn't have a tag".
func lacking(rd *reading.Reading, i int) int {
	const most = 4
	for k := i - 1; k >= 0 && i-k <= most && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if t := rd.TermAt(k); t.Lacks || t.Ask == parser.Twist && t.Turning == parser.TurnsDenied {
			return k
		}
	}
	return -1
}

// worn is what says beside the label at i that it is gone, -1 for nothing: "faded
// tag", "the tag on the sling is gone".
func worn(rd *reading.Reading, i int) int {
	const most = 5
	if k := rd.Past(i-1, -1, lexicon.MarkArticle); rd.TermAt(k).Gone {
		return k
	}
	for k := i + 1; k <= i+most && rd.At(k).Fig == nil && rd.At(k).Pause == 0; k++ {
		if rd.TermAt(k).Gone && !rd.TermAt(k-1).Lacks {
			return k
		}
	}
	return -1
}

// OfLabel is what is said of the label at i, for the answer to name.
func OfLabel(rd *reading.Reading, i int) (start, end int) {
	at := lacking(rd, i)
	if at < 0 {
		at = worn(rd, i)
	}
	at = max(at, 0)
	return rd.Elems[min(at, i)].Start, rd.Elems[max(at, i)].End
}

// nearKit says whether gear that has a label is named around the word at i, in the
// same sentence; the label itself is enough beside what says that it cannot be read.
func nearKit(rd *reading.Reading, i int, orLabel bool) bool {
	of := func(k int) bool { return Hardware(rd, k) || orLabel && rd.TermAt(k).Label }
	for step := -1; step <= 1; step += 2 {
		for k := i + step; k >= 0 && k < len(rd.Elems) && (k-i)*step <= reading.WordsApart && rd.Elems[k].Pause < 4; k += step {
			if of(k) {
				return true
			}
		}
	}
	return false
}

// BreaksAt takes "rota a 16 mil" for what a rope breaks at, where a load stands behind it:
// who types the one for the other has a label before them. Broken gear is broken so far
// from something, or at nothing.
func BreaksAt(rd *reading.Reading) {
	const least = 1000 // of a load without its unit
	for i := 0; i+2 < len(rd.Elems); i++ {
		fig := rd.Elems[i+2].Fig
		if fig == nil || !rd.Cued(rd.Elems[i], lexicon.CueBreaksAt) || !rd.At(i+1).Marked(lexicon.MarkAt) {
			continue
		}
		if load := fig.Dim == parser.DimMass || fig.Dim == parser.DimForce || fig.Unit == nil && fig.Low >= least; load {
			to := rd.Elems[i+1].End
			rd.Elems[i] = reading.Element{Start: rd.Elems[i].Start, End: to, Term: &scan.Term{Strength: lexicon.Breaking, Leads: true}}
			rd.Elems = slices.Delete(rd.Elems, i+1, i+2)
		}
	}
}

// Personal says whether the word at i puts climbing gear into the rigging: "my
// climbing biner", "lower it on my climbing line". Such a line hangs in the tree as
// well, and is no gear of ours there.
func Personal(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Personal {
		return false
	}
	next, before := i+1, rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkAdjective|lexicon.MarkArticle)
	switch {
	case Hardware(rd, next) && !Rope(rd, next), Hardware(rd, before) && before < i-1:
		return true
	case Rope(rd, next):
		return employed(rd, i, next)
	case Rope(rd, before) && before < i-1:
		return employed(rd, before, i)
	}
	return rd.Elems[i].Marked(lexicon.MarkPlace|lexicon.MarkCord) && employed(rd, i, i)
}

// Rope says whether the word at i names a rope.
func Rope(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkCord) || gear.Part(rd.At(i)) == lexicon.PartRope
}

// employed says whether it is told or asked around the words from to until that
// something is rigged with them: "using my", "lower it on my", "as the sling".
func employed(rd *reading.Reading, from, until int) bool {
	const most = 3
	j := rd.Past(from-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)
	if rd.TermAt(j).Employs || rd.TermAt(j).Intent == parser.AskAnchor || rd.At(j).Marked(lexicon.MarkIn) && rd.At(j).Polite() && lowersBefore(rd, j) {
		return true
	}
	for k := until + 1; k <= until+most && rd.At(k).Fig == nil && rd.At(k).Pause == 0; k++ {
		if rd.TermAt(k).Serves {
			return true
		}
	}
	return false
}

// lowersBefore reads "lower it on".
func lowersBefore(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
	return rd.TermAt(k).Intent == parser.AskLower || rd.At(k).Piece() && rd.TermAt(rd.Past(k-1, -1, lexicon.MarkArticle)).Intent == parser.AskLower
}

// A number without a unit that is too large for any size can only be a mass, and
// beside masses of one unit it has theirs: "the winch pulls 3000 lb, a log of 1800".

const (
	wetRope = "wet" // also how heavy somebody is: "140 soaking wet"

	LeastLoad = 250 // more than any size that is told bare, but in millimetres
	LeastTold = 100 // likewise, behind words that lead to a load
)

// What is wanted of a limb that is hung or stood up is told in many verbs and few
// nouns: where its sling goes, that it hangs level, that the blocks stay apart.

// Few is how many words stand between those of such a turn.
const Few = 5
