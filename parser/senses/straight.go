package senses

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A rope that only goes over a block lifts one to one: "straight over the top
// block", "on a single line". That takes the most pull, and loads the block most,
// of all that could be meant.

// StraightLift reads such words as one part of line or two, where a lift is told of
// and the parts are not.
func StraightLift(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskLift) && !liftsNow(rd) && !pulls.Picks(rd) && !pulledBy(rd) && !raisesLoad(rd) || partsTold(rd) || pulledAside(rd) && !straightSaid(rd) {
		return
	}
	several := rd.AnyAt(rd.Is(moreBlocks))
	for i, e := range rd.Elems {
		t, parts := rd.TermAt(i), 1.0
		at, over := overBlock(rd, i)
		over = over && !several && !pulledAside(rd)
		switch {
		case overWood(rd, i+1):
			continue // "direct over a limb": wood rubs more than a block
		case redirectOnly(rd, i):
			at = i + 1 // the redirect stays what it is: it costs its share
		case t.Doubles:
			parts = 2
		case !over && !t.Straight && !several && singleBlock(rd, i):
			at = i
			from, to := i-1, i
			if simpleBehind(rd, i) {
				from, to = i, i+1
			}
			rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[rd.Elems[from].Start:rd.Elems[to].End], As: "1:1"})
		case !over && !t.Straight && !(t.Single && gear.Part(rd.At(i+1)) == lexicon.PartRope):
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
		if k := rd.Past(i-1, -1, lexicon.MarkArticle); over && places.Bare(rd.At(k).Fig, 1) {
			rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{}} // "1 pulley at the top"
		}
		fig := &reading.Figure{Low: parts, High: parts, Dim: parser.DimRatio, Told: parser.Parts, Start: e.Start, End: e.End}
		rd.Elems = slices.Insert(rd.Elems, at, reading.Element{Start: e.Start, End: e.End, Fig: fig})
		return
	}
}

// liftsNow says whether a talk stands at a lift whose parts of line nobody has told, and a
// message asks for nothing else.
func liftsNow(rd *reading.Reading) bool {
	asked, _, _ := Intents(rd)
	return rd.Before.Intent == parser.AskLift && !rd.Before.Has(parser.Parts) && len(asked) == 0
}

// singleBlock reads "single block" and "un solo block" of a lift, where no other block is
// told: it only turns the rope, which takes the most pull. The answer says so.
func singleBlock(rd *reading.Reading, i int) bool {
	one := rd.Cued(rd.At(i-1), lexicon.CueOneSheave) || simpleBehind(rd, i) || rd.Cued(rd.At(i-1), lexicon.CueLone) || places.Bare(rd.At(i-1).Fig, 1) && rd.Cued(rd.At(i-2), lexicon.CueOnly)
	if !one || !blockNamed(rd, i) {
		return false
	}
	behind := rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkIn))
	return !behind.Piece() && !rd.Cued(behind, lexicon.CueLoad) && !rd.AnyAt(func(k int) bool { return k != i && blockNamed(rd, k) })
}

// simpleBehind says whether the block at i is a simple one in the order of Spanish, "una
// polea sencilla", and not a "block, single rope".
func simpleBehind(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i+1), lexicon.CueOneSheave) && gear.Part(rd.At(i+2)) != lexicon.PartRope
}

// straightSaid says whether words say that a rope goes straight, whatever it or the load
// passes over: "limb up over a gutter, single line, no purchase".
func straightSaid(rd *reading.Reading) bool {
	aside := rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.Sideways) })
	return !aside && rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Straight || rd.TermAt(i).Single && gear.Part(rd.At(i+1)) == lexicon.PartRope
	})
}

// overWood says whether a rope is told from i on to run over wood.
func overWood(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.At(i), lexicon.CueOverBlock) && !rd.Cued(rd.At(i), lexicon.CueOver) {
		return false
	}
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	return rd.At(j).Piece() || rd.TermAt(j).Note == parser.NaturalCrotch || rd.TermAt(j).Block == parser.NaturalCrotch
}

// redirectOnly says whether the element at i is the one block that there is, and it leads
// the rope: "just one redirect".
func redirectOnly(rd *reading.Reading, i int) bool {
	if !parser.Redirecting(rd.TermAt(i).Block) && !rd.Elems[i].Plays(parser.Redirects) || rd.AnyAt(func(k int) bool { return k != i && blockNamed(rd, k) }) {
		return false
	}
	one := places.Bare(rd.At(i-1).Fig, 1) || rd.In.Numbers[rd.Word(rd.At(i-1))].Value == 1
	return one && (i < 2 || rd.At(i-2).Pause > 0 || rd.Cued(rd.At(i-2), lexicon.CueOnly) || rd.Cued(rd.At(i-2), lexicon.CueOwns) || rd.At(i-2).Marked(lexicon.MarkWhere) || rd.Cued(rd.At(i-2), lexicon.CueOverBlock))
}

// overBlock reads "over the top block", "through one block" and "just one block up
// top": a block that hangs in the tree and does not move with the load. It returns
// where such words begin, too.
func overBlock(rd *reading.Reading, i int) (at int, over bool) {
	e := rd.Elems[i]
	if !blockNamed(rd, i) {
		return i, false
	}
	j := rd.Past(i-1, -1, lexicon.MarkArticle)
	isOne := func(k int) bool { return places.Bare(rd.At(k).Fig, 1) || rd.In.Numbers[rd.Word(rd.At(k))].Value == 1 }
	one := isOne(j) || isOne(i-1) || j < i-1 && rd.Cued(rd.At(j), lexicon.CueOnly) // "just a block up top"
	if isOne(j) {
		j = rd.Past(j-1, -1, lexicon.MarkArticle)
	}
	next := rd.At(rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkAt))
	aloft := e.Term.Block == parser.TopBlock || next.Term != nil && next.Term.TopEnd || rd.TermAt(i+1).HighEnd
	if rd.Cued(rd.At(j), lexicon.CueOverBlock) {
		return j, true
	}
	return i, one && aloft
}

