package turning

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A crew takes back what it only guessed before: "the 450 was a guess", "olvida los 400,
// era al tanteo". What the number told is then told no more.

// GuessTakenBack passes over a number of the talk that is said to be a guess. Of one that
// the talk has not told it asks.
func GuessTakenBack(rd *reading.Reading) {
	if rd.First {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Pair {
			continue
		}
		from, behind := guessLead(rd, i), guessEnd(rd, fig.End)
		if same := sameTold(rd, fig); behind < 0 && (from == i || !rd.EndsBreath(i+1) || !same) || !same && fig.Unit != nil {
			continue
		}
		takeGuess(rd, from, i, max(behind, fig.End))
		i = from - 1
	}
}

// takeGuess takes out what is said of the guess at i, from the element before it up to a
// place in the text.
func takeGuess(rd *reading.Reading, from, i, end int) {
	to, start := i+1, rd.Elems[from].Start
	for to < len(rd.Elems) && rd.Elems[to].Start < end {
		to++
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start >= start && a.End <= end })
	rd.Fixes = slices.DeleteFunc(rd.Fixes, func(f parser.Fix) bool { return strings.Contains(rd.Text[start:end], f.Words) })
	if !sameTold(rd, rd.Elems[i].Fig) {
		back := reading.Element{Start: start, End: end, Term: &scan.Term{Ask: parser.Twist, Turning: parser.TurnsBack}}
		rd.Elems = slices.Replace(rd.Elems, from, to, back)
		return
	}
	rd.Pass(from, to)
	rd.Guessed = append(rd.Guessed, rd.Passed[len(rd.Passed)-1])
}

// figures is the number in what was typed.
var figures = regexp.MustCompile(`\d[\d,.]*`)

// sameTold says whether a number is one that the talk has told.
func sameTold(rd *reading.Reading, fig *reading.Figure) bool {
	typed := strings.TrimRight(figures.FindString(rd.Text[fig.Start:fig.End]), ".,")
	return typed != "" && slices.ContainsFunc(rd.Before.Quantities, func(x parser.Quantity) bool {
		return strings.TrimRight(figures.FindString(x.Words), ".,") == typed
	})
}

// guessLead is where the words begin which say of the number at i behind them that it was a
// guess, i itself where none do.
func guessLead(rd *reading.Reading, i int) int {
	for k := max(0, i-reading.LongestCue); k < i; k++ {
		if rd.CuedAs(rd.Text[rd.Elems[k].Start:rd.Elems[i].Start], lexicon.CueGuessedIt) {
			return k
		}
	}
	return i
}

// guessEnd is where the words end which say that it was one of what stands before a place in
// the text, -1 for none.
func guessEnd(rd *reading.Reading, from int) int {
	for from < len(rd.Text) && strings.ContainsRune(" ,", rune(rd.Text[from])) {
		from++
	}
	return rd.SaidTo(lexicon.CueWasGuess, from)
}
