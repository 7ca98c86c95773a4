package turning

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// Crews deny what no answer takes for granted: "never dropping it, just lowering", "no
// rope" of what a round weighs, "not my usual drum". Such a clause says nothing new.

// foregone finds where what the word at i denies, in a clause from one element up to
// another, begins and ends, where that is so anyway; the end is 0 elsewhere.
func foregone(rd *reading.Reading, i, from, to int) (start, end int) {
	breath := to
	for breath < len(rd.Elems) && rd.Elems[breath].Pause == 0 {
		breath++
	}
	crew, dire := ofCrew(rd, from, breath), direAt(rd, from, to) // "no ropes or harness on the climber"
	for k := i + 1; k < to; k++ {
		if rd.Elems[k].Marked(lexicon.MarkAnd) {
			to = k
		}
	}
	told := func(k int) bool { return !smallTalk(rd, k) }
	switch {
	case usualDrum(rd, i):
		return from, rd.Past(i+1, +1, lexicon.MarkArticle) + 2
	case hastyAfterGently(rd, i):
		return i - 1, i + 2
	case blockOrCrotch(rd, i) > 0:
		return i, blockOrCrotch(rd, i)
	case unasked(rd, i) > 0:
		return i, unasked(rd, i)
	case oldKit(rd, i) > 0:
		return i, oldKit(rd, i)
	case absentEnd(rd, i) > 0 && !dire:
		if !anyWho(rd, from, i) {
			from = i
		}
		return from, absentEnd(rd, i)
	case from < i && !anyWho(rd, from, i), bounds.AnyWithin(rd, from-1, i, told):
		return 0, 0 // "it wont drop" may be stuck
	case crew, dire:
		return 0, 0
	case from == i && about(rd, i-1) && rd.TermAt(i-1).Intent != parser.AskLower:
		return 0, 0 // "the rope isnt"
	case neverDropped(rd, i, from, to), kitUnused(rd, i, from, to):
		return from, to
	}
	return 0, 0
}

// neverDropped says whether nothing but a drop is denied from one element up to another,
// and the message tells of none.
func neverDropped(rd *reading.Reading, i, from, to int) bool {
	drops := func(k int) bool {
		e, t := rd.Elems[k], rd.TermAt(k)
		return e.Fig == nil && t.Tree == nil && (t.Intent == parser.AskDrop || e.Plays(parser.DropHeight) || t.LetFall && e.Plays(parser.DropHeight))
	}
	anew := rd.First || tellsPiece(rd) || rd.AnyAt(rd.Is(gear.Heavy))
	return anew && only(rd, i+1, to, drops) && !rd.AnyAt(func(k int) bool {
		return (k < from || k >= to) && (drops(k) || rd.TermAt(k).LetFall)
	})
}

// kitUnused says whether nothing but gear is denied from one element up to another in a
// message that asks what a piece weighs and tells of no gear, or a tag line that nothing
// is asked of.
func kitUnused(rd *reading.Reading, i, from, to int) bool {
	tagLine := func(k int) bool { return rd.TermAt(k).Intent == parser.AskBalance && rd.TermAt(k).Besides }
	kit := func(k int) bool {
		return rd.Elems[k].Fig == nil && (stops.Kit(rd, k) || rd.Elems[k].Marked(lexicon.MarkGear)) && !rd.TermAt(k).Damaged
	}
	outside := func(holds func(int) bool) bool {
		return rd.AnyAt(func(k int) bool { return (k < from || k >= to) && holds(k) })
	}
	if only(rd, i+1, to, tagLine) {
		return !outside(func(k int) bool {
			return rd.TermAt(k).Intent == parser.AskBalance || rd.TermAt(k).Intent == parser.AskSwing
		})
	}
	return only(rd, i+1, to, kit) && tellsPiece(rd) && !outside(func(k int) bool { return kit(k) || BesidesWeight(rd, k) && !dropsPiece(rd, k) })
}

// dropsPiece says whether the word at k tells that a piece is dropped, and not how far.
func dropsPiece(rd *reading.Reading, k int) bool {
	sized := rd.At(k+1).Fig != nil && rd.At(k+2).Piece() // "dropping 30 in rounds"
	return rd.Elems[k].Plays(parser.DropHeight) && (rd.At(k+1).Fig == nil || sized) && (rd.At(k-1).Fig == nil || sized)
}

// only says whether something of a kind stands from one element up to another, and
// nothing else but talk.
func only(rd *reading.Reading, from, to int, kind func(int) bool) bool {
	found := false
	for k := from; k < to; k++ {
		is := kind(k)
		if !is && !smallTalk(rd, k) {
			return false
		}
		found = found || is
	}
	return found
}

// smallTalk says whether the element at k says nothing that an answer rests on.
func smallTalk(rd *reading.Reading, k int) bool {
	return Weightless(rd, k) && !BesidesWeight(rd, k)
}

