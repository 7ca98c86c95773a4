package senses

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/turning"
)

// SettleMarked settles a number, and a word that its mark tells apart; false where the
// word at i is neither.
func SettleMarked(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	switch {
	case e.Fig != nil:
		oneMore(rd, i)
	case turning.Adds(rd, i) && turning.PeopleSum(rd, i), turning.MassSum(rd, i):
	case e.Marked(lexicon.MarkAttribute):
		attribute(rd, i)
	case e.Marked(lexicon.MarkUpends):
		upends(rd, i)
	case e.Marked(lexicon.MarkContrast):
		contrast(rd, i)
	case e.Marked(lexicon.MarkSelf):
		withSelf(rd, i)
	case t.AndSelf:
		andOthers(rd, i)
	case t.Another:
		turning.Another(rd, i)
	case t.OneEnd && t.Ask == parser.Unknown:
		turning.OtherTreeNear(rd, i)
	default:
		return false
	}
	return true
}

// SettleInDoubt settles a word that could turn the meaning, or that tells of who speaks
// or of a jam; false where the word at i is none of them.
func SettleInDoubt(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	switch {
	case turning.Unwanted(rd, i), turning.WholeAtOnce(rd, i):
	case t.Ask == parser.Twist && (rd.Cued(e, lexicon.CueTwoTurns) || rd.Cued(e, lexicon.CueThreeTurns)):
		turning.Folds(rd, i)
	case t.Ask == parser.Twist && rd.Cued(e, lexicon.CueCouple):
		turning.PairOf(rd, i)
	case t.SelfToo:
		turning.SelfToo(rd, i)
	case t.Ask == parser.Twist && rd.Cued(e, lexicon.CueEvery):
		turning.Every(rd, i)
	case t.Ask == parser.Twist && rd.Half(i):
		turning.Somewhat(rd, i)
	case t.Jams && stops.WrapsTold(rd):
		turning.LeaveOut(rd, i, i+1)
		rd.Elems[i].Term.Note = parser.TooMany
	default:
		return false
	}
	return true
}

// SettleNamed settles a word that names somebody, a part of a tree or a time, or that is
// talk.
func SettleNamed(rd *reading.Reading, i int) {
	e, t := rd.Elems[i], rd.TermAt(i)
	switch {
	case t.Order != "":
		order(rd, i)
	case t.TopEnd:
		thinEnd(rd, i)
	case t.Someone, t.Human:
		turning.Underneath(rd, i)
	case t.Note == parser.PeopleBelow:
		turning.CrewBelow(rd, i)
	case t.WoodRing && rd.TermAt(i-1).Tree != nil:
		ringOfWood(rd, i)
	case t.Overlook:
		overlook(rd, i)
	case t.Purpose:
		turning.Purpose(rd, i)
	case t.Corrects:
		turning.Corrected(rd, i)
	case t.Ask == parser.Twist && (rd.Cued(e, lexicon.CueMore) || rd.Cued(e, lexicon.CueFewer)):
		turning.More(rd, i)
	case e.Marked(lexicon.MarkTreetop):
		treetop(rd, i)
	case e.Marked(lexicon.MarkPasses):
		gear.Passes(rd, i)
	case t.Note == parser.NewTree:
		nextTree(rd, i)
	}
}

// Whole reads a word that is the whole message but for a please: "log" alone is
// the day's.
func Whole(rd *reading.Reading) {
	at := -1
	for i, e := range rd.Elems {
		if e.Pause > 0 || e.Polite() {
			continue
		}
		if at >= 0 || rd.TermAt(i).Whole == "" {
			return
		}
		at = i
	}
	if at >= 0 && len(rd.Asks) == 0 && len(rd.Passed) == 0 {
		rd.Alter(at, func(t *scan.Term) { *t = scan.Term{Intent: t.Whole} })
	}
}

// attribute reads "the lower limb" as the name of a limb. What is to be
// lowered stands behind the word with its own article, "lower the limb".
func attribute(rd *reading.Reading, i int) {
	j := i + 1
	for rd.At(j).Piece() && rd.At(j).Term.Shape == "" {
		j++
	}
	if rd.At(i-1).Marked(lexicon.MarkArticle) && rd.TermAt(j).Shape != "" {
		rd.Alter(i, func(t *scan.Term) { t.Roles, t.Intent = nil, "" })
	}
}

