package stops

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Ails says whether the word at i tells of somebody who stays at home, and of no
// wood: "Pepe se enfermó".
func Ails(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.At(i), lexicon.CueAils) || rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Tree != nil }) {
		return false
	}
	k := i - 1
	for k >= 0 && rd.At(k).Pause == 0 && !Person(rd, k) && (rd.At(k).Polite() || rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkPronoun)) {
		k--
	}
	return Person(rd, k)
}

// Soundness takes out what only says that wood is sound, "no rot", where
// nothing is said of where or how far it is: "no rot above 20 ft" stays. A
// question denies nothing.
func Soundness(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		if rd.TermAt(i).Stop != parser.Unsound || !rd.TermAt(i-1).Lacks || !next(rd, i-1) {
			continue
		}
		if closes(rd, seenUntil(rd, i)) || rd.At(i+1).Marked(lexicon.MarkAnd) && next(rd, i) || rd.TermAt(i+1).Lacks && next(rd, i) {
			rd.Pass(i-1, i+1)
			i--
		}
	}
}

// seenUntil is where "that i can find" or "in it" behind the element at i ends.
func seenUntil(rd *reading.Reading, i int) int {
	if next(rd, i) && rd.At(i+1).Marked(lexicon.MarkIn) && next(rd, i+1) && rd.At(i+2).Marked(lexicon.MarkPronoun) {
		return i + 2 // "in it"
	}
	for next(rd, i) && rd.At(i+1).Pause == 0 && rd.Cued(rd.At(i+1), lexicon.CueSeen) {
		i++
	}
	return i
}

// closes says whether what is said, and not asked, ends with the element at i.
func closes(rd *reading.Reading, i int) bool {
	rest := strings.TrimLeft(rd.Text[rd.Elems[i].End:], " ")
	return rest == "" || rd.At(i+1).Pause > 0 && next(rd, i) && rest[0] != '?'
}

// next says whether no word that is not known stands between an element and
// the one behind it.
func next(rd *reading.Reading, i int) bool {
	return i+1 < len(rd.Elems) && strings.TrimSpace(rd.Text[rd.Elems[i].End:rd.Elems[i+1].Start]) == ""
}

// Lifted says whether the word at i lifts or lowers a person: "winch dave up".
// A bare noun is no such person, "the lowering man", nor is whose piece it is.
func Lifted(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Lifts || pullerBehind(rd, i+1) {
		return false
	}
	j, article := i+1, false
	for rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkErect|lexicon.MarkAt) || rd.At(j).Polite() && rd.At(j).Pause == 0 && !Person(rd, j) && j < len(rd.Elems) {
		if rd.Cued(rd.At(j), lexicon.CueClause) {
			return false // "no room to lower so i'm thinking"
		}
		article = article || rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkAt)
		j++
	}
	if !Person(rd, j) || rd.Cued(rd.At(j), lexicon.CueSubject) || rd.At(j+1).Piece() || rd.At(j+1).Marked(lexicon.MarkGear|lexicon.MarkArticle) || rd.At(j+1).Fig != nil && rd.At(j+2).Piece() {
		return false
	}
	e := rd.At(j)
	words := strings.ToLower(rd.Text[e.Start:e.End])
	if strings.HasSuffix(words, "'s") || strings.HasSuffix(words, "’s") {
		return false
	}
	return article || !e.Plays(parser.People)
}

// Borne reads "can the climber be lowered".
func Borne(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Polite() && !Person(rd, k) {
		k--
	}
	return Person(rd, k) || rd.At(k).Marked(lexicon.MarkPerson)
}

// Person says whether the element at i is somebody.
func Person(rd *reading.Reading, i int) bool { return rd.TermAt(i).Human || rd.TermAt(i).Someone }

// Hangs says whether the number at i is what somebody weighs, and nothing else
// is told that could be lifted: "hes 85kg, 4:1".
func Hangs(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimMass || !rd.TermAt(gear.PastIs(rd, i-1)).Human && !somebody(rd, fig) || someonePulls(rd) || selfWeighs(rd, i) >= 0 || rd.AnyAt(rd.Is(personHolds)) {
		return false
	}
	hauls := false
	for k, e := range rd.Elems {
		switch {
		case e.Piece(), k != i && e.Fig != nil && (e.Fig.Dim == parser.DimMass || e.Fig.Dim == parser.DimForce || e.Fig.Dim == parser.DimLength && e.Fig.Unit.Fine):
			return false
		}
		hauls = hauls || rd.TermAt(k).Lifts || rd.TermAt(k).Intent == parser.AskLift || e.Fig != nil && e.Fig.Dim == parser.DimRatio
	}
	return hauls
}

