package parser

import "slices"

// ropeCut takes off a rope what is told to be cut off it: "150 ft rope but 20 ft
// of it is cut off". The answer says how long it is taken to be.
func (rd *reading) ropeCut(l *layout) {
	if rd.anyAt(func(i int) bool { return rd.elems[i].piece() && !rd.termAt(i).unnamed }) {
		return // "12 ft off it" may be off the limb
	}
	rope := -1
	for i := 0; i < len(rd.elems); i++ {
		fig := rd.elems[i].fig
		switch {
		case fig == nil:
		case fig.told == RopeLength || rd.ropeNamed(i):
			if rope >= 0 {
				return // of two ropes it is not known which
			}
			rope = i
		case rope >= 0 && rd.cutOff(l, i):
			r := rd.elems[rope].fig
			if fig.high >= r.low {
				return
			}
			r.low, r.high = r.low-fig.high, r.high-fig.low
			before, behind := rd.text[:fig.start], rd.text[fig.end:]
			rd.silence(fig.start-len(l.cutBefore.FindString(before)), fig.end+max(len(l.cutBehind.FindString(behind)), len(l.cutWhole.FindString(behind))))
			rd.elems = slices.Delete(rd.elems, i, i+1)
			return
		}
	}
}

// cutOff says whether the number at i is what was cut off.
func (rd *reading) cutOff(l *layout, i int) bool {
	fig := rd.elems[i].fig
	if !fig.far() || fig.told != "" || fig.pair || fig.falling {
		return false
	}
	before, behind := rd.text[:fig.start], rd.text[fig.end:]
	return l.cutWhole.MatchString(behind) || l.cutBefore.MatchString(before) && l.cutBehind.MatchString(behind)
}
