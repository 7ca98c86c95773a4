package pulls

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The pull in a rope is told as what the line has in it. Where a block or a
// redirect turns that rope it is the load that is asked about, never the
// strength of the rope.

// Tensions finds the masses and forces that are in the line.
func Tensions(rd *reading.Reading) {
	heavyHands(rd)
	if !RopeTurned(rd) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Plays(parser.WinchPull) && !ledTo(rd, i) }) {
		return
	}
	for i, e := range rd.Elems {
		if e.Fig == nil || !gear.Rates(e.Fig) || e.Fig.Told != "" || e.Fig.Sure != "" {
			continue
		}
		if s, _ := gear.StrengthBeside(rd, i-1, i+1); s == "" && (InLine(rd, i) || onlyPull(rd, i)) {
			e.Fig.Sure, e.Fig.InLine = parser.Weight, true
		}
	}
}

// ledTo says whether the winch at i is only where the rope goes, "off to the winch, with
// 600 lb on the line": what is in the line is then no rating of it.
func ledTo(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(rd.Past(i-1, -1, lexicon.MarkArticle)), lexicon.CueTowards) && rd.At(i+1).Pause > 0
}

// onlyPull reads "force on the redirect, 90°, line 250 kg": what a rope is told by where
// its turn is told, no strength is spoken of and nothing else is a load. A strength has
// no part in what is asked.
func onlyPull(rd *reading.Reading, i int) bool {
	if !gear.Heavy(rd, i) || gear.Part(rd.At(i-1)) != lexicon.PartRope && gear.Part(rd.At(i+1)) != lexicon.PartRope {
		return false
	}
	other := func(k int) bool {
		t := rd.TermAt(k)
		return k != i && gear.Heavy(rd, k) || gear.Strength(rd.Elems[k]) != "" || t.Rated || t.Bears || t.Intent == parser.AskGear && !t.Besides || rd.Elems[k].Piece()
	}
	turned := func(k int) bool {
		f := rd.Elems[k].Fig
		return f != nil && (f.Told == parser.Turn || f.Told == parser.BlockAngle || f.Sure == parser.Turn)
	}
	asked := func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueForce) }
	return (rd.AnyAt(asked) || gear.AsksFor(rd, parser.AskBlockLoad)) && rd.AnyAt(turned) && !rd.AnyAt(other)
}

// heavyHands reads "600 on the line" and "300 on the drum": so many are no people, but
// a load whose unit is asked for. "600 guys" stays what it says.
func heavyHands(rd *reading.Reading) {
	for i, e := range rd.Elems {
		next := rd.At(i + 1)
		if e.Fig == nil || e.Fig.Dim != parser.DimCount || !gear.Rates(e.Fig) || e.Fig.Told != "" || !next.Plays(parser.People) {
			continue
		}
		if gear.Part(next) == lexicon.PartRope || next.Marked(lexicon.MarkStation|lexicon.MarkGear) {
			e.Fig.Sure = parser.Weight
			rd.Alter(i+1, func(t *scan.Term) {
				t.Roles = slices.DeleteFunc(slices.Clone(t.Roles), func(r scan.Role) bool { return r.Field == parser.People })
			})
		}
	}
}

// RopeTurned says whether the message tells of a block that the rope goes
// over, or of how far it turns there.
func RopeTurned(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return e.Marked(lexicon.MarkDeflects) || e.Term != nil && e.Term.Block != "" || e.Fig != nil && (e.Fig.Told == parser.Turn || e.Fig.Told == parser.BlockAngle)
	})
}

// InLine reads "tension 5 kN", "900 lb of tension", "the line has 400 lb in it"
// and "1200 is in the line". "The line has 400 lb" alone could be its strength.
func InLine(rd *reading.Reading, i int) bool {
	before := rd.Back(i - 1)
	if rd.TermAt(before).Tension {
		return true
	}
	behind := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkArticle)
	next := rd.At(behind)
	switch {
	case rd.TermAt(behind).Tension:
		return rd.TermAt(behind+1).Note == "" && !rd.TermAt(behind+1).Each && !rd.At(behind+1).Plays(parser.PersonPull)
	case gear.Heavy(rd, i) && next.Plays(parser.People) && namesRope(rd, next):
		return true // so many are no people
	case next.Marked(lexicon.MarkIn) && gear.Part(next) == lexicon.PartRope: // "on the line"
		return true
	case !next.Marked(lexicon.MarkIn):
		return false
	}
	held := rd.At(rd.Past(behind+1, +1, lexicon.MarkArticle))
	return gear.Part(held) == lexicon.PartRope || held.Marked(lexicon.MarkPronoun) && gear.Part(rd.At(before)) == lexicon.PartRope
}

// namesRope says whether a rope is named in words that count people too: "on the line",
// "en la cuerda".
func namesRope(rd *reading.Reading, e reading.Element) bool {
	rope := func(word string) bool { return rd.In.Cued(word, lexicon.CueRopeName) }
	return gear.Part(e) == lexicon.PartRope || slices.ContainsFunc(scan.SplitWords(rd.Text[e.Start:e.End]), rope)
}

// PullsAtRedirect says whether "pull" is what a rope has in it at a redirect, and
// nothing tells of a lift: the load there is asked about.
func PullsAtRedirect(rd *reading.Reading, q parser.Question) bool {
	inRope := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && InLine(rd, i) })
	return inRope && slices.ContainsFunc(q.Notes, parser.Redirecting) && q.Has(parser.Weight) && q.Species == nil && !q.Has(parser.Across...) && !q.Has(parser.Parts, parser.People, parser.WinchPull, parser.Length)
}
