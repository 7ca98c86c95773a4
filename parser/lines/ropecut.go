package lines

import (
	"slices"

	"heft/parser"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// ropeCut takes off a rope what is told to be cut off it: "150 ft rope but 20 ft
// of it is cut off". The answer says how long it is taken to be.
func ropeCut(rd *reading.Reading, l *lexicon.Layout) {
	if rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() && !rd.TermAt(i).Unnamed }) {
		return // "12 ft off it" may be off the limb
	}
	rope := -1
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		switch {
		case fig == nil:
		case fig.Told == parser.RopeLength || ropeNamed(rd, i):
			if rope >= 0 {
				return // of two ropes it is not known which
			}
			rope = i
		case rope >= 0 && cutOff(rd, l, i):
			r := rd.Elems[rope].Fig
			if fig.High >= r.Low {
				return
			}
			r.Low, r.High, r.End = r.Low-fig.High, r.High-fig.Low, fig.End // both numbers tell it
			before, behind := rd.Text[:fig.Start], rd.Text[fig.End:]
			heights.Silence(rd, fig.Start-len(l.CutBefore.FindString(before)), fig.End+max(len(l.CutBehind.FindString(behind)), len(l.CutWhole.FindString(behind))))
			if rd.Only(func(k int) bool { return rope < k && k <= i && rd.Elems[k].Fig != nil }) == i {
				r.End = fig.End // what was cut off is part of how long it is told to be
			}
			rd.Elems = slices.Delete(rd.Elems, i, i+1)
			return
		}
	}
}

// cutOff says whether the number at i is what was cut off.
func cutOff(rd *reading.Reading, l *lexicon.Layout, i int) bool {
	fig := rd.Elems[i].Fig
	if !fig.Far() || fig.Told != "" || fig.Pair || fig.Falling {
		return false
	}
	before, behind := rd.Text[:fig.Start], rd.Text[fig.End:]
	return l.CutWhole.MatchString(behind) || l.CutBefore.MatchString(before) && l.CutBehind.MatchString(behind)
}
