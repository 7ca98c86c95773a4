package parser

import (
	"strings"
)

// blockOffsets finds how far the top block is off the plumb of the hinge where
// it was not said which way: "block 20 ft above the cut and 3 ft out". It must
// be asked about, never taken for a length.
func (rd *reading) blockOffsets() {
	for i, e := range rd.elems {
		if !e.fig.far() || e.fig.told != "" {
			continue
		}
		j := i - 1
		for rd.at(j).marked(markAnd|markWhere|markIs) || rd.at(j).pause > 0 {
			j--
		}
		before, after := rd.at(j), rd.at(i+1)
		led := rd.cued(before, cueOffset) && !rd.asideAt(j-1) || before.plays(BlockHeight) && rd.cued(after, cueAside)
		e.fig.sideless = led && !after.plays(BlockBehind) && !after.plays(BlockOut)
	}
}

// word is an element as it was typed, folded; "" where it is no word.
func (rd *reading) word(e element) string {
	if e.term == nil {
		return ""
	}
	typed := fold(rd.text[e.start:e.end])
	if strings.IndexFunc(typed, gap) < 0 {
		return typed
	}
	at := [2]int{e.start, e.end}
	if rd.spelled[at] == "" {
		if rd.spelled == nil {
			rd.spelled = map[[2]int]string{}
		}
		rd.spelled[at] = strings.Join(splitWords(typed), " ")
	}
	return rd.spelled[at]
}