// usualDrum reads "not my usual drum": the wraps are those of any.
func usualDrum(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	return sizes.Denial(rd, i) && rd.Cued(rd.At(j), lexicon.CueUsual) && gear.Part(rd.At(j+1)) == lexicon.PartDrum && rd.EndsBreath(j+2)
}

// hastyAfterGently reads "slow not fast": how a piece is lowered is said twice.
func hastyAfterGently(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	hasty := rd.Cued(next, lexicon.CueHasty) || next.Plays(parser.RunLength) && next.Fig == nil
	return rd.Cued(rd.At(i-1), lexicon.CueGently) && hasty && rd.EndsBreath(i+2)
}

// oldKit finds where "forget the old rope" at i ends, where the new one is told with its
// figure, or of "old gear" any of it; 0 elsewhere.
func oldKit(rd *reading.Reading, i int) int {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	words := scan.SplitWords(rd.Word(rd.At(j)))
	if !rd.Cued(rd.Elems[i], lexicon.CueIgnores) || len(words) == 0 || !rd.In.Cued(words[0], lexicon.CueFormer) {
		return 0
	}
	end, kind := j+1, words[len(words)-1] // "old rope" is one word, of gear that is worn
	if len(words) == 1 {
		end, kind = j+2, rd.Word(rd.At(j+1))
	}
	all := rd.TermAt(end-1).Intent == parser.AskGear
	told := func(k int) bool {
		figure := rd.At(rd.Past(k+1, +1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkRelation)).Fig
		return k >= end && gear.Part(rd.Elems[k]) != "" && (all || rd.Word(rd.Elems[k]) == kind) && figure != nil && figure.Unit != nil
	}
	if !rd.EndsBreath(end) || !rd.AnyAt(told) {
		return 0
	}
	return end
}

// blockOrCrotch finds where "without a block" and "we dont have a block today" at i end,
// where a natural crotch is told, or the other way round; 0 elsewhere.
func blockOrCrotch(rd *reading.Reading, i int) int {
	if !rd.TermAt(i).Lacks && !rd.TermAt(i).Denies && !rd.Cued(rd.Elems[i], lexicon.CueNot) && !rd.Cued(rd.Elems[i], lexicon.CueDenying) {
		return 0
	}
	idle := func(k int) bool {
		e := rd.At(k)
		return k < len(rd.Elems) && e.Pause == 0 && e.Fig == nil && !crotchOrBlock(rd, k) && smallTalk(rd, k)
	}
	j := i + 1
	for j-i <= stops.Few && idle(j) {
		j++
	}
	if !crotchOrBlock(rd, j) || !naturalCrotch(rd, j) && crotchBehind(rd, j) {
		return 0
	}
	end := j + 1
	for end-j <= stops.Few && idle(end) {
		end++
	}
	if !rd.EndsBreath(end) {
		return 0
	}
	crotchTakenBack(rd, i, j)
	return end
}

// crotchBehind says whether a crotch is denied in the breath of the block at j, behind it: "no
// a block not natural crotch" puts right what was told.
func crotchBehind(rd *reading.Reading, j int) bool {
	for k := j + 1; k < len(rd.Elems) && rd.At(k).Pause == 0; k++ {
		not := rd.Past(k-1, -1, lexicon.MarkArticle)
		if naturalCrotch(rd, k) && (rd.TermAt(not).Denies || rd.Cued(rd.At(not), lexicon.CueNot)) {
			return true
		}
	}
	return false
}

// crotchTakenBack leaves out the natural crotch that was told before the words at i deny it, at j:
// "natural crotch no block not crotch". Told and denied, it is not what the rope runs in.
func crotchTakenBack(rd *reading.Reading, i, j int) {
	if !naturalCrotch(rd, j) {
		return
	}
	for k := range i {
		if naturalCrotch(rd, k) {
			Blank(rd, k, k+1)
		}
	}
}

// unasked finds where "forget the weight, how many wraps" ends at i: what is not asked
// for, where something else is; 0 elsewhere.
func unasked(rd *reading.Reading, i int) int {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	wraps := func(k int) bool {
		return rd.TermAt(k).Intent == parser.AskLower && rd.At(k-1).Fig == nil && rd.At(k+1).Fig == nil
	}
	weight := func(k int) bool { return rd.TermAt(k).Intent == parser.AskWeight && rd.At(k+1).Fig == nil }
	outside := func(asks func(int) bool) bool {
		return rd.AnyAt(func(k int) bool { return k > j && asks(k) })
	}
	one, other := weight(j) && outside(wraps) && !outside(weight), wraps(j) && outside(weight) && !outside(wraps)
	if !rd.Cued(rd.Elems[i], lexicon.CueIgnores) || !one && !other || !rd.EndsBreath(j+1) && rd.TermAt(j+1).Intent == "" {
		return 0
	}
	return j + 1
}