// treetop reads "punta de abeto" as a top, and "cuánto pesa la punta" where no other
// piece is told: behind a number, or without either, the word is the thin end.
func treetop(rd *reading.Reading, i int) {
	if topAsked(rd, i) {
		rd.Alter(i, func(t *scan.Term) { t.Roles, t.Shape = nil, parser.Limb })
		return
	}
	j := rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkArticle)
	if j == i+1 || rd.TermAt(j).Tree == nil || rd.At(i-1).Fig != nil || rd.At(i-1).Marked(lexicon.MarkMade|lexicon.MarkAt) {
		return
	}
	rd.Alter(i, func(t *scan.Term) { t.Roles, t.Shape = nil, parser.Limb })
}

// topAsked says whether the word at i is what is to be weighed or lowered: right behind
// what asks so, in a message that tells of no other piece and of no butt.
func topAsked(rd *reading.Reading, i int) bool {
	asks := rd.TermAt(rd.Past(i-1, -1, lexicon.MarkArticle)).Intent
	other := func(k int) bool {
		return k != i && (rd.TermAt(k).Shape != "" || rd.TermAt(k).Unnamed || rd.Elems[k].Plays(parser.ButtDiameter) || rd.Elems[k].Marked(lexicon.MarkTreetop))
	}
	return (asks == parser.AskWeight || asks == parser.AskLower) && !rd.AnyAt(other)
}

// nextTree reads "on the next tree" as a place: counting starts anew at the next
// tree by itself.
func nextTree(rd *reading.Reading, i int) {
	if rd.At(rd.Past(i-1, -1, lexicon.MarkArticle)).Marked(lexicon.MarkAt | lexicon.MarkIn | lexicon.MarkWhere | lexicon.MarkRelation) {
		rd.Alter(i, func(t *scan.Term) { t.Note, t.Intent = "", "" })
	}
}

// upends reads "stand that red oak limb up" and "tip the limb upright" as what
// is done to the limb. Where nothing of it follows, the word keeps what else
// it means.
func upends(rd *reading.Reading, i int) {
	k := i + 1
	for rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun|lexicon.MarkAdverb) || rd.At(k).Piece() || k > i+1 && rd.At(k).Fig != nil {
		k++
	}
	named := slices.ContainsFunc(rd.Elems[i+1:min(k, len(rd.Elems))], func(e reading.Element) bool { return e.Piece() || e.Marked(lexicon.MarkPronoun) })
	if named && !rd.At(k).Marked(lexicon.MarkErect) && rd.TermAt(i).Ask == parser.Unknown && heights.TellsOfHinge(rd) {
		rd.Alter(i, func(t *scan.Term) { t.Ask, t.Intent = "", parser.AskRaise }) // "stand a limb on its hinge"
		return
	}
	if !named || !rd.At(k).Marked(lexicon.MarkErect) || rd.At(i-1).Fig != nil || rd.At(i-1).Marked(lexicon.MarkAt) {
		if rd.TermAt(i).Overlook {
			overlook(rd, i)
		}
		return
	}
	rd.Alter(i, func(t *scan.Term) { t.Roles, t.Ask, t.Intent = nil, "", parser.AskRaise })
	rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
}

// contrast reads "stand it up instead of lowering": what is named behind the
// words is not asked for, where another thing is. A number that follows could
// be of either, so that the words stay in doubt.
func contrast(rd *reading.Reading, i int) {
	if rd.At(i-1).Marked(lexicon.MarkErect) && rd.Cued(rd.At(i+1), lexicon.CueDown) {
		rd.Alter(i, func(t *scan.Term) { t.Ask = "" }) // "up instead of down"
		return
	}
	if sizes.RunsInstead(rd, i) || turning.PutAside(rd, i) {
		return
	}
	out := rd.TermAt(i + 1).Intent
	if out == "" || rd.TermAt(i+1).Besides {
		turning.ThingPutAside(rd, i)
		return
	}
	for k := i + 2; rd.At(k).Term != nil || rd.At(k).Fig != nil; k++ {
		if rd.At(k).Fig != nil {
			return
		}
	}
	if !slices.ContainsFunc(lexicon.Special, func(in parser.Intent) bool { return in != out && gear.AsksFor(rd, in) }) {
		return
	}
	rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
	rd.Alter(i+1, func(t *scan.Term) { t.Roles, t.Intent = nil, "" })
}

