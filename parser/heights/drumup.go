package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// highestDrum is the most that a drum is strapped up the stem, in metres: whoever runs it
// stands on the ground.
const highestDrum = 3

// DrumUp passes over how high up the stem the drum is, "the drum is on the same tree, 3 ft
// up": that is no height of the hitch, and what it takes off the rope is left as spare.
func DrumUp(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.Elems[i].Marked(lexicon.MarkStation) {
			continue
		}
		to := 0
		if n := drumsHeight(rd, i); n > 0 {
			to = behindHeight(rd, n)
		}
		if k := drumPlace(rd, i); rd.TermAt(k).Ask == parser.BreastHigh {
			to = k + 1 // "the drum is at chest height"
		}
		if to == 0 {
			continue
		}
		drum := rd.Elems[i]
		left := &scan.Term{Marks: drum.Term.Marks, Part: drum.Term.Part}
		if !rd.AnyAt(func(k int) bool { return (k < i || k >= to) && rd.Elems[k].Fig != nil }) {
			left.Marks, left.Intent, left.Besides = left.Marks|lexicon.MarkFollow, rd.Before.Intent, true // the talk goes on
		}
		rd.Pass(i, to, reading.Element{Start: drum.Start, End: drum.End, Term: left})
	}
}

// drumPlace goes on from the drum at i over where on its stem it is: "drum on the trunk at",
// "move the drum up to".
func drumPlace(rd *reading.Reading, i int) int {
	k := i + 1
	for rd.At(k).Pause == 0 && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkUpward|lexicon.MarkBound) || rd.Cued(rd.At(k), lexicon.CueDrumFoot)) {
		k++
	}
	return k
}

// drumsHeight finds the number behind the drum at i that nothing else comes before, 0 where
// there is none.
func drumsHeight(rd *reading.Reading, i int) int {
	const farthest = 9 // elements: "the drum is strapped on to this same tree, about 3 ft"
	told := false
	for k := i + 1; k <= i+farthest; k++ {
		e := rd.At(k)
		switch t := rd.TermAt(k); {
		case e.Fig != nil:
			fig := e.Fig
			if fig.Far() && !fig.Pair && !fig.Falling && fig.Told == "" && fig.High <= highestDrum {
				return k
			}
			return 0
		case e.Pause == 2 && told: // "is on the same tree, 3 ft up"
		case e.Term == nil, t.Block != "", t.Intent != "", t.Ask != "" && !t.Tied, t.Note != "" && t.Note != "about", gear.Part(e) != "", e.Marked(lexicon.MarkOffTree | lexicon.MarkAnd):
			return 0
		case e.Marked(lexicon.MarkIs) || t.Tied:
			told = true
		case len(t.Roles) > 0 && !e.Marked(lexicon.MarkWhere):
			return 0
		}
	}
	return 0
}

// behindHeight is where the words behind the number at i end that make it a height, 0 where
// there are none: "3 ft" alone may be how far off the tree.
func behindHeight(rd *reading.Reading, i int) int {
	to := i + 1
	if at := rd.At(i - 1); at.Marked(lexicon.MarkAt) && !at.Marked(lexicon.MarkRelation) && rd.EndsBreath(to) {
		return to // "the drum sits at 3 ft": no "a 1 m", which may be how far off
	}
	for to < i+4 && (rd.At(to).LooksBack(parser.HitchHeight) || rd.At(to).Marked(lexicon.MarkUpward|lexicon.MarkHigh)) {
		to++
	}
	if to == i+1 || rd.At(to).Plays(parser.Sideways) {
		return 0
	}
	return to
}
