package pulls

import (
	"slices"
	"strconv"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A tackle is told by its blocks as well: "a double and a single", "3 blocks". So many
// sheaves make as many parts of line where the rope to pull leaves the top block, and one
// more where it leaves the block on the load. Which of the two it is, is asked.

// blockGroup is a stretch of a message that tells blocks.
type blockGroup struct {
	from, to int // elements
	sheaves  int
	sure     bool // it can tell of nothing else
}

// SheavesTold reads the blocks of a tackle, where its parts of line are not told.
func SheavesTold(rd *reading.Reading) {
	g, ok := groupOf(rd)
	if !ok || meetOnly(rd, g) || g.sheaves < 2 || g.sheaves > reading.MostParts || !g.sure && !tackleOnly(rd, g) || otherWork(rd) {
		return
	}
	start, end := rd.Elems[g.from].Start, rd.Elems[g.to-1].End
	blank := reading.Element{Start: start, End: end, Term: &scan.Term{Blocks: true}}
	parts := float64(g.sheaves)
	up, down := noted(rd, parser.HaulUp), noted(rd, parser.HaulDown)
	switch {
	case partsSaid(rd):
		const counted = 2 // a number and the blocks: see BlockCounts
		if (g.sure || g.to-g.from > counted) && parts <= mostSaid(rd) {
			rd.Pass(g.from, g.to)
		}
		return
	case up == down:
		a := reading.AskAt(parser.WhichParts, rd.Text, start, end-start)
		a.Fields, a.Number = []parser.Field{parser.Parts}, parts
		rd.Asks = append(rd.Asks, a)
		rd.Elems = slices.Replace(rd.Elems, g.from, g.to, blank)
		return
	case up:
		parts++
	}
	if parts > reading.MostParts {
		return
	}
	fig := &reading.Figure{Low: parts, High: parts, Dim: parser.DimRatio, Told: parser.Parts, Start: start, End: end}
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[start:end], As: strconv.Itoa(int(parts)) + ":1"})
	rd.Elems = slices.Replace(rd.Elems, g.from, g.to, reading.Element{Start: start, End: end, Fig: fig})
}

// meetOnly says whether it is only asked that blocks do not meet, and no other number is
// told: those of two lines make no tackle.
func meetOnly(rd *reading.Reading, g blockGroup) bool {
	return noted(rd, parser.BlocksMeet) && noted(rd, parser.TieWanted) && !rd.AnyAt(func(i int) bool {
		return (i < g.from || i >= g.to) && rd.Elems[i].Fig != nil
	})
}

// groupOf finds the blocks that are told, "two doubles and a single block": as many as
// stand in one breath.
func groupOf(rd *reading.Reading) (blockGroup, bool) {
	for i := range rd.Elems {
		g := blockGroup{from: i, to: i}
		kinds, named := 0, false
		for {
			n, kind, block, to := blocksAt(rd, g.to)
			if n == 0 {
				break
			}
			g.sheaves, g.to, named = g.sheaves+n, to, named || block
			if kind {
				kinds++
			}
			if !rd.At(to).Marked(lexicon.MarkAnd) && !rd.Cued(rd.At(to), lexicon.CuePlus) && rd.At(to).Pause != 2 {
				break
			}
			if m, _, _, _ := blocksAt(rd, to+1); m == 0 {
				break
			}
			g.to++ // the "and"
		}
		if g.to > i && g.sheaves >= 2 && (named || kinds > 1 || kinds == 1 && g.sheaves >= 4) {
			g.sure = kinds > 0
			return g, true
		}
	}
	return blockGroup{}, false
}

// blocksAt is how many sheaves the words from i on tell, and the element behind them; 0
// where they tell none. A kind, "double", says how many each block has.
func blocksAt(rd *reading.Reading, i int) (sheaves int, kind, block bool, to int) {
	count, k := 1, i
	switch e := rd.At(k); {
	case e.Fig != nil && e.Fig.Between(1, 4) && !e.Fig.Pair:
		count, k = int(e.Fig.Low), k+1
	case e.Marked(lexicon.MarkArticle), places.Bare(e.Fig, 1), rd.In.Numbers[rd.Word(e)].Value == 1:
		k++
	}
	counted, each := k > i, 1
	for c, n := range map[scan.Cue]int{lexicon.CueOneSheave: 1, lexicon.CueTwoSheaves: 2, lexicon.CueThreeSheaves: 3} {
		if rd.Cued(rd.At(k), c) {
			kind, each = true, n
		}
	}
	if rd.TermAt(k).Paired {
		return 2 * count, true, true, k + 1
	}
	if kind {
		k++
	}
	if next := rd.TermAt(k + 1); counted && !kind && (rd.At(k).Polite() || rd.At(k).Marked(lexicon.MarkAdjective) || rd.TermAt(k).Chatter) && (next.Blocks || next.Paired) {
		k++ // "two good pulleys"
	}
	if t := rd.TermAt(k); t.Blocks || t.Block == parser.AnyBlock && (kind || counted && count > 1) {
		return count * each, kind, true, k + 1
	}
	if !kind || !counted {
		return 0, false, false, i
	}
	return count * each, true, false, k
}

// tackleOnly says whether blocks that are only counted can be those of a tackle: a lift
// is told of, or nothing besides.
func tackleOnly(rd *reading.Reading, g blockGroup) bool {
	before := rd.At(g.from - 1)
	led := g.from == 0 || before.Pause > 0 || before.Marked(lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkAnd|lexicon.MarkMade) || rd.Cued(before, lexicon.CueOwns) || rd.Cued(before, lexicon.CueOverBlock) || before.Polite()
	if !led {
		return false // "lift 3 blocks"
	}
	if liftAsked(rd) || partsSaid(rd) || rd.Before.Intent == parser.AskLift && !rd.Before.Has(parser.Parts) {
		return true
	}
	return !rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return (i < g.from || i >= g.to) && (e.Fig != nil || e.Piece() || e.Term != nil && e.Term.Intent != "")
	})
}

// liftAsked says whether a message asks for a lift, or tells who pulls a load.
func liftAsked(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskLift || t.Note == parser.PartsWanted || rd.Elems[i].Plays(parser.WinchPull) || rd.Elems[i].Marked(lexicon.MarkHoists)
	})
}

// TackleTold says whether a lift is told of, or how many parts of line it has.
func TackleTold(rd *reading.Reading) bool { return liftAsked(rd) || partsSaid(rd) }

// otherWork says whether a message asks for what takes no tackle: a rope that only turns
// at its blocks, a drum, a swing.
func otherWork(rd *reading.Reading) bool {
	return rd.Worded(parser.Wraps) || rd.AnyAt(func(i int) bool {
		switch t := rd.TermAt(i); t.Intent {
		case parser.AskLower, parser.AskBlockLoad, parser.AskSwing, parser.AskDrop, parser.AskBalance, parser.AskGear, parser.AskAnchor:
			return !t.Besides && !liftAsked(rd)
		}
		return rd.TermAt(i).Note == parser.MovingBlock
	})
}

// mostSaid is the most parts of line that are told.
func mostSaid(rd *reading.Reading) (most float64) {
	for i, e := range rd.Elems {
		if fig := e.Fig; fig != nil && (fig.Dim == parser.DimRatio || fig.Told == parser.Parts || rd.At(i+1).Plays(parser.Parts)) {
			most = max(most, fig.High)
		}
	}
	return most
}

func partsSaid(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Dim == parser.DimRatio || fig.Told == parser.Parts || fig.Dim == parser.DimCount && rd.At(i+1).Plays(parser.Parts))
	})
}

func noted(rd *reading.Reading, n string) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == n })
}