// blockNamed says whether the element at i is a block that leads the rope nowhere
// else.
func blockNamed(rd *reading.Reading, i int) bool {
	e := rd.At(i) // there may be nothing behind "the load is double at"
	return e.Term != nil && (e.Term.Part == lexicon.PartBlock || e.Term.Block == parser.TopBlock || e.Term.Block == parser.AnyBlock) && !parser.Redirecting(e.Term.Block)
}

// moreBlocks says whether the element at i tells of more than one block, which may
// move with the load.
func moreBlocks(rd *reading.Reading, i int) bool {
	e, fig := rd.Elems[i], rd.At(i-1).Fig
	if !blockNamed(rd, i) {
		return false
	}
	return rd.TermAt(i).Blocks || fig != nil && fig.Dim == parser.DimCount && fig.High > 1 || strings.HasSuffix(rd.Word(e), "s")
}

// raisesLoad says whether "raise" can only lift: what is raised is no limb, and no
// hinge is told of.
func raisesLoad(rd *reading.Reading) bool {
	limb := func(i int) bool { return rd.TermAt(i).Shape == parser.Limb }
	return rd.AnyAt(func(i int) bool { return rd.Elems[i].Marked(lexicon.MarkHoists) }) && !rd.AnyAt(limb) && !heights.TellsOfHinge(rd)
}

// LiftedMass reads "raise 200 kg with the winch" as what is lifted, and not as what
// the winch pulls.
func LiftedMass(rd *reading.Reading) {
	for i := range rd.Elems {
		verb := rd.Back(i - 1)
		lifts := rd.TermAt(verb).Intent == parser.AskLift && !rd.At(verb-1).Plays(parser.WinchPull) || rd.At(verb).Marked(lexicon.MarkHoists)
		if !gear.Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || !lifts || !rd.At(i+1).Marked(lexicon.MarkWhere) {
			continue
		}
		if by := rd.Past(i+2, +1, lexicon.MarkArticle); rd.At(by).Plays(parser.WinchPull) || rd.TermAt(by).Hauls {
			rd.Elems[i].Fig.Sure = parser.Weight
		}
	}
}

// pulledBy says whether the message tells who or what pulls, and asks for
// nothing that is no lift.
func pulledBy(rd *reading.Reading) bool {
	powered := rd.AnyAt(func(i int) bool {
		return rd.At(i).Plays(parser.WinchPull) || rd.At(i).Fig != nil && rd.At(i+1).Plays(parser.People)
	})
	asked, besides, _ := Intents(rd)
	return powered && len(asked) == 0 && (slices.Contains(besides, parser.AskLift) || winchTold(rd)) && !rd.Worded(parser.Wraps)
}

// winchTold says whether it is told what a winch pulls with, and what else weighs.
func winchTold(rd *reading.Reading) bool {
	winch, heavy := false, 0
	for i := range rd.Elems {
		winch = winch || rd.Elems[i].Plays(parser.WinchPull)
		if gear.Heavy(rd, i) {
			heavy++
		}
	}
	return winch && heavy == 2
}

// pulledAside says whether a side is told of: what is pulled there is not lifted.
func pulledAside(rd *reading.Reading) bool {
	leads := func(i int) bool { // to the block that the rope goes over
		return rd.AnyAt(func(k int) bool { at, over := overBlock(rd, k); return over && at == i })
	}
	return rd.AnyAt(func(i int) bool {
		return rd.Cued(rd.Elems[i], lexicon.CueOver) && !leads(i) && !liesOn(rd, i) || rd.Elems[i].Plays(parser.Sideways)
	})
}

// liesOn reads "lift it off the roof": the place is where the load lies, and nothing is pulled
// to its side.
func liesOn(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.Elems[i], lexicon.CueLiftedOff) && rd.At(rd.Past(i+1, +1, lexicon.MarkArticle)).Marked(lexicon.MarkPlace|lexicon.MarkObstacle)
}

// partsTold says whether the parts of line are told, or a block that moves with
// the load, or they are asked for.
func partsTold(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		t, fig := rd.TermAt(i), rd.Elems[i].Fig
		return t.Note == parser.PartsWanted || t.Note == parser.MovingBlock || rd.Elems[i].Plays(parser.Parts) || fig != nil && fig.Dim == parser.DimRatio
	})
}

// Intents lists what the words ask for, and what they ask for where nothing
// else is asked: "with a tag line" is a fact where the question is how many
// wraps.
func Intents(rd *reading.Reading) (asked, besides []parser.Intent, hello bool) {
	for _, e := range rd.Elems {
		switch {
		case e.Term == nil || e.Term.Intent == "" || e.Spent:
		case e.Term.Intent == parser.AskBalance && e.Marked(lexicon.MarkBridle|lexicon.MarkTwins) && (gear.Slung(rd) || heights.LegsOfRope(rd)):
		case e.Term.Besides:
			besides = append(besides, e.Term.Intent)
		default:
			asked = append(asked, e.Term.Intent)
		}
		hello = hello || e.Marked(lexicon.MarkHello)
	}
	return asked, besides, hello
}

// KindAsked is a kind of question where its own words name it, "" elsewhere: "what
// are you able for" names none.
func KindAsked(rd *reading.Reading, in parser.Intent) parser.Intent {
	asked, besides, _ := Intents(rd)
	if in == parser.AskWeight && !slices.Contains(asked, in) && !slices.Contains(besides, in) {
		return ""
	}
	return in
}
