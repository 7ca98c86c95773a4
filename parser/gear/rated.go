package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Rated", "max" and "good for" tell of a drum, a block, a sling or a shackle what
// may be put on it: its working load, and the answer says that it was read so. A
// rope is rated by either figure, and so is what is told in kilonewtons or bears
// more than gear of its kind is marked with: that is asked about.

// mostMarked is the largest working load that gear of a kind is commonly marked
// with, in kilograms. Past it "rated" may be what it breaks at.
var mostMarked = map[scan.Part]float64{lexicon.PartDrum: 3000, lexicon.PartBlock: 4000, lexicon.PartSling: 3000, lexicon.PartConnector: 12000}

// RatedAs is the part of which the number at i is told by a word like "rated", and
// where that word stands.
func RatedAs(rd *reading.Reading, i int) (scan.Part, int) {
	fig, at := rd.Elems[i].Fig, i-1
	for rd.At(at).Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAt|lexicon.MarkBound) && !rd.TermAt(at).Rated {
		at--
	}
	if k := stampedOn(rd, i); k >= 0 {
		return lexicon.PartConnector, k
	}
	if !rd.TermAt(at).Rated {
		if at = i + 1; !rd.TermAt(at).Rated || rd.At(i+2).Fig != nil {
			return "", -1
		}
	}
	k := min(at, i) - 1
	for between(rd, k) {
		k--
	}
	p := Part(rd.At(k))
	if it := rd.At(rd.Past(min(at, i)-1, -1, lexicon.MarkIs|lexicon.MarkRating)); p == "" && (it.Marked(lexicon.MarkPronoun) || rd.Cued(it, lexicon.CueItIs)) {
		p = PartMeant(rd) // "the drum … if it says max", "the sling … its rated"
	}
	placed := rd.TermAt(at).Marks&lexicon.MarkBound != 0 && Far(rd, rd.Past(max(at, i)+2, +1, lexicon.MarkAt)) // "900 lb max block at 35 ft"
	if p == "" && Part(rd.At(max(at, i)+1)) != "" && !rd.At(max(at, i)+2).Piece() && !placed {
		p = Part(rd.At(max(at, i) + 1)) // "a 2 tonne rated block"
	}
	most := mostMarked[p]
	heavy := fig.High
	if fig.Dim == parser.DimCount {
		heavy *= scan.Pound.Factor
	}
	if most == 0 || fig.Dim == parser.DimForce || heavy > most || rd.At(i+1).Piece() || rd.TermAt(i+1).Unnamed || carabiner(rd) {
		return "", -1
	}
	onIt := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkIn)
	if rd.TermAt(at).Marks&lexicon.MarkBound != 0 && (onIt || rd.Worded(parser.Wraps)) {
		return "", -1 // "3 wraps on the drum, 900 lb max" may tell the most that is lowered
	}
	asking := rd.Cued(rd.At(rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun)), lexicon.CueAsking)
	if (asking || rd.TermAt(at).Bears) && !rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig != nil && Rates(rd.Elems[k].Fig) }) {
		return "", -1 // "is the sling good for 900 lb" asks of a load
	}
	return p, at
}

// between says whether the element at i may stand between gear and its rating: "the
// block on it says max".
func between(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig == nil && e.Pause == 0 && Part(e) == "" && (e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkRating|lexicon.MarkAt|lexicon.MarkMade|lexicon.MarkWhere|lexicon.MarkPronoun|lexicon.MarkAdjective) || e.Polite() || rd.TermAt(i).Label || rd.TermAt(i).Rated || rd.TermAt(i).Note == "about")
}

// carabiner says whether one is named: what stands on it is what it breaks at.
func carabiner(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == "carabiner" })
}

// Rate makes the number at i the working load of a part, and keeps the word for it
// for the answer to say how it was read.
func Rate(rd *reading.Reading, i int, p scan.Part, at int) {
	e := rd.Elems[at]
	rd.Elems[i].Fig.Sure = Field(p, lexicon.Working)
	rd.Alter(at, func(t *scan.Term) { *t = scan.Term{Marks: t.Marks &^ lexicon.MarkBound} })
	rd.Elems[at].Spent = true
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[e.Start:e.End], As: "WLL"})
}

// HeldUpTo is the gear that "up to" tells the number at i of: "la polea aguanta hasta
// 400 kg", "hasta 400 kg aguanta la polea". Which of the two figures it is stays asked.
func HeldUpTo(rd *reading.Reading, i int) scan.Part {
	bears := func(k int) bool {
		return rd.At(k).Fig == nil && (rd.At(k).Marked(lexicon.MarkRating|lexicon.MarkIs|lexicon.MarkArticle) || rd.TermAt(k).Bears || rd.TermAt(k).Intent == parser.AskGear || rd.TermAt(k).Intent == parser.AskLower)
	}
	if !rd.At(i - 1).Marked(lexicon.MarkBound) {
		return ""
	}
	k, j := i-2, i+1
	for bears(k) && Part(rd.At(k)) == "" {
		k--
	}
	for bears(j) && Part(rd.At(j)) == "" {
		j++
	}
	p := Part(rd.At(k))
	if p == "" && (j > i+1 || rd.TermAt(j).Intent == parser.AskGear) {
		p = Part(rd.At(j))
	}
	if p == lexicon.PartRope && AsksFor(rd, parser.AskRope) {
		return ""
	}
	return p
}

