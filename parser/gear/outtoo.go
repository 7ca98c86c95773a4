package gear

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// OutToo says whether the number at i is how far off a thing stands whose height is told
// right before: "porch roof 9 ft tall and 7 ft out from the trunk" says nothing of where
// the piece is tied.
func OutToo(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkAnd|lexicon.MarkIs)
	if rd.At(k).Pause == 2 {
		k--
	}
	if !Far(rd, i) || !rd.At(k).Marked(lexicon.MarkUpward) || !Far(rd, k-1) {
		return false
	}
	return Obstacle(rd.At(PastIs(rd, k-2))) != ""
}
