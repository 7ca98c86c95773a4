package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where the block is, as seen from the cut or from the tie, is how far a piece falls.

// BelowCut finds how far a block is below the cut: "block 40 cm below the cut".
func BelowCut(rd *reading.Reading) {
	belowBare(rd)
	climberAtCut(rd)
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.TermAt(i).BelowCut || !gear.BlockBefore(rd, i+1) && !BlockAt(rd, i-2) && !belowAlone(rd, i) {
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskDrop, false })
		at := rd.Past(rd.Forth(i+1), +1, lexicon.MarkAt)
		apart := saidApart(rd, i)
		switch {
		case places.LengthAt(rd, i-1):
			rd.Elems[i-1].Fig.Told = parser.BlockBelow
		case bareBelow(rd.At(i - 1).Fig):
			rd.Elems[i-1].Fig.Sure = parser.BlockBelow // "strapped about 400 below the cut": only its unit is asked
		case places.LengthAt(rd, at) && at > i+1 && (rd.EndsBreath(at+1) || rd.Cued(rd.At(at+1), lexicon.CueDown) && goesElsewhere(rd, at+2)):
			rd.Elems[at].Fig.Told = parser.BlockBelow // "under the cut like 2 ft down"
		case apart > 0:
			rd.Elems[apart].Fig.Told = parser.BlockBelow
		case rd.TermAt(i).Note == "":
			rd.Alter(i, func(t *scan.Term) { t.Note = parser.BlockUnder }) // "right under the cut"
		}
	}
	saidNegative(rd)
}

// saidApart is the number that says behind a comma how far below the cut of the words at i
// it is, "right under the cut, like 2 ft", "abajo del corte, unos 50 cm abajo"; 0 for none.
func saidApart(rd *reading.Reading, i int) int {
	if rd.At(i+1).Pause != 2 {
		return 0
	}
	at := rd.Forth(i + 2)
	for rd.At(at).Polite() && rd.At(at).Fig == nil {
		at++
	}
	if !places.LengthAt(rd, at) {
		return 0
	}
	down := rd.Cued(rd.At(at+1), lexicon.CueDown)
	switch {
	case down && goesElsewhere(rd, at+2), at > i+2 && rd.EndsBreath(at+1):
		return at
	}
	return 0
}

// bareBelow says whether a number can be how far a block is below the cut, in a unit that is
// not told.
func bareBelow(f *reading.Figure) bool {
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Sure == "" && f.Low > 0
}

// goesElsewhere says whether a breath ends at i, or goes on about something else: "and
// theres 40 ft of rope".
func goesElsewhere(rd *reading.Reading, i int) bool {
	return rd.EndsBreath(i) || rd.At(i).Marked(lexicon.MarkAnd) && rd.At(i+1).Fig == nil
}

// saidNegative reads "negative, block 50 cm under the cut": by itself in its breath it says
// what the place of the block does.
func saidNegative(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return below(rd.Elems[i].Fig) }) {
		return
	}
	for i, e := range rd.Elems {
		alone := (i == 0 || rd.At(i-1).Pause > 0) && rd.EndsBreath(i+1)
		if alone && e.Term != nil && e.Term.Intent == "" && rd.In.Cued(rd.Word(e), lexicon.CueNegative) {
			rd.Elems[i].Term = &scan.Term{Intent: parser.AskDrop}
		}
	}
}

// belowAlone reads "400 lb walnut, 2 ft below the cut" where a block is spoken of before, and
// nobody whose place it could be: in a breath of its own it is how far the block is.
func belowAlone(rd *reading.Reading, i int) bool {
	from := i - 2
	for rd.TermAt(from).Note == "about" {
		from--
	}
	end := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkAt|lexicon.MarkArticle)
	if gear.Part(rd.At(end)) == lexicon.PartBlock {
		return gear.Far(rd, i-1) && rd.At(from).Pause > 0 && end > i+1 // "a metre below the cut to the block"
	}
	alone := gear.Far(rd, i-1) && rd.At(from).Pause > 0 && rd.EndsBreath(i+1)
	block := func(k int) bool {
		return k < i && (gear.Part(rd.Elems[k]) == lexicon.PartBlock || rd.TermAt(k).Block != "")
	}
	other := func(k int) bool {
		e, t := rd.Elems[k], rd.TermAt(k)
		return k != i && (e.Marked(lexicon.MarkPerson) || t.Someone || t.Tied || t.Anchors || t.BelowCut)
	}
	return alone && rd.AnyAt(block) && !rd.AnyAt(other)
}

