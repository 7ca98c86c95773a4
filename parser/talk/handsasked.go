package talk

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/senses"
)

// handsAsked is how many people it is asked what they pull; false where anything is
// told besides that has its own answer: a piece, a tackle, wraps.
func handsAsked(rd *reading.Reading) (parser.Quantity, bool) {
	asks := Typed(rd, lexicon.CueHowMuch) && Typed(rd, lexicon.CueByHand) || Typed(rd, lexicon.CueCountOn) && Typed(rd, lexicon.CueOfHand)
	if asked, _, _ := senses.Intents(rd); !asks || len(asked) > 0 {
		return parser.Quantity{}, false
	}
	at := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil && at < 0 && crewCount(rd, i) && rd.Elems[i].Fig.Low > 1 && rd.At(i+1).Plays(parser.People):
			at = i
		case e.Fig != nil, e.Piece(), e.Plays(parser.Wraps), e.Plays(parser.WinchPull), e.Plays(parser.Parts), rd.TermAt(i).Tree != nil, rd.TermAt(i).Shape != "", rd.TermAt(i).Stop != "":
			return parser.Quantity{}, false
		}
	}
	if at < 0 {
		return parser.Quantity{}, false
	}
	fig := rd.Elems[at].Fig
	return parser.Quantity{Field: parser.People, Low: fig.Low, High: fig.High, Words: fig.Words(rd.Text), Start: fig.Start, End: fig.End}, true
}
