package senses

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/turning"
)

// EachLong takes the doubt from "each" right behind the one length that is told, beside
// one thickness: "22 in walnut, takin 4 foot each". Where it is cut off a longer one,
// that has a length of its own. Of limbs it stays in doubt how many they are; "4 ft each
// side" is no size.
func EachLong(rd *reading.Reading) bool {
	each, thick := -1, 0
	for i, e := range rd.Elems {
		switch t := rd.TermAt(i); {
		case t.Each && each >= 0, t.Intent == parser.AskCutPlan, t.Shape == parser.Limb, gear.Part(rd.Elems[i]) == lexicon.PartSling, e.Plays(parser.Legs), e.Plays(parser.RopeLength), e.Marked(lexicon.MarkTwins | lexicon.MarkBridle):
			return false
		case t.Each:
			each = i
		case e.Fig == nil || gear.Far(rd, i) && rd.TermAt(i+1).Each:
		case places.FineAt(rd, i) || rd.At(i+1).Plays(parser.Diameter):
			thick++
		case e.Fig.Dim == parser.DimLength, gear.Heavy(rd, i), e.Fig.Unit == nil && !turning.CountedBy(rd, i+1):
			return false
		}
	}
	if each < 1 || thick != 1 || !gear.Far(rd, each-1) || turning.TalkBehind(rd, each) {
		return false
	}
	of, next := rd.Past(each-2, -1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle), rd.At(each+1)
	ends := rd.EndsBreath(each+1) || next.Marked(lexicon.MarkRelation|lexicon.MarkIn) || rd.TermAt(each+1).Intent == parser.AskWeight
	if !ends || stops.Kit(rd, of) || rd.At(of).Marked(lexicon.MarkGear) {
		return false
	}
	rd.Alter(each, func(t *scan.Term) {
		*t = scan.Term{Roles: []scan.Role{{Field: parser.Length, Side: lexicon.Before, Soft: false}}}
	})
	return true
}

// SizesAreOf says whether the sizes are those of pieces named in the plural before
// them, and of nothing else, or of each at i: "cada trozo de roble de 50 cm". How thick
// rounds are may stand behind how wide the tree is: "nogal de 1,10 m, rodajas de 30 cm".
func SizesAreOf(rd *reading.Reading, i int) bool {
	many, before := false, false
	for k, e := range rd.Elems {
		if t := rd.TermAt(k); k != i && (t.Unnamed || t.Shape != "") {
			if !sizes.Plural(rd, k) {
				return false
			}
			many = many || (!before || rd.Elems[k].Marked(lexicon.MarkRound)) && bounds.LeadsToSize(rd, k+1)
		}
		before = before || e.Fig != nil
		if k == i && !before && bounds.LeadsToSize(rd, i+1) {
			many = true
		}
	}
	return many
}
