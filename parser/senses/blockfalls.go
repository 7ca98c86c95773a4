package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BlockFalls takes a block that weighs so much and falls for wood: "un bloque de 200 kg que
// cae 2 m", "a 200 kg block drops 1 m". The one that holds the rope stays where it is tied.
func BlockFalls(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if gear.Part(e) != lexicon.PartBlock || rd.TermAt(i).Block != parser.AnyBlock {
			continue
		}
		behind := i + 1
		for rd.At(behind).Marked(lexicon.MarkMade | lexicon.MarkTrailing) {
			behind++
		}
		mass := behind
		if !gear.Heavy(rd, mass) {
			mass, behind = i-1, i
		}
		if gear.Heavy(rd, mass) && (fallsAt(rd, behind+1) || fallsAt(rd, rd.Past(min(mass, i)-1, -1, lexicon.MarkArticle))) {
			rd.Elems[i].Term = &scan.Term{Shape: parser.Log}
			return
		}
	}
}

// fallsAt says whether the word at i, behind who or what it is said of, tells a fall.
func fallsAt(rd *reading.Reading, i int) bool {
	for rd.At(i).Polite() && rd.At(i).Pause == 0 && rd.At(i).Fig == nil && !rd.At(i).Plays(parser.DropHeight) {
		i++ // "se cae"
	}
	return rd.At(i).Plays(parser.DropHeight)
}
