package pulls

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/turning"
)

// What several people pull together, or take themselves to pull, is no weight of a piece:
// "two guys pulling 200 lb, how much can they lift", "2 de nosotros jalando cuánto es, como
// 200 lb?". Whether each does or all of them is asked: no figure is made of a guess.

// PullOfAll asks about the one mass or force of a lift that is what those pull who are counted.
func PullOfAll(rd *reading.Reading) {
	i := rd.Only(rd.Is(gear.Heavy))
	if i < 0 || rd.Elems[i].Fig.Told != "" || rd.Elems[i].Fig.Elsewhere || rd.At(i+1).Piece() || rd.TermAt(i+1).Each || !peopleCounted(rd) {
		return
	}
	if guessedPull(rd, i) || turning.Lifting(rd) && mostAsked(rd) && !loadBeside(rd, i) && pulledByAll(rd, i) {
		a := rd.Elems[i].Fig.Ask(parser.TwoReadings, rd.Text)
		a.Fields = []parser.Field{parser.PersonPull, parser.Weight}
		rd.Asks = append(rd.Asks, a)
		rd.Elems[i].Fig.Elsewhere = true
	}
}

// pulledByAll reads "2 guys pull 200 lb" and "200 lb of pull".
func pulledByAll(rd *reading.Reading, i int) bool {
	return pullingAt(rd, rd.Back(i-1)) || rd.Cued(rd.At(i+1), lexicon.CueOfPull) || rd.Cued(rd.At(i+1), lexicon.CuePull)
}

// guessedPull reads "two of us pulling is what, like 200 lb": between who pulls and the
// number it is asked how much that comes to.
func guessedPull(rd *reading.Reading, i int) bool {
	asked := false
	for k := i - 1; k >= 0 && rd.Elems[k].Pause < 4; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		says := e.Term == nil || e.Polite() || e.Marked(lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle) || t.Note == "about"
		switch {
		case pullingAt(rd, k):
			return asked
		case t.HowMuch || rd.Cued(e, lexicon.CueWhat):
			asked = true
		case e.Fig != nil && e.Fig.Dim == parser.DimCount && asked:
		case e.Fig != nil || e.Piece() || !asked && !says || t.Intent == parser.AskLift:
			return false
		}
	}
	return false
}

// pullingAt says whether the word at k is of pulling, "guys pulling" by its last one.
func pullingAt(rd *reading.Reading, k int) bool {
	e := rd.At(k)
	words := strings.Fields(rd.Word(e))
	last := len(words) > 1 && rd.In.Cued(words[len(words)-1], lexicon.CueHaulsWith)
	return rd.Cued(e, lexicon.CuePulling) || rd.Cued(e, lexicon.CueHaulsWith) || e.Plays(parser.People) && last
}
