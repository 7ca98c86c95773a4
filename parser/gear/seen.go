package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What gear "sees" is the load on it, and no piece's weight: a block that sees 2,800 lb has
// both legs of its rope in them. Taken for the piece they would be doubled once more.

// seenBy finds the gear that is told to see the number at i, and the word that tells it; -1
// where none does. "It" sees what the gear named last does: "block breaks at 90 kN and it
// sees 2,800 lb".
func seenBy(rd *reading.Reading, i int) (scan.Part, int) {
	verb := i - 1
	for verb > 0 && (rd.At(verb).Marked(lexicon.MarkArticle|lexicon.MarkBound) || rd.TermAt(verb).Note == "about") {
		verb--
	}
	if rd.At(i+1).Piece() || loadAsked(rd, verb) {
		return "", -1
	}
	subject, feels := feelsAtEnd(rd, verb)
	switch {
	case feels && rd.In.Cued(subject, lexicon.CueSeesLoad):
		return lexicon.PartBlock, verb
	case feels && rd.In.Cued(subject, lexicon.CueSling):
		return lexicon.PartSling, verb
	case !feels && !rd.Cued(rd.At(verb), lexicon.CueFeels):
		return "", -1
	}
	for k := verb - 1; k >= 0; k-- {
		e := rd.Elems[k]
		switch p := Part(e); {
		case p == lexicon.PartRope && !otherLabelled(rd, i):
			return "", -1
		case p != "":
			return p, verb
		case rd.TermAt(k).Block != "":
			return lexicon.PartBlock, verb
		case e.Piece(), Heavy(rd, k) && !labelled(rd, k):
			return "", -1
		}
	}
	return "", -1
}

// loadAsked says whether the clause that ends in the verb at i asks how much: "what does the
// block see, 600 lb".
func loadAsked(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.At(k).Pause == 0 && !rd.Cued(rd.At(k), lexicon.CueIf); k-- {
		if rd.TermAt(k).HowMuch && !(k == i-1 && bearing(rd, k-1)) { // "un bloque que ve 900 kg"
			return true
		}
	}
	return false
}

// feelsAtEnd says whether the words at i end in what gear does with a load, "block sees",
// "going to see", and what stands before that in them.
func feelsAtEnd(rd *reading.Reading, i int) (before string, feels bool) {
	words := strings.Fields(rd.Word(rd.At(i)))
	last := len(words) - 1
	if t := rd.TermAt(i); last < 1 || t.Intent != parser.AskBlockLoad || t.HowMuch || rd.In.Cued(words[0], lexicon.CueWhat) {
		return "", false
	}
	return strings.Join(words[:last], " "), rd.In.Cued(words[last], lexicon.CueFeels)
}

// labelled says whether the number at i is told as what stands on a label, settled already or
// not: "rated 90 kN", "breaks at 6,000 lb".
func labelled(rd *reading.Reading, i int) bool {
	sure := rd.Elems[i].Fig.Sure
	return sure != "" && sure != parser.Weight || ratedBeside(rd, i) || rd.TermAt(i-1).Rated || rd.TermAt(i+1).Rated
}

// otherLabelled says whether another number than that at i stands on a label: what the line
// sees beside it, "shackle WLL 2 t, if the line sees 500 kg", is what hangs on the line.
func otherLabelled(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool { return k != i && Heavy(rd, k) && labelled(rd, k) })
}

// LoadsSeen makes such numbers what the gear carries, and the message ask whether it may.
func LoadsSeen(rd *reading.Reading) {
	if rd.Worded(parser.Wraps) || AsksFor(rd, parser.AskLift) || AsksFor(rd, parser.AskDrop) || AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := range rd.Elems {
		if !Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || ratedBeside(rd, i) {
			continue
		}
		p, verb := seenBy(rd, i)
		if verb < 0 {
			continue
		}
		note := parser.NoteOnBlock
		switch p {
		case lexicon.PartDrum:
			note = parser.NoteLinePeak // it carries what the line pulls
		case lexicon.PartRope:
			note, p = "", "" // the answer says what gear that holds a block sees
		}
		rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Sure = parser.Weight, parser.Weight
		rd.Alter(verb, func(t *scan.Term) { *t = scan.Term{Note: note, Intent: parser.AskGear, Part: p} })
		gearAsked(rd)
		return
	}
}

// gearAsked takes what "hold" asks for out of a message that is about the strength of gear.
func gearAsked(rd *reading.Reading) {
	for k, e := range rd.Elems {
		t := rd.TermAt(k)
		if (t.Intent == parser.AskLower || t.Intent == parser.AskBlockLoad) && (rd.Cued(e, lexicon.CueHolds) || t.Bears || t.Receives || t.HowMuch) {
			rd.Alter(k, func(t *scan.Term) { t.Intent = "" })
		}
	}
}

// PartSeen is the gear that a strength is of whose words name none, where a load is told that
// this gear sees, and no other gear is named: "the block sees 900 kg and it breaks at 50 kN".
func PartSeen(rd *reading.Reading) scan.Part {
	seen := func(i int) bool {
		n := rd.TermAt(i).Note
		return (n == parser.NoteOnBlock || n == parser.NoteLinePeak) && Part(rd.Elems[i]) != ""
	}
	if !rd.AnyAt(seen) {
		return ""
	}
	return PartMeant(rd)
}
