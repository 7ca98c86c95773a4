package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Only a question about a swing asks how far off and how high a thing of the
// surroundings is. There "roof 12 ft away and 14 ft high" are two facts; in
// any other question they stay numbers of the surroundings. A distance counts
// from under the block, on the far side: told from anything else, it is asked
// about.

// Obstacle is the kind of thing that an element names, "" for none.
func Obstacle(e reading.Element) parser.Obstacle {
	switch {
	case e.Marked(lexicon.MarkPerson):
		return parser.Person
	case e.Marked(lexicon.MarkStanding):
		return parser.Standing
	case e.Marked(lexicon.MarkObstacle):
		return parser.Thing
	}
	return ""
}

// LeansOn says whether the message goes on about a swing: it says so, or names
// no piece and asks for nothing by itself.
func LeansOn(rd *reading.Reading, before parser.Question) bool {
	if before.Intent != parser.AskSwing || rd.Has(lexicon.MarkFollow) {
		return before.Intent == parser.AskSwing
	}
	return !slices.ContainsFunc(rd.Elems, func(e reading.Element) bool { return e.Piece() || e.Term != nil && e.Term.Intent != "" })
}

// Named claims the numbers of an obstacle that was named before. "14 ft high"
// may then be the block's height, unless the obstacle's is what is missing.
func Named(rd *reading.Reading, before parser.Question) {
	missing := before.Without([]parser.Field{parser.ObstacleOut, parser.ObstacleHeight})
	told := Told(rd, -1)
	for i := range told {
		t := &told[i]
		if t.field == "" && t.unclear == "" && len(told) == 1 && len(missing) == 1 {
			t.field = missing[0]
		}
		if len(told) == 1 && t.field == parser.ObstacleHeight && !slices.Contains(missing, parser.ObstacleHeight) {
			t.field = ""
		}
	}
	Settle(rd, slices.DeleteFunc(told, func(t toldOf) bool { return t.field == "" && t.unclear == "" }))
}

// Swings says whether the message asks about a swing and about nothing that
// goes before it.
func Swings(rd *reading.Reading) bool {
	swing := false
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil && (e.Fig.Told == parser.Sideways || e.Fig.Told == parser.BlockHeight):
			swing = true
		case e.Term == nil:
		case e.Term.Intent == parser.AskSwing, Beside(rd, i, parser.LineOut), Beside(rd, i, parser.Sideways), Beside(rd, i, parser.StartAngle):
			swing = true
		case e.Term.Besides:
		case e.Term.Intent == parser.AskDrop || e.Term.Intent == parser.AskBalance || e.Term.Intent == parser.AskLower || e.Term.Intent == parser.AskLift || e.Term.Intent == parser.AskRaise:
			return false
		}
	}
	return swing
}

// Beside says whether the words of a field stand right beside a number.
func Beside(rd *reading.Reading, i int, f parser.Field) bool {
	return rd.Elems[i].Plays(f) && (rd.At(i-1).Fig != nil || rd.At(i+1).Fig != nil)
}

// VerbBefore says whether the thing at i is what may be struck: "will it hit
// the chimney".
func VerbBefore(rd *reading.Reading, i int) bool {
	e := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective))
	return e.Term != nil && e.Term.Intent == parser.AskSwing
}

// Passes makes a question about a swing of a word that asks for one only right
// before what may be struck: "pasa" says much else.
func Passes(rd *reading.Reading, i int) {
	if Obstacle(rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective))) != "" {
		rd.Elems[i].Term = &scan.Term{Intent: parser.AskSwing, Besides: true}
	}
}

// Settle marks the numbers.
func Settle(rd *reading.Reading, told []toldOf) {
	for _, t := range told {
		fig := rd.Elems[t.at].Fig
		fig.Elsewhere, fig.Claimed, fig.Unclear = true, t.field, t.unclear
	}
}

// ObstacleAsk asks what a number of an obstacle is.
func ObstacleAsk(f *reading.Figure, text string) *parser.Ask {
	a := f.Ask(f.Unclear, text)
	a.Fields = []parser.Field{parser.ObstacleOut}
	if f.Unclear == parser.TwoReadings {
		a.Fields = append(a.Fields, parser.ObstacleHeight)
		a.Choices = []parser.Choice{{Field: parser.ObstacleOut}, {Field: parser.ObstacleHeight}}
	}
	return a
}

// Overhead says whether the line at i is none of the crew's: "will it clear the
// lines", "line 12 ft away and 25 ft high".
func Overhead(rd *reading.Reading, i int) bool {
	if !rd.Elems[i].Marked(lexicon.MarkOverhead) {
		return false
	}
	if VerbBefore(rd, i) {
		return true
	}
	for _, t := range Told(rd, i) {
		if t.field == parser.ObstacleOut || t.field == parser.ObstacleHeight {
			return !rd.At(i-1).Marked(lexicon.MarkIs|lexicon.MarkIn) && rd.At(i-1).Fig == nil // "15 ft of line"
		}
	}
	return false
}

// ObstacleOnly keeps what was claimed for an obstacle where the question is
// about a swing after all, and asks about it where it is not.
func ObstacleOnly(rd *reading.Reading, q *parser.Question) (asks []*parser.Ask) {
	if q.Intent == parser.AskSwing {
		q.Obstacle = rd.Obstacle
		q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool { return n == parser.NewTree }) // "the next tree 6 ft past the block"
		return nil
	}
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Intent == parser.AskSwing && e.Term.Besides {
			asks = append(asks, reading.AskAt(parser.Unknown, rd.Text, e.Start, e.End-e.Start)) // "will it clear" is not answered by the way
		}
		if e.Fig != nil && (e.Fig.Claimed == parser.ObstacleOut || e.Fig.Claimed == parser.ObstacleHeight) {
			a := e.Fig.Ask(parser.Loose, rd.Text)
			a.Fields = []parser.Field{e.Fig.Claimed}
			asks = append(asks, a)
		}
	}
	return asks
}
