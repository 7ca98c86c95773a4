package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// SlingAngles gives the angles beside the words of how a sling is rigged to
// them: "choked at 100 degrees", "basket at 45°", "two legs at 60° from
// level".
func SlingAngles(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimAngle || rd.At(i+1).Plays(parser.BlockAngle) || rd.At(i+1).Plays(parser.StartAngle) {
			continue
		}
		if opened(rd, i) {
			e.Fig.Sure = parser.BlockAngle
			continue
		}
		if rd.At(ledFrom(rd, i)).Plays(parser.BlockAngle) {
			continue // "the angle between them is 80°" is of no leg by itself
		}
		if f := riggedAt(rd, i); f != "" {
			e.Fig.Sure = f
		}
	}
}

// ledFrom is the element that leads to the number at i, over what only links the two:
// "between them opens up to".
func ledFrom(rd *reading.Reading, i int) int {
	k := rd.Back(i - 1)
	for rd.At(k).Pause == 0 && (rd.At(k).Marked(lexicon.MarkBound|lexicon.MarkMade) || rd.At(k).Polite() || rd.Colon(k)) {
		k = rd.Back(k - 1)
	}
	return k
}

// opened says whether the angle at i is how far legs open, "the legs spread to 90°": a notch
// and a crotch open too.
func opened(rd *reading.Reading, i int) bool {
	legs := func(k int) bool {
		e := rd.Elems[k]
		return e.Marked(lexicon.MarkBridle) || e.Plays(parser.Legs) || e.Plays(parser.BlockAngle)
	}
	led := i - 1
	for rd.TermAt(led).Note == "about" {
		led--
	}
	if !rd.Cued(rd.At(led), lexicon.CueOpens) {
		return false
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if legs(k) {
			return true
		}
	}
	return false
}

// riggedAt is the field of an angle by the nearest words, before it or else
// behind, of how a sling is rigged.
func riggedAt(rd *reading.Reading, i int) parser.Field {
	for j := i - 1; j >= 0 && rd.Elems[j].Pause < 4; j-- {
		if f := Rigged(rd.Elems[j]); f != "" {
			return f
		}
	}
	for j := i + 1; j < len(rd.Elems) && rd.Elems[j].Pause < 4; j++ {
		if f := Rigged(rd.Elems[j]); f != "" {
			return f
		}
	}
	return ""
}

// Rigged is the angle that the words of how a sling is rigged can have.
func Rigged(e reading.Element) parser.Field {
	switch {
	case e.Term == nil:
		return ""
	case e.Term.Note == parser.NoteChoker:
		return parser.ChokeAngle
	case e.Term.Note == parser.NoteBasket, e.Plays(parser.Legs), e.Plays(parser.LegAngle):
		return parser.LegAngle
	}
	return ""
}

// TwoHitches asks how a sling is rigged that is told to be choked and in a basket: "what
// is it choked and what is it in a basket". Both at once would be a third.
func TwoHitches(rd *reading.Reading, q parser.Question) []*parser.Ask {
	if q.Intent != parser.AskGear || !q.Noted(parser.NoteChoker) || !q.Noted(parser.NoteBasket) {
		return nil
	}
	for i := len(rd.Elems) - 1; i >= 0; i-- {
		if note, e := rd.TermAt(i).Note, rd.Elems[i]; note == parser.NoteChoker || note == parser.NoteBasket {
			return []*parser.Ask{reading.AskAt(parser.WhichHitch, rd.Text, e.Start, e.End-e.Start)}
		}
	}
	return nil
}

// SlingNamed says whether the message speaks of a sling, or of two lines to one
// point.
func SlingNamed(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return Part(e) == lexicon.PartSling || e.Term != nil && (e.Term.Note == parser.NoteBasket || e.Term.Note == parser.NoteChoker) || e.Marked(lexicon.MarkBridle) && !e.Plays(parser.Legs)
	})
}

// OnAnchor reads what is told of an anchor: "will the 8 in stub hold 600 lb
// 2 ft out", where a mass is what hangs on it and "out" is how far.
func OnAnchor(rd *reading.Reading) {
	woodOfBlock(rd)
	blockWood(rd)
	bareAnchor(rd)
	standsIn(rd)
	strongAboveUnion(rd)
	slingsAnchor(rd)
	if !AsksFor(rd, parser.AskAnchor) {
		return
	}
	masses := 0
	for _, e := range rd.Elems {
		if e.Fig != nil && (e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce) && e.Fig.Sure == "" {
			masses++
		}
	}
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil || e.Fig.Sure != "":
		case masses == 1 && (e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce) && !rd.At(i-1).Plays(parser.Limit) && !rd.At(i+1).Plays(parser.Limit):
			e.Fig.Sure = parser.Weight
		case slungAt(rd, i), slungUp(rd, i):
			e.Fig.Sure = parser.HitchHeight
		case e.Fig.Dim == parser.DimAngle && rd.At(i+1).Plays(parser.Sideways):
			e.Fig.Sure = parser.StartAngle // "30 degrees off plumb"
		case e.Fig.Far() && fromTrunk(rd, i):
			e.Fig.Sure = parser.Tie
			rd.Elems[i+2].Term = &scan.Term{}
		case e.Fig.Far() && outAt(rd, i+1):
			e.Fig.Sure = parser.Tie
		case e.Fig.Far() && aboveUnion(rd, i):
			leverAt(rd, i)
		}
	}
}

// bareAnchor takes "anchor 9 in red oak limb" for a question about the anchor:
// no hitch is as low as that.
func bareAnchor(rd *reading.Reading) {
	for i, e := range rd.Elems {
		next := rd.At(rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkArticle)).Fig
		if rd.Colon(i + 1) {
			next = rd.At(i + 2).Fig
		}
		bare := e.Term != nil && rd.Cued(e, lexicon.CueAnchor) && next.Short()
		if e.Term == nil || !bare && !anchorIn(rd, i) {
			continue
		}
		t := *e.Term
		t.Intent, t.Besides, t.Roles = parser.AskAnchor, false, nil
		rd.Elems[i].Term = &t
	}
}

// fromTrunk reads "a 2 pies del tronco" of a limb: the trunk is no log there.
func fromTrunk(rd *reading.Reading, i int) bool {
	limb := slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		return e.Term != nil && (e.Term.Shape == parser.Limb || e.Term.Note == parser.NoteAnchorLimb)
	})
	from := rd.At(rd.Past(i+2, +1, lexicon.MarkArticle))
	return limb && rd.At(i-1).Fig == nil && rd.At(i+1).Marked(lexicon.MarkRelation) && (rd.At(i+2).Marked(lexicon.MarkStanding) || rd.Cued(from, lexicon.CueHinge))
}

// outAt says whether the words at i are "out" along the limb, and no more:
// "2 ft out of plumb" is something else.
func outAt(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return rd.Cued(e, lexicon.CueAlong)
}

// AsksFor says whether any words ask for it, unless they give way.
func AsksFor(rd *reading.Reading, in parser.Intent) bool {
	return slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		return e.Term != nil && e.Term.Intent == in && !e.Term.Besides
	})
}

// Slung says whether the strength of a sling is told: then its legs and their
// angle say how it is rigged, not how a piece hangs on two lines.
func Slung(rd *reading.Reading) bool {
	sling, told := false, false
	for _, e := range rd.Elems {
		sling = sling || Part(e) == lexicon.PartSling
		told = told || e.Term != nil && e.Term.Strength != ""
	}
	return sling && told
}