// belowBare reads "negative rig, block a foot under": below what needs no saying
// where something falls onto its rope, or is tied so far above the cut.
func belowBare(rd *reading.Reading) {
	above := func(i int) bool {
		peak := rd.TermAt(i).Intent == parser.AskDrop && rd.Cued(rd.Elems[i], lexicon.CuePeak) // that a block sees
		caught := rd.TermAt(i).Note == parser.LetRun || rd.TermAt(i).Note == parser.Snubbed
		return rd.Elems[i].Fig != nil && tiedAbove(rd, i) || peak || caught
	}
	if !gear.AsksFor(rd, parser.AskDrop) && !rd.AnyAt(above) {
		return
	}
	for i := range rd.Elems {
		end := i + 1
		if rd.At(end).Marked(lexicon.MarkPronoun) {
			end++ // "2 ft under it"
		}
		if rd.Cued(rd.Elems[i], lexicon.CueBelow) && places.LengthAt(rd, i-1) && gear.BlockBefore(rd, i-1) && rd.EndsBreath(end) && !rd.TermAt(rd.Back(i-2)).Hung {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{BelowCut: true} })
		}
	}
}

// tiedAbove says whether the number at i tells how far above the cut the piece is tied.
func tiedAbove(rd *reading.Reading, i int) bool {
	return places.LengthAt(rd, i) && rd.Elems[i].Fig.Told == "" && rd.At(i+1).LooksBack(parser.BlockHeight) && hitchBefore(rd, i)
}

// climberAtCut reads "i'm at 48 ft, block right under the cut": who cuts is as high
// as the block, where no other height is told.
func climberAtCut(rd *reading.Reading) {
	under := func(i int) bool { return rd.TermAt(i).BelowCut && (gear.BlockBefore(rd, i+1) || BlockAt(rd, i-2)) }
	if !rd.AnyAt(under) || rd.AnyAt(rd.Is(Hitched)) {
		return
	}
	for i := range rd.Elems {
		if at := rd.At(i - 1); places.LengthAt(rd, i) && gear.Far(rd, i) && at.Marked(lexicon.MarkPerson) && at.Marked(lexicon.MarkPlace) {
			rd.Elems[i].Fig.Told = parser.HitchHeight
		}
	}
}

// below says whether the number is how far a block is below the cut.
func below(f *reading.Figure) bool { return f != nil && f.Told == parser.BlockBelow }

// BlockAt says whether the words at i lead from a block to a height: "polea a".
func BlockAt(rd *reading.Reading, i int) bool { return rd.At(i).LeadsTo(parser.HitchHeight) }

// AboveBlock finds how far a hitch is above the cut, where a block is below it, or above
// the block that the piece falls past: "hitch 1 ft above the cut and block 1 ft under
// the cut", "tied off 3 ft above the block and he snubs it".
func AboveBlock(rd *reading.Reading) {
	belowBare(rd)
	cutAboveBlock(rd)
	defer notTheBlock(rd)
	if !gear.AsksFor(rd, parser.AskDrop) && !rd.AnyAt(func(i int) bool { return rd.TermAt(i).BelowCut }) {
		return
	}
	for i := range rd.Elems {
		if !places.LengthAt(rd, i) || rd.Elems[i].Fig.Told != "" || !hitchBefore(rd, i) {
			continue
		}
		block := rd.Past(i+2, +1, lexicon.MarkArticle)
		switch next := rd.At(i + 1); {
		case next.LooksBack(parser.BlockHeight):
			rd.Elems[i].Fig.Told = parser.HitchAbove
			rd.Alter(i+1, func(t *scan.Term) { t.Roles = nil })
		case (rd.Cued(next, lexicon.CueHigher) || rd.Cued(next, lexicon.CueAbove)) && rd.EndsBreath(i+2):
			rd.Elems[i].Fig.Told = parser.HitchAbove // "block under the cut, tied a metre above"
			rd.Elems[i+1].Term = &scan.Term{}
		case (rd.Cued(next, lexicon.CueHigher) || rd.Cued(next, lexicon.CueOver)) && gear.Part(rd.At(block)) == lexicon.PartBlock:
			rd.Elems[i].Fig.Told = parser.HitchToBlock
			rd.Elems[i+1].Term, rd.Elems[block].Term = &scan.Term{}, &scan.Term{}
		}
	}
}

