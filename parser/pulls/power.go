package pulls

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// BlockCounts passes over how many blocks there are, and says so: what counts
// is the parts of line, "4 parts of line and 4 blocks". More blocks than parts
// take friction that the parts do not tell of, and stay in doubt.
func BlockCounts(rd *reading.Reading) {
	if !turning.Lifting(rd) {
		blocksOfLower(rd)
		return
	}
	parts := 0.0
	for i, e := range rd.Elems {
		if e.Fig != nil && (e.Fig.Dim == parser.DimRatio || e.Fig.Dim == parser.DimCount && rd.At(i+1).Plays(parser.Parts)) {
			parts = max(parts, e.Fig.Low)
		}
	}
	for i := 0; i < len(rd.Elems); i++ {
		if n := sheavesCounted(rd, i); n > 0 && (parts == 0 || n <= parts) && rd.Cued(rd.At(i+2), lexicon.CueStarts) {
			turning.Blank(rd, i, i+1) // "los dos bloques empiezan a 4 m"
		} else if n > 0 && (parts == 0 || n <= parts) {
			rd.Pass(i, i+2)
			i--
		}
	}
}

// blocksOfLower passes over how many blocks there are where nothing is lifted, "dos poleas,
// cuántas vueltas": no number of them is a size, and none of them sees more than a top
// block alone. Where the rope is told to turn, each of them counts.
func blocksOfLower(rd *reading.Reading) {
	const most = 4
	turned := rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimAngle })
	if turned || gear.AsksFor(rd, parser.AskRaise) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		fig, next := rd.Elems[i].Fig, rd.TermAt(i+1)
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Low != fig.High || fig.Low < 2 || fig.Low > most || fig.Low != float64(int(fig.Low)) {
			continue
		}
		if several := (next.Blocks || next.Block == parser.AnyBlock) && plural(rd, i+1); several && rd.At(i+2).Fig == nil && !rd.At(i-1).Marked(lexicon.MarkCord) {
			rd.Pass(i, i+2)
			i--
		}
	}
}

// plural says whether the word at i is of several: "blocks", "poleas en vez de una".
func plural(rd *reading.Reading, i int) bool {
	first, _, _ := strings.Cut(rd.Word(rd.At(i)), " ")
	return strings.HasSuffix(first, "s")
}

// sheavesCounted is how many sheaves the number at i counts, 0 where it counts none:
// "with 3 blocks", "got two double blocks".
func sheavesCounted(rd *reading.Reading, i int) float64 {
	fig, next := rd.Elems[i].Fig, rd.TermAt(i+1)
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low != fig.High {
		return 0
	}
	led := i == 0 || rd.At(i-1).Pause > 0 || rd.At(i-1).Marked(lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAnd|lexicon.MarkMade|lexicon.MarkArticle) || rd.Cued(rd.At(i-1), lexicon.CueOwns)
	switch {
	case !led:
		return 0
	case next.Paired:
		return 2 * fig.High
	case next.Blocks || next.Block == parser.AnyBlock:
		return fig.High
	}
	return 0
}

// EachLegRoved reads "winche de 400 kg y 3 ramales" as parts of line: what a
// winch pulls on is no sling.
func EachLegRoved(rd *reading.Reading) {
	winch := rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.WinchPull) })
	if !winch || gear.SlingNamed(rd) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimAngle }) {
		return
	}
	for i, e := range rd.Elems {
		fig := rd.At(i - 1).Fig
		if e.Term == nil || !e.Term.Roved || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil {
			continue
		}
		fig.Dim, fig.Told = parser.DimRatio, parser.Parts
		rd.Elems[i].Term = &scan.Term{}
	}
}

// WinchLifts asks about the one mass of "the winch lifts 900 lb on 2 parts" and
// of "3 guys pulling 200 lb, how much can we lift": it could be the pull or the
// load.
func WinchLifts(rd *reading.Reading) {
	at := -1
	for i, e := range rd.Elems {
		if e.Fig != nil && (e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce) {
			if at >= 0 {
				return
			}
			at = i
		}
	}
	if at < 1 || rd.Elems[at].Fig.Told != "" || rd.At(at+1).Piece() || rd.Cued(rd.At(at+1), lexicon.CueEach) && pullBefore(rd, at+1) {
		return // "two of us pulling 45 lb apiece": see EachPulls
	}
	winch := rd.TermAt(at-1).Intent == parser.AskLift && rd.At(at-2).Plays(parser.WinchPull)
	if !winch && pulledWith(rd, at) {
		rd.Elems[at].Fig.Told = parser.WinchPull
		rd.Alter(rd.Back(at-1), func(t *scan.Term) { t.Intent, t.Note = parser.AskLift, parser.MostWanted })
		return
	}
	if !winch && !(rd.Cued(rd.At(rd.Back(at-1)), lexicon.CuePulling) && mostAsked(rd)) {
		return
	}
	fig := rd.Elems[at].Fig
	if winch && fig.Dim == parser.DimForce {
		fig.Told = parser.WinchPull // nobody weighs wood in kilonewtons
		return
	}
	a := fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields = []parser.Field{parser.Weight, parser.WinchPull}
	a.Choices = []parser.Choice{{Field: parser.Weight}, {Field: parser.WinchPull}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}
