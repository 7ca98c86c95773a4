package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What a piece is, log or limb, and whether its wood is alive, are put right by naming the
// other: "oak limb no wait its a log", "no its green".

// rightShape passes over the shape before the words at i where they put it right, "oak limb
// no wait its a log". A "no" by itself may deny what stands behind it.
func rightShape(rd *reading.Reading, i int) bool {
	if rd.TermAt(i).Lacks && rd.At(i+1).Pause == 0 {
		return false
	}
	k, p := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs), i-1
	if rd.At(p).Pause > 0 {
		p--
	}
	is, was := rd.TermAt(k), rd.TermAt(p)
	if is.Shape == "" || was.Shape == "" || is.Tree != nil || was.Tree != nil {
		return false
	}
	clearDoubt(rd, i, k)
	rd.Pass(p, p+1)
	return true
}

// rightKind takes the doubt from the words at i where they begin what tells of the piece
// that was spoken of what it is: "no its green", "no, está seca", "no its a log", "needs
// leaves? no its dead". "No está verde" and "no es rama" deny it, and a "no" by itself may.
func rightKind(rd *reading.Reading, i int) bool {
	if rd.First || !begins(rd, i) && !(i > 0 && askedAt(rd, i-1)) {
		return false
	}
	from, apart := i+1, rd.At(i+1).Pause == 2
	if apart {
		from++
	}
	k := rd.Past(from, +1, lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkAdverb)
	if rd.Cued(rd.At(k), lexicon.CueItIs) {
		k = rd.Past(k+1, +1, lexicon.MarkArticle|lexicon.MarkAdverb)
	}
	words := strings.Fields(rd.Text[rd.Elems[i].Start:rd.Elems[i].End])
	lacks := rd.TermAt(i).Lacks && !rd.Cued(rd.At(i+1), lexicon.CueItIs) // "no it's a limb" lacks none
	denies := rd.TermAt(i).Denies || lacks || rd.Cued(rd.Elems[i], lexicon.CueIsNot)
	is := rd.TermAt(k)
	if is.Condition == "" && is.Shape == "" || is.Tree != nil || denies && !apart || len(words) == 1 && k == from && !apart {
		return false
	}
	other := func(j int) bool {
		t := rd.TermAt(j)
		return j != k && (t.Condition != "" || t.Shape != "" || rd.Elems[j].Fig != nil)
	}
	if rd.AnyAt(other) || is.Shape != "" && !rd.EndsBreath(k+1) {
		return false
	}
	rd.PutRight = true
	rd.Elems[i].Term = &scan.Term{}
	noneThere(rd, k+1)
	return true
}

// noneThere reads "needs leaves? no its dead theres none": the piece has no leaves.
func noneThere(rd *reading.Reading, from int) {
	leaves := rd.AnyAt(func(j int) bool { return j < from && rd.Cued(rd.Elems[j], lexicon.CueLeafy) })
	for j := from; leaves && j < len(rd.Elems); j++ {
		if rd.SaidTo(lexicon.CueNoneThere, rd.Elems[j].Start) < 0 {
			continue
		}
		for n := range rd.Elems {
			if n >= j || rd.Cued(rd.Elems[n], lexicon.CueLeafy) {
				rd.Elems[n].Term = &scan.Term{}
			}
		}
		rd.Elems[j].Term = &scan.Term{Note: parser.Bare}
		return
	}
}
