package parser

import "strings"

// Who is here is told in all, and how many of them are on the ground: "crew is 5
// today, three on the ground". Those on the ground hold and haul.

// mostCrew is how many a crew counts at the most: more of them are rather a size.
const mostCrew = 12

// crews claims the numbers of a crew that no role can tell from a size, and
// passes over how many there are in all where those on the ground are counted.
func (rd *reading) crews() {
	if rd.anyAt(rd.sized) {
		return
	}
	total, ground := -1, -1
	for i := range rd.elems {
		switch {
		case !rd.crewCount(i):
		case rd.typedAfter(i, cueGround):
			ground = i
		case rd.typedBefore(i, cueCrew), rd.typedAfter(i, cueCrew):
			total = i
		}
	}
	for _, i := range []int{total, ground} {
		if i >= 0 && !rd.at(i+1).plays(People) { // else the words behind it take it
			rd.claim(i, People)
		}
	}
	if total >= 0 && ground >= 0 && rd.elems[total].fig.low >= rd.elems[ground].fig.low {
		rd.blank(total, total+1)
	}
}

// gearCounts passes over how many of a kind of gear there are, "two 1.5 tonne
// slings", where the message is to be kept: what one of them bears is what counts.
func (rd *reading) gearCounts() {
	if !rd.keeps() && !rd.anyAt(func(i int) bool { return rd.termAt(i).day }) {
		return
	}
	const most = 6
	for i := range rd.elems {
		fig := rd.elems[i].fig
		if fig == nil || fig.unit != nil || fig.dim != dimCount || fig.pair || fig.low != float64(int(fig.low)) || fig.low < 2 || fig.low > most {
			continue
		}
		if next := rd.at(i + 1); next.part() != "" && next.part() != partRope || rd.heavy(i+1) && rd.at(i+2).part() != "" {
			rd.blank(i, i+1)
		}
	}
}

// crewCount says whether the number at i can be how many people there are, and
// counts nothing else.
func (rd *reading) crewCount(i int) bool {
	fig := rd.at(i).fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair || fig.low != float64(int(fig.low)) || fig.low < 1 || fig.low > mostCrew {
		return false
	}
	return rd.endsBreath(i+1) || rd.termAt(i+1).day || rd.typedAfter(i, cueGround) || rd.typedAfter(i, cueCrew) || rd.typedAfter(i, cueReason) || rd.at(i+1).plays(People)
}

// typedBefore says whether the words of a cue are typed right before the element
// at i, however they were read.
func (rd *reading) typedBefore(i int, c cue) bool {
	from, _ := rd.span(rd.elems[i].start, func(e element) bool { return e.pause > 0 })
	words := splitWords(rd.text[from:rd.elems[i].start])
	for n := 1; n <= min(longestCue, len(words)); n++ {
		if rd.in.cues[c][strings.Join(words[len(words)-n:], " ")] {
			return true
		}
	}
	return false
}

// typedAt says whether the words of a cue begin at the element at i.
func (rd *reading) typedAt(i int, c cue) bool {
	_, to := rd.span(rd.elems[i].end, func(e element) bool { return e.pause > 0 })
	return rd.begin(c, rd.text[rd.elems[i].start:max(to, rd.elems[i].end)])
}

// longestCue is how many words of a cue are looked for.
const longestCue = 4

// typedAfter says the same of what is typed right behind it.
func (rd *reading) typedAfter(i int, c cue) bool {
	_, to := rd.span(rd.elems[i].end, func(e element) bool { return e.pause > 0 })
	return rd.begin(c, rd.text[rd.elems[i].end:max(to, rd.elems[i].end)])
}

// begin says whether the words of a cue begin a stretch of text.
func (rd *reading) begin(c cue, text string) bool {
	words := splitWords(text)
	for n := 1; n <= min(longestCue, len(words)); n++ {
		if rd.in.cues[c][strings.Join(words[:n], " ")] {
			return true
		}
	}
	return false
}