// notTheBlock keeps what is told above the cut from being where the block is, where a knot
// is so far above it, or where the block is told to be below it: "block 18 in below the cut,
// 8 in above the cut". Then it is asked about.
func notTheBlock(rd *reading.Reading) {
	below := rd.AnyAt(func(i int) bool { return rd.TermAt(i).BelowCut && (gear.BlockBefore(rd, i+1) || BlockAt(rd, i-2)) })
	for i := range rd.Elems {
		if !places.LengthAt(rd, i) || rd.Elems[i].Fig.Told != "" || !rd.At(i+1).LooksBack(parser.BlockHeight) {
			continue
		}
		if knot, block := aboveIs(rd, i); !block && (knot || below) {
			rd.Elems[i].Fig.Elsewhere = true
			rd.Alter(i+1, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

// aboveIs says whether a knot or a block stands before the number at i, in its clause.
func aboveIs(rd *reading.Reading, i int) (knot, block bool) {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && !rd.Elems[k].Marked(lexicon.MarkAnd); k-- {
		knot = knot || rd.Cued(rd.Elems[k], lexicon.CueKnot)
		block = block || gear.BlockNoun(rd, k)
	}
	return knot, block
}

// cutAboveBlock reads "dropping a log from 3 ft above the block" and "the piece is 3 ft above
// the block" as how far the block is below the cut: of all that it may be it falls furthest
// so.
func cutAboveBlock(rd *reading.Reading) {
	lets := func(i int) bool {
		return rd.TermAt(i).Intent == parser.AskDrop || rd.Elems[i].LeadsTo(parser.DropHeight) || rd.Cued(rd.Elems[i], lexicon.CueLetsFall)
	}
	if !rd.AnyAt(lets) {
		return
	}
	for i := range rd.Elems {
		if intoBlockFrom(rd, i) {
			rd.Elems[i].Fig.Told = parser.BlockBelow
			mute(rd, i-1, i+1)
			continue
		}
		next, block := rd.At(i+1), rd.Past(i+2, +1, lexicon.MarkArticle)
		over := rd.Cued(next, lexicon.CueHigher) || rd.Cued(next, lexicon.CueOver) || rd.Cued(next, lexicon.CueAbove)
		if !places.LengthAt(rd, i) || rd.Elems[i].Fig.Told != "" || rd.Elems[i].Fig.High > farthestBelow || !over || gear.Part(rd.At(block)) != lexicon.PartBlock || !fallsFrom(rd, i) {
			continue
		}
		rd.Elems[i].Fig.Told = parser.BlockBelow
		rd.Elems[i+1].Term, rd.Elems[block].Term = &scan.Term{Intent: parser.AskDrop}, &scan.Term{}
	}
}

// intoBlockFrom says whether the number at i is how high a piece is that drops into its
// block: "it drops into the block from about 5 ft up".
func intoBlockFrom(rd *reading.Reading, i int) bool {
	if !places.LengthAt(rd, i) || rd.Elems[i].Fig.Told != "" || rd.Elems[i].Fig.High > farthestBelow {
		return false
	}
	up := rd.Cued(rd.At(i+1), lexicon.CueUpInAir) && rd.EndsBreath(i+2)
	k := i - 1
	for rd.TermAt(k).Note == "about" || rd.At(k).Marked(lexicon.MarkArticle) {
		k--
	}
	from := rd.Cued(rd.At(k), lexicon.CueFrom) || fallsFrom(rd, k+1)
	into := gear.Part(rd.At(k-1)) == lexicon.PartBlock || rd.TermAt(k-1).Intent == parser.AskDrop
	return up && from && into
}

// fallsFrom says whether the words before the number at i lead to it from a piece or a cut,
// and from nothing that is tied: "from", "the log is".
func fallsFrom(rd *reading.Reading, i int) bool {
	from := func(k int) bool {
		return rd.TermAt(k).Leads && rd.At(k).Plays(parser.HitchHeight) && gear.Part(rd.At(k)) == "" || rd.Cued(rd.At(k), lexicon.CueCutting)
	}
	k := i - 1
	for k >= 0 && !from(k) && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkAt) || rd.TermAt(k).Note == "about") {
		k--
	}
	for n := k; n >= 0 && rd.Elems[n].Pause == 0; n-- {
		if rd.TermAt(n).Tied || rd.TermAt(n).Anchors {
			return false
		}
	}
	return from(k) || rd.At(k).Piece() || rd.TermAt(k).Unnamed
}

// hitchBefore says whether what stands before the number at i, in its clause, ties the
// piece, and hangs no block.
func hitchBefore(rd *reading.Reading, i int) bool {
	knotted := false
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && !rd.Elems[k].Marked(lexicon.MarkAnd); k-- {
		switch e := rd.Elems[k]; {
		case ties(rd, k):
			knotted = true // "and my knot is 8 in above the cut"; "block on a sling 8 in above it" is the block's
		case gear.Part(e) != "":
			return false
		case rd.TermAt(k).Tied, rd.TermAt(k).Anchors, e.Plays(parser.HitchHeight):
			return true
		}
	}
	return knotted
}

// ties says whether the element at i is what ties a piece: a knot, a sling, a line.
func ties(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	named := rd.Cued(e, lexicon.CueTiePoint) || rd.Cued(e, lexicon.CueKnot) || rd.Cued(e, lexicon.CueSling) || e.Marked(lexicon.MarkCord)
	return named && gear.Part(e) != lexicon.PartBlock
}