// withSelf reads "me and one other guy" where the message tells the sum as
// well, "2 people": then it is clear that who speaks is counted.
func withSelf(rd *reading.Reading, i int) {
	const sum = 2
	for k, e := range rd.Elems {
		if rd.At(i+1).Plays(parser.People) && places.Bare(e.Fig, sum) && rd.At(k+1).Plays(parser.People) {
			rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
		}
	}
}

// andOthers counts who speaks in with "me and 2 other guys" and "me and tom".
func andOthers(rd *reading.Reading, i int) {
	if turning.NamedPartner(rd, i) {
		rd.Elems[i] = reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[i].End, Fig: &reading.Figure{Low: 2, High: 2, Start: rd.Elems[i].Start, End: rd.Elems[i].End}}
		return
	}
	if j := rd.Past(i+1, +1, lexicon.MarkArticle); rd.TermAt(j).Someone && !rd.At(j+1).Marked(lexicon.MarkAnd) && !rd.TermAt(j+1).Someone {
		start, end := rd.Elems[i].Start, rd.Elems[j].End
		rd.Elems[i].Term = &scan.Term{}
		rd.Elems[j-1] = reading.Element{Start: start, End: end, Fig: &reading.Figure{Low: 2, High: 2, Start: start, End: end}}
		rd.Elems[j].Term = &scan.Term{Roles: []scan.Role{{Field: parser.People, Side: lexicon.Before, Soft: false}}}
		return
	}
	fig := rd.At(i + 1).Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || !rd.TermAt(i+2).Others && !(rd.At(i+2).Plays(parser.People) && turning.OnTackle(rd, i+3)) {
		return
	}
	fig.Low, fig.High = fig.Low+1, fig.High+1
	rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
}

// order reads "baja la rama" as what is to be done where it begins what is
// said; elsewhere the word tells one limb from another: "la rama baja". A rope
// that comes down is neither: "la cuerda baja recta".
func order(rd *reading.Reading, i int) {
	j := rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkRelation|lexicon.MarkArticle)
	toGear := j > i+1 && (stops.Kit(rd, j) || rd.TermAt(j).Block != "" || rd.TermAt(j).Another && (stops.Kit(rd, j+1) || rd.TermAt(j+1).Block != "")) // "baja a otro block"
	if toGear || gear.Part(rd.At(i-1)) == lexicon.PartRope && !rd.At(rd.Past(i+1, +1, lexicon.MarkArticle)).Piece() {
		rd.Alter(i, func(t *scan.Term) { t.Ask, t.Order = "", "" })
		return
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if !rd.Elems[k].Polite() {
			return
		}
	}
	rd.Alter(i, func(t *scan.Term) { t.Ask, t.Intent = "", t.Order })
}

// SizesAtHitch asks about a thickness told at the hitch, "14 in at the hitch":
// it is that of no end, and nothing is said of how high the hitch is.
func SizesAtHitch(rd *reading.Reading) {
	for i, e := range rd.Elems {
		j := rd.Past(i+2, +1, lexicon.MarkArticle)
		fig := e.Fig
		if fig == nil || fig.Dim != parser.DimLength || !fig.Unit.Fine || fig.High > reading.Roundest || !rd.At(i+1).Marked(lexicon.MarkAt) ||
			!rd.At(j).Plays(parser.HitchHeight) || rd.At(j+1).Fig != nil || rd.At(j+1).Marked(lexicon.MarkAt) {
			continue
		}
		rd.Alter(j, func(t *scan.Term) { t.Roles = nil })
		a := fig.Ask(parser.TwoReadings, rd.Text)
		a.Fields = []parser.Field{parser.ButtDiameter, parser.MidDiameter}
		rd.Asks = append(rd.Asks, a)
		fig.Elsewhere = true
	}
}

// UpBetween asks about "12 in x 20 ft, up 35 ft": how high mostly stands before
// the word, but here another height stands right behind it.
func UpBetween(rd *reading.Reading) {
	for i, e := range rd.Elems {
		j := i - 1
		if rd.At(j).Pause == 2 {
			j--
		}
		if !e.LooksBack(parser.HitchHeight) || !gear.Far(rd, j) || !gear.Far(rd, i+1) || rd.At(i+2).Plays(parser.Length) || rd.At(i+2).Piece() {
			continue
		}
		fig := rd.Elems[j].Fig
		a := fig.Ask(parser.TwoReadings, rd.Text)
		a.Fields = []parser.Field{parser.Length, parser.HitchHeight}
		rd.Asks = append(rd.Asks, a)
		fig.Elsewhere = true
	}
}
