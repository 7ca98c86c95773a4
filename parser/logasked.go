package parser

import (
	"regexp"
	"slices"
)

// Who looks after a crew asks what it was told: "what was our highest load today",
// "who signed off at 3:15", "which piece was it that hit 1,150 around 10:40". All of
// it stands in the log. What may still be done is none of it.

// The cues of such a question.
const (
	cueAhead    cue = "ahead"      // of what is still to be done
	cueOutcome  cue = "outcome"    // of what was
	cueRecorded cue = "recorded"   // what an entry of the log tells
	cueUtmost   cue = "utmost"     // the most of a day, or its mean
	cueWhose    cue = "whose-name" // asks for a person
)

// clockTyped is a time of day anywhere in a message.
var clockTyped = regexp.MustCompile(`(?:^|[^0-9:.,])(?:[01]?[0-9]|2[0-3]):[0-5][0-9](?:[^0-9:]|$)`)

// asksRecord says whether it is asked what was answered, or who stood by it. A mass
// may tell which entry is meant, a length would be one of a piece.
func (rd *reading) asksRecord() bool {
	if !rd.questioned() && !rd.typed(cueUtmost) || rd.typed(cueAhead) || rd.anyAt(rd.ofPiece) {
		return false
	}
	asked, _, _ := rd.intents()
	of := func(in Intent) bool { return in != AskLog && in != AskWeight && in != AskBlockLoad }
	clock := clockTyped.MatchString(rd.text)
	switch {
	case slices.ContainsFunc(asked, of):
		return false
	case rd.typed(cueConfirmed) && (rd.typed(cueWhose) || rd.typed(cueEarlier) || clock):
		return true
	case clock && rd.typed(cueOutcome):
		return true
	}
	tree := rd.anyAt(func(i int) bool {
		return rd.termAt(i).tree != nil || rd.elems[i].fig != nil && !rd.elems[i].fig.bare(1)
	})
	return !tree && rd.typed(cueUtmost) && rd.typed(cueRecorded) && rd.typed(cueEarlier)
}

// ofPiece says whether a number with a unit stands at i that no entry is known by.
func (rd *reading) ofPiece(i int) bool {
	fig := rd.elems[i].fig
	return fig != nil && (fig.pair || fig.unit != nil && fig.dim != dimMass)
}
