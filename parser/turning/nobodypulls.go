package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// NobodyPulls asks how many hold the rope where nobody is told to, "4 guys, no one on the
// rope", "somos 4, nadie en la cuerda": that leaves none of those counted, and is no one
// person. "Nobody on the rope but me" tells who.
func NobodyPulls(rd *reading.Reading) {
	for i := 0; i < len(rd.Text); i++ {
		if i > 0 && rd.Text[i-1] != ' ' {
			continue // no word begins here
		}
		end := nobodyAt(rd, i)
		if end < 0 || rd.SaidTo(lexicon.CueButFor, pastBlanks(rd.Text, end)) >= 0 {
			continue
		}
		rd.Instead(i, end, &scan.Term{Ask: parser.Twist, Turning: parser.TurnsPeople})
		return
	}
}

// nobodyAt is where words end which say from a place in the text on that nobody is at the
// rope, -1 where none do.
func nobodyAt(rd *reading.Reading, from int) int {
	end := rd.SaidTo(lexicon.CueNoOne, from)
	if end < 0 {
		return -1
	}
	return rd.SaidTo(lexicon.CueOnRope, pastBlanks(rd.Text, end))
}

// pastBlanks is the place behind the blanks at a place in a text.
func pastBlanks(text string, at int) int {
	return len(text) - len(strings.TrimLeft(text[at:], " "))
}