// stampedOn finds the word that a shackle's marking is told by before the number at i,
// "the shackle says 3.25 t", -1 for none: what is stamped on one is its working load.
// What a carabiner, or anything in kilonewtons, is marked with is not.
func stampedOn(rd *reading.Reading, i int) int {
	fig, k := rd.Elems[i].Fig, i-1
	if fig.Unit == nil || fig.Dim != parser.DimMass || fig.High > mostMarked[lexicon.PartConnector] || carabiner(rd) || Strength(rd.At(i+1)) != "" {
		return -1
	}
	told := func(k int) bool {
		return rd.At(k).Pause == 0 && (rd.TermAt(k).Label || rd.Cued(rd.At(k), lexicon.CueStamped))
	}
	for told(k) || rd.At(k).Pause == 0 && rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkIn) || itsSize(rd, k, i) {
		k--
	}
	if Part(rd.At(k)) != lexicon.PartConnector || k == i-1 || !told(k+1) && !told(i-1) {
		return -1
	}
	if told(i - 1) {
		return i - 1
	}
	return k + 1
}

// itsSize says whether the element at k is how thick gear is, or leads to that, between its
// name and what the number at i is told by: "shackle is 5/8 and says 3.25 t".
func itsSize(rd *reading.Reading, k, i int) bool {
	e := rd.At(k)
	small := e.Fig.Short() || e.Fig != nil && e.Fig.Dim == parser.DimCount && e.Fig.High < 1
	return k < i-1 && k > 0 && (small || e.Marked(lexicon.MarkMade|lexicon.MarkAnd) || e.Pause == 2)
}

// RatedBesideWorking takes what gear is "rated" at, or says, for what it breaks at where its
// working load is told right behind, and is less: "block is rated 30 kN WLL 10 kN". The answer
// says so.
func RatedBesideWorking(rd *reading.Reading, i int) scan.Part {
	fig, j := rd.Elems[i].Fig, i+1
	for rd.At(j).Pause == 2 || rd.At(j).Marked(lexicon.MarkAnd) {
		j++
	}
	next := rd.At(j + 1).Fig
	if !rd.TermAt(i-1).Rated && !rd.Cued(rd.At(i-1), lexicon.CueStamped) || Strength(rd.At(j)) != lexicon.Working || next == nil || next.Dim != fig.Dim || next.Unit == nil || fig.Unit == nil || next.High >= fig.Low {
		return ""
	}
	k := i - 2
	for between(rd, k) {
		k--
	}
	p := Part(rd.At(k))
	if p == "" {
		return ""
	}
	e := rd.Elems[i-1]
	fig.Sure = Field(p, lexicon.Breaking)
	rd.Alter(i-1, func(t *scan.Term) { *t = scan.Term{Marks: t.Marks &^ lexicon.MarkBound} }) // what it "says" is no estimate
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[e.Start:e.End], As: "MBS"})
	return p
}

// MarkedBreak takes the kilonewtons that a carabiner is told by, "a 22 kN carabiner", for
// what it breaks at, which is what stands on its spine. The answer says so. Read as a
// working load the number would let several times as much be put on it.
func MarkedBreak(rd *reading.Reading, i int) bool {
	const least = 15e3 // less is a load, and marks no carabiner; common practice, no source
	fig := rd.Elems[i].Fig
	before := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkRating|lexicon.MarkArticle)
	for rd.Cued(rd.At(before), lexicon.CueStamped) || rd.TermAt(before).Label {
		before = rd.Past(before-1, -1, lexicon.MarkIs|lexicon.MarkRating|lexicon.MarkArticle)
	}
	named := func(k int) bool { return rd.TermAt(k).Note == "carabiner" && rd.At(k).Pause == 0 }
	loaded := rd.AnyAt(func(k int) bool { return k != i && Heavy(rd, k) }) // alone it is asked about
	if fig.Dim != parser.DimForce || fig.Unit == nil || fig.Low < least || !loaded || !named(i+1) && !named(before) || rd.TermAt(i-1).Rated {
		return false
	}
	fig.Sure = Field(lexicon.PartConnector, lexicon.Breaking)
	if at := i + 1; !AsksFor(rd, parser.AskLower) && !AsksFor(rd, parser.AskBlockLoad) && (named(at) || named(before)) {
		if !named(at) {
			at = before
		}
		rd.Alter(at, func(t *scan.Term) { t.Intent, t.Besides = parser.AskGear, false })
	}
	words := fig.Words(rd.Text)
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: words, As: words + " MBS"})
	return true
}