// What a person weighs, kg, with gear or without.
const (
	Lightest = 30
	heaviest = 200
)

// somebody says whether a mass can be that of a person whose name stands right
// behind a word that lifts: "winch tommo up, 85 kg".
func somebody(rd *reading.Reading, fig *reading.Figure) bool {
	if fig.Low < Lightest || fig.High > heaviest {
		return false
	}
	for _, a := range rd.Asks {
		if a.Kind == parser.Unknown && behindLift(rd, a) {
			return true
		}
	}
	return false
}

// behindLift says whether what is asked about stands right behind a word that
// lifts: it may be anybody.
func behindLift(rd *reading.Reading, a *parser.Ask) bool {
	prev, _, _ := Around(rd, a)
	return IsLifted(rd, prev)
}

// IsLifted says whether what stands behind the element at i is what is lifted.
func IsLifted(rd *reading.Reading, i int) bool {
	for i >= 0 && rd.Elems[i].Marked(lexicon.MarkAt|lexicon.MarkErect|lexicon.MarkPronoun|lexicon.MarkArticle) {
		i--
	}
	return rd.TermAt(i).Lifts
}

// Aside says whether what pulls "it over" the fence moves it past something,
// and fells nothing.
func Aside(rd *reading.Reading, i int) bool {
	return rd.At(rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkPlace | lexicon.MarkObstacle | lexicon.MarkStation | lexicon.MarkStanding)
}

// Felled reads "pull a 60 ft poplar over", a tree that no piece is told of, and "pull the
// top over with a line from the ground", a piece that stands.
func Felled(rd *reading.Reading, i int) bool {
	if gear.Shaped(rd) && !byLine(rd, i+1) || Aside(rd, i) {
		return false
	}
	from, to := i, i
	for from > 0 && rd.Elems[from-1].Pause == 0 {
		from--
	}
	for to < len(rd.Elems) && rd.Elems[to].Pause == 0 {
		to++
	}
	tree, pulls := false, false
	for k := from; k < to; k++ {
		tree = tree || rd.TermAt(k).Tree != nil
		pulls = pulls || rd.TermAt(k).Lifts
	}
	return (tree || byLine(rd, i+1)) && pulls
}

// byLine reads "with a line from the ground" and "from the ground": how what stands is
// pulled, where nothing is told that it is pulled over.
func byLine(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	return rd.At(i).Marked(lexicon.MarkWhere) && Rope(rd, j) || rd.Cued(rd.At(i), lexicon.CueGround)
}

// Burdened says whether it is asked what the machine at i takes, and not what a
// piece weighs that it will take.
func Burdened(rd *reading.Reading, i int) bool {
	weighs := func(i int) bool { return rd.TermAt(i).Intent == parser.AskWeight && !rd.TermAt(i).Besides }
	most := func(i int) bool { return rd.TermAt(i).Note == parser.MostWanted }
	if rd.AnyAt(weighs) && !rd.AnyAt(most) || tellsItsLoad(rd, i) {
		return false
	}
	j, k := i+1, rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)
	for (rd.At(j).Polite() || rd.At(j).Marked(lexicon.MarkArticle|lexicon.MarkPronoun)) && !rd.TermAt(j).Bears {
		j++
	}
	asked := rd.Cued(rd.At(k), lexicon.CueAsking) && !rd.Cued(rd.At(i+1), lexicon.CueThat)
	if next := rd.At(rd.Past(j+1, +1, lexicon.MarkMade|lexicon.MarkBound)); !asked && rd.TermAt(j).Bears && next.Fig != nil && next.Fig.Dim != parser.DimRatio {
		return false // "the forks take 2,200"
	}
	return rd.TermAt(j).Bears || rd.TermAt(k).Bears
}

// tellsItsLoad says whether behind the machine at i it is told in a breath of its own what it
// takes: "in pieces the skid steer can take, it does 1500".
func tellsItsLoad(rd *reading.Reading, i int) bool {
	for k := i + 2; k < len(rd.Elems); k++ {
		fig := rd.Elems[k].Fig
		if fig == nil || !(fig.Dim == parser.DimMass || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= LeastLoad) {
			continue
		}
		j := rd.Past(k-1, -1, lexicon.MarkBound|lexicon.MarkAdverb)
		for rd.At(j).Polite() && !rd.Cued(rd.At(j), lexicon.CueManages) || rd.TermAt(j).Note == "about" {
			j--
		}
		takes := rd.TermAt(j).Bears || rd.TermAt(j).Rated || rd.Cued(rd.At(j), lexicon.CueManages)
		of := rd.At(j - 1)
		if takes && (of.Pause > 0 || of.Marked(lexicon.MarkPronoun) || of.Polite() || rd.Cued(of, lexicon.CueThat)) {
			return true
		}
	}
	return false
}

