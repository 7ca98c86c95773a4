package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// "More" and "less" turn a meaning round only beside what they could add to, take
// from or compare: "3 m más", "menos el de arriba", "más gruesa". Before a way that
// something goes they say nothing, "3 m más arriba del corte", nor behind what is
// asked, "¿pesa más mojado?".

// Thither says whether the first of some words is "more" before a way, and what
// stands behind it is spelled out by itself: "más arriba del corte".
func Thither(lx *lexicon.Lexicon, words []string, found int, t *scan.Tongue) bool {
	if len(words) < 2 || !t.Cued(words[0], lexicon.CueMore) || !t.Cued(words[1], lexicon.CueThither) {
		return false
	}
	_, n := lx.Find(words[1:], t)
	return n >= found
}

// More settles the word at i where nothing stands beside it that it could turn.
func More(rd *reading.Reading, i int) {
	prev, next := rd.At(i-1), rd.At(i+1)
	switch plus := rd.Cued(rd.Elems[i], lexicon.CueMore); {
	case Wondered(rd):
		LeaveOut(rd, i, i+1)
	case prev.Term != nil && prev.Term.Intent == parser.AskWeight && next.Fig == nil && !compared(rd, i+1):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} }) // "pesa menos, verdad?"
	case plus && next.Fig != nil && addsOther(rd, i):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkAnd} }) // "polea a 24 m, más 4 vueltas"
	case plus && gearWanted(rd, i):
		LeaveOut(rd, i, i+1)
	case prev.Fig != nil, next.Fig != nil, CountedBy(rd, i-1), prev.Piece(), next.Piece(), compared(rd, i+1):
	case prev.Term != nil && len(prev.Term.Roles) > 0, next.Term != nil && len(next.Term.Roles) > 0 && next.Term.Intent == "", stops.Kit(rd, i-1), stops.Kit(rd, i+1):
	case byItself(rd, i), next.Term == nil && next.Pause == 0 && i+1 < len(rd.Elems), next.Marked(lexicon.MarkAdjective), !plus && !rd.EndsBreath(i+1) && !next.Polite() && !tagged(rd, i+1):
	default:
		LeaveOut(rd, i, i+1)
	}
}

// Wondered says whether a message of a talk asks why the last answer is what it is, and tells
// no number and no tree: what it holds that against is talk, "why that many, i used fewer
// yesterday and it was fine".
func Wondered(rd *reading.Reading) bool {
	asks := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Explain != "" })
	return !rd.First && asks && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil || rd.TermAt(k).Tree != nil })
}

// gearWanted says whether the word at i only names gear that may be needed, "or do we need
// the extra pulleys", where no parts of line are counted that it could add to.
func gearWanted(rd *reading.Reading, i int) bool {
	beside := stops.Kit(rd, i+1) || stops.Kit(rd, i-1)
	counted := func(k int) bool {
		f := rd.Elems[k].Fig
		return f != nil && f.Dim == parser.DimRatio || CountedBy(rd, k) && !rd.Elems[k].Plays(parser.People)
	}
	if !beside || rd.AnyAt(counted) || rd.Before.Has(parser.Parts, parser.Redirects) || rd.At(i-1).Fig != nil || rd.At(i+1).Fig != nil {
		return false
	}
	for k := i - 1; k >= 0 && i-k <= stops.Few && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.Cued(rd.Elems[k], lexicon.CueNeeds) {
			return true
		}
	}
	return false
}

// byItself says whether nothing else is said in the breath of the word at i.
func byItself(rd *reading.Reading, i int) bool {
	begins := i == 0 && strings.TrimSpace(rd.Text[:rd.Elems[i].Start]) == "" || rd.At(i-1).Pause > 0 && !TalkBehind(rd, i-1)
	return begins && rd.EndsBreath(i+1) && !TalkBehind(rd, i)
}

// compared says whether the word at i tells how a piece is, so that "more" before it
// compares it with another: "más gruesa".
func compared(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Marked(lexicon.MarkAdjective|lexicon.MarkThick|lexicon.MarkTall) || e.Plays(parser.Diameter) || e.Plays(parser.Length) || e.Plays(parser.ButtDiameter)
}

// addsOther says whether the number behind "more" at i counts something else than
// any number before it, so that nothing is added up: "24 m de altura más 4 vueltas".
func addsOther(rd *reading.Reading, i int) bool {
	if !CountedBy(rd, i+2) {
		return false
	}
	for k := range i {
		if CountedBy(rd, k) && rd.At(i+2).Plays(parser.Wraps) == rd.At(k).Plays(parser.Wraps) {
			return false
		}
	}
	return i == 0 || rd.Elems[i-1].Fig == nil
}

