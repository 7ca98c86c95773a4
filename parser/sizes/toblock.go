package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a piece falls past its block, how far that hangs below the cut is told in many
// ways: "2 ft to the block", "the block is 3 ft down", "catch it 2 ft below the cut".

// Negative reads "radiata top 7 m, negative, 25 cm at the cut" as negative rigging: in a
// breath of its own, behind something else. At the head of a message it may say no.
func Negative(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		if !rd.TermAt(i).Negative || !rd.EndsBreath(i+1) {
			continue
		}
		last := rd.At(i - 1)
		if last.Pause > 0 || last.Fig != nil || last.Piece() || last.Marked(lexicon.MarkIs|lexicon.MarkAnd|lexicon.MarkPronoun) || rd.Cued(last, lexicon.CueItIs) {
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskDrop}
		}
	}
}

// farthestBelow is how far below the cut a block may be told to hang at most, in m.
const farthestBelow = 5

// ToBlock finds how far a block is below the cut where a piece falls past it.
func ToBlock(rd *reading.Reading) {
	falls := gear.AsksFor(rd, parser.AskDrop) || rd.Before.Intent == parser.AskDrop
	for i := range rd.Elems {
		if !places.LengthAt(rd, i) || rd.Elems[i].Fig.High > farthestBelow {
			continue
		}
		switch to, from, hitch := toBlock(rd, i+1), blockDown(rd, i), hitchToBlock(rd, i); {
		case falls && hitch > 0:
			rd.Elems[i].Fig.Told = parser.HitchToBlock
			mute(rd, i+1, hitch)
		case !falls && from >= 0:
			eitherOf(rd, i, parser.BlockBelow, parser.HitchHeight) // from where is not told
			mute(rd, from, i-1)
		case !falls:
		case to > 0 && fallBack(rd, i+1):
			eitherOf(rd, i, parser.DropHeight, parser.BlockBelow) // "1 m drop to the block"
			mute(rd, i+1, to)
		case to > 0:
			rd.Elems[i].Fig.Told = parser.BlockBelow
			mute(rd, i+1, to)
		case from >= 0:
			rd.Elems[i].Fig.Told = parser.BlockBelow
			mute(rd, from, i-1)
		case caughtBelow(rd, i), behindCut(rd, i):
			rd.Elems[i].Fig.Told = parser.BlockBelow
		}
	}
}

// RopeToDrum reads "half inch double braid, like 55 feet to the drum" as how much rope is in
// a line that stops a fall, where its length is told nowhere else.
func RopeToDrum(rd *reading.Reading) {
	long := func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && (fig.Told == parser.RopeLength || fig.Far() && rd.At(i+1).Plays(parser.RopeLength))
	}
	falls := func(i int) bool {
		t := rd.TermAt(i)
		return t.Intent == parser.AskDrop && !t.Besides || t.Note == parser.LetRun || t.Note == parser.Snubbed || rd.Elems[i].Plays(parser.DropHeight)
	}
	if !rd.AnyAt(falls) && rd.Before.Intent != parser.AskDrop || rd.AnyAt(long) {
		return
	}
	rope := false
	for i, e := range rd.Elems {
		rope = rope || gear.Part(e) == lexicon.PartRope
		if rope && e.Fig != nil && e.Fig.Told == parser.DrumAway && rd.At(i+1).Pause == 0 && i+1 < len(rd.Elems) {
			e.Fig.Told = parser.RopeLength // what leads to the drum behind it
		}
		if gear.Far(rd, i) && e.Fig.Told == "" && downToDrum(rd, i+1) {
			e.Fig.Told = parser.RopeLength // what catches the piece is all the rope down to who holds it
			return
		}
	}
}

