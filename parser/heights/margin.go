package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How far something is to be missed by is no size of the piece, and no place of the block
// or of what may be struck: no swing or pull is worked out from it.

// Margins passes such a number over and says so: "I want the shed clear by 15 ft", "with 5
// ft to spare", "5 ft of clearance", "keep it 6 ft off the shed".
func Margins(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		from, to := i, max(spared(rd, i), between(rd, i))
		if rd.Cued(rd.At(i-1), lexicon.CueClearedBy) {
			from--
		}
		switch {
		case clearedBy(rd, i):
			rd.Pass(from, i+1)
		case to > 0 && Swung(rd):
			rd.Pass(from, to)
		case keptOff(rd, i):
			rd.Pass(i, i+2)
		default:
			continue
		}
		i = max(0, i-2)
	}
}

// clearedBy reads "clear the shed by 15 ft" and "miss it by a metre".
func clearedBy(rd *reading.Reading, i int) bool {
	const most = 5
	if !rd.Cued(rd.At(i-1), lexicon.CueClearedBy) || !rd.EndsBreath(i+1) {
		return false
	}
	for k := i - 2; k >= max(0, i-2-most) && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.Cued(rd.Elems[k], lexicon.CueClears) {
			return true
		}
	}
	return false
}

// spared is the end of "to spare" and "of clearance" behind the number at i, 0 where it
// does not stand there.
func spared(rd *reading.Reading, i int) int {
	k := rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkRelation)
	if rd.Cued(rd.At(k), lexicon.CueMargin) {
		return k + 1
	}
	return 0
}

// between is the end of "between the tip and the shed" behind the number at i, 0 where it
// does not stand there.
func between(rd *reading.Reading, i int) int {
	if !rd.At(i + 1).Marked(lexicon.MarkBetween) {
		return 0
	}
	and := rd.Past(i+2, +1, lexicon.MarkArticle)
	if e := rd.At(and); !e.Piece() && !rd.TermAt(and).Unnamed && !e.Plays(parser.TipDiameter) && !e.Plays(parser.ButtDiameter) {
		if gear.BlockNoun(rd, and) {
			rd.Elems[i].Fig.Elsewhere = true // from the block it is where the shed stands
		}
		return 0
	}
	for rd.At(and).Pause == 0 && rd.At(and).Fig == nil && !rd.At(and).Marked(lexicon.MarkAnd) && and < len(rd.Elems) {
		and++
	}
	struck := rd.Past(and+1, +1, lexicon.MarkArticle)
	if rd.At(and).Marked(lexicon.MarkAnd) && gear.Obstacle(rd.At(struck)) == parser.Thing {
		return struck + 1
	}
	return 0
}

// keptOff reads "keep it 6 ft off the shed" and "stop it a metre short of the wall", and
// of what is not known, which stays asked about: "keep it 7 ft off the water slide".
func keptOff(rd *reading.Reading, i int) bool {
	struck := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkRelation)
	if !rd.Cued(rd.At(i+1), lexicon.CueOffWall) || gear.Obstacle(rd.At(struck)) != parser.Thing && !unknownBehind(rd, i+1) {
		return false
	}
	j := i - 1
	for rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle|lexicon.MarkAt) || rd.At(j).Piece() || rd.TermAt(j).Unnamed {
		j--
	}
	return rd.Cued(rd.At(j), lexicon.CueKeepsOff)
}

// unknownBehind says whether a word that is not known stands behind the word at i, before the
// breath ends.
func unknownBehind(rd *reading.Reading, i int) bool {
	to := i + 1
	for to < len(rd.Elems) && rd.Elems[to].Pause == 0 {
		to++
	}
	end := len(rd.Text)
	if to < len(rd.Elems) {
		end = rd.Elems[to].Start
	}
	return slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && a.Start >= rd.At(i).End && a.Start < end
	})
}

// AboveAlone takes "the block hangs above the union" for no height: no number stands right
// before it, and those further off are of something else.
func AboveAlone(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !e.LooksBack(parser.BlockHeight) || rd.At(i-1).Fig != nil || rd.At(i-1).Pause > 0 && rd.At(i-2).Fig != nil {
			continue
		}
		k := i - 1
		for k >= 0 && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil && !rd.Elems[k].Marked(lexicon.MarkAnd) {
			k--
		}
		if k < 0 || rd.Elems[k].Fig == nil {
			rd.Alter(i, func(t *scan.Term) { t.Roles = nil })
		}
	}
}