// LessThanMeant reads "half a wrap less than planned" at the number before the wraps: no
// count is told, and how many it takes answers it. Behind another message the count of
// that one may be meant.
func LessThanMeant(rd *reading.Reading, i int) {
	by := rd.At(i + 2)
	if !rd.Cued(by, lexicon.CueMore) && !rd.Cued(by, lexicon.CueFewer) && !by.Marked(lexicon.MarkBound) {
		return
	}
	end := clauseEnd(rd, i+3)
	plain := by.Marked(lexicon.MarkBound) || rd.EndsBreath(i+3)
	for k := i + 3; k < end; k++ {
		plain = plain && rd.Elems[k].Fig == nil && smallTalk(rd, k)
	}
	if !plain || !rd.First {
		rd.Alter(i+2, func(t *scan.Term) { t.Ask, t.Turning = parser.Twist, parser.TurnsCompared })
		return
	}
	LeaveOut(rd, i, end)
	rd.Elems[i+1].Term = &scan.Term{Intent: parser.AskLower}
}

// NextSize says whether the word at i holds the piece of a talk against the one before by
// the size that is told behind it, "next one's thicker, 16": the size tells it all. By how
// much it is thicker is another matter, "thicker by 2", and so is what it is thicker than.
func NextSize(rd *reading.Reading, i int) bool {
	of := heldBy(rd, i)
	if of == nil {
		return false
	}
	at := rd.Only(func(k int) bool { return rd.Elems[k].Fig != nil })
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	if at <= i || rd.At(i+1).Cross || rd.In.Cued(word, lexicon.CueThan) {
		return false
	}
	fig := rd.Elems[at].Fig
	return slices.ContainsFunc(of, func(f parser.Field) bool {
		was, told := rd.Before.Get(f)
		return told && (fig.Unit == nil && fig.Dim == parser.DimCount || fig.Dim == parser.DimLength && fig.High <= sizeAgain*was.High && was.Low <= sizeAgain*fig.Low)
	})
}

// heldBy are the sizes that the word at i holds pieces against one another by: "thicker", how
// thick they are; none where it does by no size.
func heldBy(rd *reading.Reading, i int) []parser.Field {
	says := func(c scan.Cue) bool {
		_, behind, _ := strings.Cut(rd.Word(rd.Elems[i]), " ") // "bit longer", "un poco más larga"
		_, last, _ := strings.Cut(behind, " ")
		of := func(text string) bool { return rd.Begin(c, text) }
		return rd.Cued(rd.Elems[i], c) || rd.TermAt(i).Fresh && (of(rd.Word(rd.Elems[i])) || of(behind) || of(last))
	}
	switch {
	case says(lexicon.CueFatter):
		return parser.Across
	case says(lexicon.CueLengthier):
		return []parser.Field{parser.Length}
	}
	return nil
}

// TellNextSize takes the one length of such a message for the size that the word at i holds
// pieces against one another by: "shorter, 60 cm" is no thickness.
func TellNextSize(rd *reading.Reading, i int) {
	at := rd.Only(func(k int) bool { return rd.Elems[k].Fig != nil })
	if rd.Elems[at].Fig.Dim != parser.DimLength || rd.Elems[at].Fig.Pair {
		return
	}
	told := *rd.Elems[at].Fig
	if told.Told = parser.Length; heldBy(rd, i)[0] != parser.Length {
		told.Told = parser.Diameter
	}
	rd.Elems[at].Fig = &told
}

// SizedGear says whether the word at i holds a rope against another by the one size that is
// told of it, "thicker rope today, 18 mm": the size tells it all.
func SizedGear(rd *reading.Reading, i int) bool {
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	k := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkIs|lexicon.MarkAdverb)
	beside := gear.Part(rd.At(i+1)) == lexicon.PartRope || gear.Part(rd.At(k)) == lexicon.PartRope
	size := rd.Only(func(n int) bool { return rd.Elems[n].Fig.Short() && rd.Elems[n].Fig.High <= thickestRope })
	return beside && size >= 0 && !rd.In.Cued(word, lexicon.CueThan) && rd.At(i-1).Fig == nil && rd.At(i+1).Fig == nil
}

// thickestRope is the thickest that a rope for this work is told to be, in metres.
const thickestRope = 0.05

// sizeAgain is how much larger or smaller than the one before the next piece is told to be:
// what is told beyond is rather the difference.
const sizeAgain = 3