// downToDrum says whether the words from i on lead down to the drum, or to who holds it: "50
// ft down to the guy with the drum".
func downToDrum(rd *reading.Reading, i int) bool {
	const far = 8
	if rd.Cued(rd.At(i), lexicon.CueDown) {
		i++
	}
	if e := rd.At(i); !rd.Cued(e, lexicon.CueTowards) && !rd.Cued(e, lexicon.CueUpTo) && !e.Marked(lexicon.MarkTaper) {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && k < i+far && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k++ {
		switch gear.Part(rd.At(k)) {
		case lexicon.PartDrum:
			return true
		case "":
		default:
			return false
		}
	}
	return false
}

// toBlock is the block to which the words from i on lead from a number: "down to the
// block", "from the cut to the block"; 0 where they lead to none.
func toBlock(rd *reading.Reading, i int) int {
	for rd.At(i).Pause == 0 && (rd.Cued(rd.At(i), lexicon.CueDown) || rd.At(i).LooksBack(parser.Tie) || fallBack(rd, i)) {
		i++
	}
	block := rd.Past(i+1, +1, lexicon.MarkArticle)
	leads := rd.Cued(rd.At(i), lexicon.CueTowards) || rd.At(i).Marked(lexicon.MarkTaper) // "down to"
	if !leads || gear.Part(rd.At(block)) != lexicon.PartBlock || !rd.EndsBreath(block+1) {
		return 0
	}
	return block
}

// hitchToBlock is the block of "5 ft from where it's tied to the block", behind the number
// at i; 0 where the words lead from no hitch, or to none.
func hitchToBlock(rd *reading.Reading, i int) int {
	k := i + 1
	for rd.At(k).Pause == 0 && k < len(rd.Elems) && gear.Part(rd.At(k)) != lexicon.PartBlock {
		k++
	}
	if gear.Part(rd.At(k)) != lexicon.PartBlock || !rd.EndsBreath(k+1) {
		return 0
	}
	words := scan.SplitWords(rd.Text[rd.Elems[i].End:rd.Elems[k].Start])
	hitch := slices.IndexFunc(words, func(w string) bool { return rd.In.Cued(w, lexicon.CueHitchedAt) })
	if hitch < 1 || !slices.ContainsFunc(words[hitch+1:], func(w string) bool { return rd.In.Cued(w, lexicon.CueTowards) }) {
		return 0
	}
	return k
}

// blockDown is the block that the number at i tells to be so far down: "block 3 ft down",
// "el block está a 3 pies abajo"; -1 where it tells of none.
func blockDown(rd *reading.Reading, i int) int {
	if !rd.Cued(rd.At(i+1), lexicon.CueDown) || !rd.EndsBreath(i+2) {
		return -1
	}
	k := i - 1
	for k >= 0 && rd.At(k).Pause == 0 && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkAt) || rd.TermAt(k).Note == "about") && gear.Part(rd.At(k)) == "" {
		k--
	}
	if gear.Part(rd.At(k)) == lexicon.PartBlock || BlockAt(rd, k) {
		return k
	}
	return -1
}

// caughtBelow reads "catch it 2 ft below the cut": what catches is the block.
func caughtBelow(rd *reading.Reading, i int) bool {
	caught := rd.Past(i-1, -1, lexicon.MarkAt)
	for rd.TermAt(caught).Note == "about" {
		caught--
	}
	return rd.TermAt(i+1).BelowCut && rd.TermAt(caught).Intent == parser.AskDrop && rd.At(caught).Pause == 0
}

// behindCut reads "block below the cut, about 60 cm": in a breath of its own, where no
// other length is told that has no word.
func behindCut(rd *reading.Reading, i int) bool {
	k := rd.Past(rd.Back(i-1), -1, lexicon.MarkAt)
	if rd.At(k).Pause > 0 {
		k = rd.Past(k-1, -1, lexicon.MarkPronoun)
	}
	below := rd.Cued(rd.At(k), lexicon.CueBlockUnder) || rd.TermAt(k).BelowCut && (gear.BlockBefore(rd, k) || BlockAt(rd, k-1))
	if !below || !rd.EndsBreath(i+1) {
		return false
	}
	other := func(n int) bool { return n != i && places.LengthAt(rd, n) }
	long := func(n int) bool { return n < k && other(n) && gear.Far(rd, n) }
	return rd.At(k+1).Pause == 0 || gear.Far(rd, i) && rd.AnyAt(long) || !rd.AnyAt(other)
}

// eitherOf asks which of two the number at i is.
func eitherOf(rd *reading.Reading, i int, one, other parser.Field) {
	a := rd.Elems[i].Fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields, a.Metres = []parser.Field{one, other}, rd.Elems[i].Fig.High
	rd.Asks = append(rd.Asks, a)
	rd.Elems[i].Fig.Told = one
}

// mute takes what the words from one element to another would make of a number.
func mute(rd *reading.Reading, from, to int) {
	for i := from; i <= to; i++ {
		if len(rd.TermAt(i).Roles) > 0 {
			rd.Alter(i, func(t *scan.Term) { t.Roles = nil })
		}
	}
}
