package parser

// How much some people pull is asked before anything is rigged: "5 of us pulling by
// hand, whats reasonable to count on". Their number is the only one that is told.

// The cues of such a question.
const (
	cueByHand  cue = "by-hand"  // how people pull, whatever they pull on
	cueCountOn cue = "count-on" // asks what is planned for
)

// TopicHands is what some people are planned for, pulling together.
const TopicHands Intent = "about-hands"

// handsAsked is how many people it is asked what they pull; false where anything is
// told besides that has its own answer: a piece, a tackle, wraps.
func (rd *reading) handsAsked() (Quantity, bool) {
	asks := rd.typed(cueHowMuch) && rd.typed(cueByHand) || rd.typed(cueCountOn) && rd.typed(cueOfHand)
	if asked, _, _ := rd.intents(); !asks || len(asked) > 0 {
		return Quantity{}, false
	}
	at := -1
	for i, e := range rd.elems {
		switch {
		case e.fig != nil && at < 0 && rd.crewCount(i) && rd.elems[i].fig.low > 1 && rd.at(i+1).plays(People):
			at = i
		case e.fig != nil, e.piece(), e.plays(Wraps), e.plays(WinchPull), e.plays(Parts), rd.termAt(i).tree != nil, rd.termAt(i).shape != "", rd.termAt(i).stop != "":
			return Quantity{}, false
		}
	}
	if at < 0 {
		return Quantity{}, false
	}
	fig := rd.elems[at].fig
	return Quantity{Field: People, Low: fig.low, High: fig.high, Words: fig.words(rd.text), Start: fig.start, End: fig.end}, true
}
