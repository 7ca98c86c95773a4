package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Each" asks no more than the rest does where one piece's sizes are told, "what does each
// one weigh", and where a load hangs on two legs, "tension each sling".

// EachAsked takes the doubt from such a word.
func EachAsked(rd *reading.Reading) {
	legs, bare := onLegs(rd), false
	for i := range rd.Elems {
		t := rd.TermAt(i)
		if bare && t.AtOnce {
			rd.Elems[i].Term = &scan.Term{} // "each one and all together"
		}
		if !t.Each {
			continue
		}
		switch end := eachWeighs(rd, i); {
		case end, eachRated(rd, i), bareList(rd, i):
			bare = bare || bareList(rd, i)
			rd.Elems[i].Term = &scan.Term{}
		case legs && eachLeg(rd, i):
			rd.Elems[i].Term = &scan.Term{}
			rd.Elems[i+1].Term = &scan.Term{}
			ofNoBlock(rd, i)
		}
	}
	barePull(rd)
}

// bareList says whether several pairs of sizes are told, none with a unit, so that their units
// are what is asked: "22x8, 20x8 and 17x10, each one and all together".
func bareList(rd *reading.Reading, i int) bool {
	pairs := places.PairsOfSizes(rd)
	if len(pairs) < 2 || rd.At(i-1).Fig != nil || rd.At(i+1).Fig != nil {
		return false
	}
	for _, p := range pairs {
		if rd.Elems[p.Across].Fig.Unit != nil || rd.Elems[p.Along].Fig.Unit != nil {
			return false
		}
	}
	return true
}

// eachWeighs says whether it is asked what each weighs: nothing is told of how many, nor
// of several sizes, and no number stands beside.
func eachWeighs(rd *reading.Reading, i int) bool {
	asks := rd.TermAt(i-1).Intent == parser.AskWeight || rd.Cued(rd.At(i-1), lexicon.CueDoes)
	return asks && rd.TermAt(i+1).Intent == parser.AskWeight && rd.At(i+2).Fig == nil && onePiece(rd)
}

// onePiece says whether no more than one piece's sizes are told: one tree, and of each
// kind one number.
func onePiece(rd *reading.Reading) bool {
	trees, masses, lengths := 0, 0, 0
	for i, e := range rd.Elems {
		switch {
		case rd.TermAt(i).Tree != nil:
			trees++
		case rd.TermAt(i).Intent == parser.AskCutPlan, rd.Cued(e, lexicon.CueCutting) && e.Fig == nil && rd.TermAt(i).Intent != "":
			return false // cut into how many is not told
		case e.Fig != nil && (e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce):
			masses++
		case e.Fig != nil:
			lengths++
		}
	}
	return trees <= 1 && masses == 0 && lengths <= 2
}

// onLegs says whether a load hangs on two legs with an angle told.
func onLegs(rd *reading.Reading) bool {
	angle, bridle, heavy := false, rd.Has(lexicon.MarkBridle|lexicon.MarkTwins), 0
	for i, e := range rd.Elems {
		angle = angle || e.Fig != nil && e.Fig.Dim == parser.DimAngle
		if gear.Heavy(rd, i) {
			heavy++
		}
	}
	return angle && bridle && heavy == 1
}

// eachLeg says whether the word at i is "each" of a leg, at the end of what is asked.
func eachLeg(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	leg := gear.Part(next) == lexicon.PartSling || gear.Part(next) == lexicon.PartRope || rd.Cued(next, lexicon.CueOneLeg) || rd.Cued(next, lexicon.CueLines) || next.Plays(parser.Legs)
	return leg && rd.At(i-1).Fig == nil && (rd.EndsBreath(i+2) || rd.Cued(rd.At(i+2), lexicon.CueCarries) || rd.Cued(rd.At(i+2), lexicon.CueTakesLoad))
}

// ofNoBlock takes from the words right before i that they ask what a block sees: "how
// much in each sling" asks it of a leg.
func ofNoBlock(rd *reading.Reading, i int) {
	for k := i - 1; k >= 0 && rd.Elems[k].Fig == nil && rd.At(k).Pause == 0; k-- {
		if rd.TermAt(k).Intent == parser.AskBlockLoad {
			rd.Alter(k, func(t *scan.Term) { t.Intent = "" })
		}
	}
}

// barePull asks what "200 each" is, behind people: what each of them pulls, or weighs.
func barePull(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.At(i - 1).Fig
		if !rd.TermAt(i).Each || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair || fig.Low < leastPull || !rd.At(i-2).Plays(parser.People) || rd.At(i-3).Fig == nil {
			continue
		}
		a := fig.Ask(parser.NoUnit, rd.Text)
		a.Fields, a.Choices = []parser.Field{parser.PersonPull}, []parser.Choice{{Field: parser.PersonPull}}
		a.End = rd.Elems[i].End
		rd.Asks = append(rd.Asks, a)
		places.Claim(rd, i-1, "")
		fig.Elsewhere = true
		rd.Elems[i].Term = &scan.Term{}
		return
	}
}

// leastPull is the least that is told of a pull, in whatever unit: fewer are no pull.
const leastPull = 10

// eachRated says whether "each" at i stands right behind what gear is rated for, "slings,
// WLL 1000 kg each": what one of them may carry, and no more is counted on.
func eachRated(rd *reading.Reading, i int) bool {
	if i < 1 || rd.At(i-1).Fig == nil || !gear.Rates(rd.Elems[i-1].Fig) {
		return false
	}
	s, at := gear.StrengthBeside(rd, i-2, i+1)
	return s != "" && at >= 0
}