// Stays reads "stand underneath" and "wait by the trunk": where somebody means
// to be. A piece stays "under 500 lb", and clear of a roof.
func Stays(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Stays {
		return false
	}
	j := rd.Past(i+1, +1, lexicon.MarkAdverb|lexicon.MarkErect)
	if rd.TermAt(j).Beneath || rd.At(j).Marked(lexicon.MarkIn) && rd.TermAt(j+1).Beneath {
		k := rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkMade)
		next := rd.At(k)
		return next == (reading.Element{}) || next.Pause > 0 || next.Piece() || next.Marked(lexicon.MarkPronoun|lexicon.MarkAnd|lexicon.MarkWhere) || next.Polite()
	}
	k := rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkRelation)
	return rd.At(j).Marked(lexicon.MarkRelation) && rd.At(k).Piece()
}

// Strays reads "a lady is passing under it": whoever moves in below a piece, or
// means to. A rope passes under a limb as well.
func Strays(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Strays {
		return false
	}
	j, who := i+1, false
	for k := i - 1; k >= i-6 && rd.At(k).Pause == 0; k-- {
		who = who || Present(rd, k)
	}
	for Present(rd, j) || rd.At(j).Marked(lexicon.MarkAdverb|lexicon.MarkErect|lexicon.MarkArticle) {
		who = who || Present(rd, j)
		j++
	}
	next := rd.At(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective))
	return who && rd.TermAt(j).Beneath && next.Fig == nil && (next.Piece() || !next.Marked(lexicon.MarkPlace|lexicon.MarkObstacle))
}

// Present says whether the element at i is somebody, or several.
func Present(rd *reading.Reading, i int) bool {
	return Person(rd, i) || rd.At(i).Marked(lexicon.MarkPerson) || rd.At(i).Term != nil && rd.At(i).Plays(parser.People)
}

// Guided reads "guiding the log with his hands": who does is beside the piece.
func Guided(rd *reading.Reading, i int) bool {
	const words = 4 // between what is done and the hands
	if !rd.TermAt(i).Guides {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && k-i <= words && rd.At(k).Fig == nil && rd.At(k).Pause == 0; k++ {
		if rd.TermAt(k).ByHand {
			return true
		}
	}
	return false
}

// FellingHinge takes a hinge or a notch that is asked about with a thickness or with the
// other, and no angle that a limb is stood up from, for that of a tree that is felled.
func FellingHinge(rd *reading.Reading, q parser.Question) *parser.Ask {
	if a := hingeThickness(rd); a != nil {
		return a
	}
	thick := q.Has(parser.Across...) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig.Short() && !gear.OfRope(rd, i) })
	if q.Intent != parser.AskNotch && q.Intent != parser.AskCutPlan || q.Has(parser.LimbAngle) || !thick && !hingeFor(rd) && !notchAndHinge(rd) || q.Limb() {
		return nil
	}
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Intent == parser.AskNotch {
			return reading.AskAt(parser.Felling, rd.Text, e.Start, e.End-e.Start)
		}
	}
	return nil
}

// hingeThickness takes "hinge for a 12 in top, how thick" for the same, whatever it is for:
// how thick a hinge is left no method here says.
func hingeThickness(rd *reading.Reading) *parser.Ask {
	asked := func(i int) bool {
		return rd.TermAt(i).Turning == parser.TurnsMeasure && rd.Cued(rd.Elems[i], lexicon.CueHowThick)
	}
	for i, e := range rd.Elems {
		if e.Term != nil && e.Term.Intent == parser.AskNotch && e.Term.Stop == "" && rd.Cued(e, lexicon.CueHinge) && rd.AnyAt(asked) {
			return reading.AskAt(parser.Felling, rd.Text, rd.Elems[i].Start, e.End-e.Start)
		}
	}
	return nil
}

// notchAndHinge says whether both are asked about at once, "notch and hinge on the bottom
// one": how a cut is laid out, and not how wide it opens.
func notchAndHinge(rd *reading.Reading) bool {
	asked := func(hinge bool) func(i int) bool {
		return func(i int) bool {
			return rd.TermAt(i).Intent == parser.AskNotch && rd.Cued(rd.Elems[i], lexicon.CueHinge) == hinge
		}
	}
	return rd.AnyAt(asked(true)) && rd.AnyAt(asked(false))
}

// hingeFor says whether a hinge is asked about with no more than what it is for,
// "hinge for that big one", which is no limb.
func hingeFor(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Intent == parser.AskNotch && rd.TermAt(i).Besides && rd.Cued(rd.At(i+1), lexicon.CueFor) && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil })
	})
}
