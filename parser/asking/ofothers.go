package asking

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// ofOthers says whether a word behind the element at i tells how somebody is or what
// they do, and not all of the crew: "he's …", "the boss looks …", "dave …". It may say
// that they are hurt.
func ofOthers(rd *reading.Reading, i int) bool {
	if rd.At(i).Marked(lexicon.MarkArticle) && !whoever(rd, i) {
		return false // "the customer is a …"
	}
	i = overTalk(rd, i)
	for i >= 0 && rd.At(i).Pause == 0 && (rd.At(i).Marked(lexicon.MarkIs) || rd.TermAt(i).State || rd.Cued(rd.At(i), lexicon.CueTurns)) && !whoever(rd, i) {
		i = overTalk(rd, i-1)
	}
	return i >= 0 && rd.At(i).Pause == 0 && whoever(rd, i) && !rd.Cued(rd.At(i), lexicon.CueAllOf)
}
