package turning

import (
	"math"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews take back what they just typed: "31 inches no make that 33", "beech, no
// wait its hornbeam", "no el sauce, el álamo". What is taken back is passed
// over, and said so; where it is not plain what is, the word is asked about.

// Corrected reads the word at i, "no" or "make that", as taking back the fact
// before it, where the one behind it is of the same kind.
func Corrected(rd *reading.Reading, i int) {
	if takesNothing(rd, i) {
		return
	}
	if tellsBehind(rd, i) {
		rd.Alter(i, func(t *scan.Term) { t.Lacks, t.Denies = false, false })
	}
	if asksAnew(rd, i) || excused(rd, i) || rightShape(rd, i) || rightKind(rd, i) {
		return
	}
	n := nextFact(rd, i+1)
	if limitAnew(rd, i) {
		limitPutRight(rd, i)
		return
	}
	if onlyOpens(rd, i) {
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		return
	}
	if n >= 0 && rd.Cued(rd.Elems[i], lexicon.CueIsNot) && deniedTree(rd, n) {
		rd.PutRight = rd.PutRight || !rd.First
		clearDoubt(rd, i, n)
		passTree(rd, n) // "no es roble, es fresno"
		return
	}
	if putsRight(rd, i, n) {
		goesOn := rd.Cued(rd.Elems[i], lexicon.CueAmends)
		rd.PutRight = true
		if clearDoubt(rd, i, max(n, i+1)); goesOn {
			rd.Alter(i, func(t *scan.Term) { t.Marks |= lexicon.MarkFollow })
		}
		return
	}
	if n < 0 {
		placeAnew(rd, i)
		return
	}
	takeBack(rd, i, n)
}

// takesNothing settles the word at i where it takes nothing back, and says whether it did.
func takesNothing(rd *reading.Reading, i int) bool {
	hangsOn := rd.Cued(rd.Elems[i], lexicon.CueHangsOn) && rd.At(i-1).Pause == 0
	switch {
	case rd.TermAt(i).Apology && (begins(rd, i) || onlySorry(rd, i)):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
	case onlyBegins(rd, i):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
	case quoted(rd, i) && rd.First && nextFact(rd, i+1) < 0:
		LeaveOut(rd, i, i+1) // "boss said no"
	case quoted(rd, i):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true, Marks: lexicon.MarkFollow} })
	case hangsOn && (Who(rd, i-1) || rd.At(i-1).Marked(lexicon.MarkPronoun)):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} }) // "what may i hang on it"
	case awaits(rd, i):
		LeaveOut(rd, i, i+1)
	default:
		return false
	}
	return true
}

// takeBack passes over what the fact at n, behind the words at i, puts right.
func takeBack(rd *reading.Reading, i, n int) {
	if rd.TermAt(i).Apology && anyWord(rd, rd.Elems[i].End, rd.Elems[n].Start, lexicon.CueThought) {
		return // "sorry, i thought it was the ash"
	}
	p := takenBack(rd, i, n)
	for _, other := range []func(*reading.Reading, int, int) int{countedAlone, ofOneRole, sizedOver} {
		if p < 0 {
			p = other(rd, i, n)
		}
	}
	switch {
	case p >= 0 && lessHolds(rd, i, p, n):
		notSo(rd, i, n+1)
	case p >= 0 && eitherWay(rd, i, p, n):
		return
	case p >= 0 && p == sameWords(rd, i, n):
		clearDoubt(rd, i, n)
		rd.Alter(n+1, func(t *scan.Term) { *t = *rd.Elems[p+1].Term })
		rd.Pass(p, p+2)
	case p >= 0:
		fig := rd.Elems[n].Fig
		if fig != nil && fig.Unit == nil && fig.Dim == parser.DimCount {
			fig.Lent(rd.Elems[p].Fig.Unit)
		}
		if rd.TermAt(p).Tree != nil {
			misnamed(rd, rd.Elems[p].Start)
		}
		wrong := retoldToo(rd, i, p, n)
		clearDoubt(rd, i, n)
		inherit(rd, p, n)
		for passed, p := range wrong {
			rd.Pass(p-passed, p-passed+1)
		}
	case deniedTree(rd, n):
		clearDoubt(rd, i, n)
		passTree(rd, n)
	case rd.TermAt(n).Tree != nil && !rd.TermAt(i).Denies && misnamed(rd, rd.Elems[i].Start):
		clearDoubt(rd, i, n)
	}
}

// misnamed leaves out the unknown words right before a place in the text, where a tree is
// put right that they were to name, "redrock i mean red cedar", and says whether there
// were any.
func misnamed(rd *reading.Reading, start int) bool {
	const most = 2
	found := false
	for range most {
		at := slices.IndexFunc(rd.Asks, func(a *parser.Ask) bool {
			return a.Kind == parser.Unknown && a.End <= start && strings.TrimSpace(rd.Text[a.End:start]) == "" && LikeStop(rd, a) == ""
		})
		if at < 0 {
			return found
		}
		a := rd.Asks[at]
		rd.Passed = append(rd.Passed, parser.Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		rd.Asks = slices.Delete(rd.Asks, at, at+1)
		start, found = a.Start, true
	}
	return found
}

// awaits says whether the word at i only tells that somebody or a machine is waited for:
// "or wait on the loader".
func awaits(rd *reading.Reading, i int) bool {
	word, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	k := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkAt|lexicon.MarkRelation|lexicon.MarkIn)
	for rd.Cued(rd.At(k), lexicon.CueFor) || rd.At(k).Marked(lexicon.MarkArticle) {
		k++
	}
	return rd.Cued(rd.Elems[i], lexicon.CueHangsOn) && rd.In.Cued(word, lexicon.CueAwaited) && rd.At(k).Fig == nil && (rd.TermAt(k).Machine || Who(rd, k) || rd.At(k).Marked(lexicon.MarkPlace))
}

// putsRight says whether the word at i only tells that what goes with it, the fact at n
// behind it, takes the place of what was said before in the talk: "no, 80 kg", "nah its 18
// in", "400 lb sorry". "No 3:1" denies what stands behind it.
func putsRight(rd *reading.Reading, i, n int) bool {
	t, next := rd.TermAt(i), rd.At(i+1)
	amends := rd.Cued(rd.Elems[i], lexicon.CueAmends)
	switch {
	case rd.First && amends && i < 2 && begins(rd, i) && toldBehind(rd, i):
		return true // "typo. red oak log 14 in 8 ft" of a talk that is over
	case rd.First, deniesBehind(rd, i, n), n >= 0 && rd.Cued(rd.Elems[i], lexicon.CueIsNot), (t.Denies || t.Lacks) && asBefore(rd, n):
		return false // "no es roble" says what it is not
	case begins(rd, i) && next.Pause > 0 && n < 0 && toldBehind(rd, i):
		return true // "no, i asked again, the pulley is at 65"
	case (amends || rd.Cued(rd.Elems[i], lexicon.CueHangsOn)) && begins(rd, i) && toldBehind(rd, i):
		return true // "correction the log is 600 lb", "wait i measured it wrong its 52"
	case tellsAnew(rd, i):
		return true
	case n < 0:
		return t.Apology && i+1 == len(rd.Elems)
	case !begins(rd, i):
		return false
	}
	alone := len(rd.Elems) == 2 && next.Fig != nil && (next.Fig.Unit == nil || next.Fig.Dim == parser.DimLength) // "no 12": what it is, is asked
	return alone || !t.Denies && !t.Lacks || next.Pause > 0 || rd.TermAt(i+1).Corrects || next.Marked(lexicon.MarkPronoun|lexicon.MarkIs) || gear.Heavy(rd, i+1)
}

// asBefore says whether the number at n was told before in the talk: a "no" denies that, "no
// son 14 pulgadas", and nothing is put right.
func asBefore(rd *reading.Reading, n int) bool {
	fig := rd.At(n).Fig
	return fig != nil && fig.Unit != nil && slices.ContainsFunc(rd.Before.Quantities, func(q parser.Quantity) bool {
		return parser.DimensionOf[q.Field] == fig.Dim && math.Abs(q.High-fig.High) < 1e-6
	})
}

// deniesBehind says whether a word between i and the fact at n denies that: "correction
// it's not 500".
func deniesBehind(rd *reading.Reading, i, n int) bool {
	for k := i + 1; k < n; k++ {
		if t := rd.TermAt(k); t.Denies && !t.Corrects {
			return true
		}
	}
	return false
}

// toldBehind says whether a number is told behind the word at i, and nothing that denies
// or takes back besides.
func toldBehind(rd *reading.Reading, i int) bool {
	told := false
	for k := i + 1; k < len(rd.Elems); k++ {
		if t := rd.TermAt(k); t.Denies || t.Corrects || t.Lacks {
			return false
		}
		told = told || rd.Elems[k].Fig != nil
	}
	return told
}

// begins says whether nothing but courtesy is said before the word at i, or what stands
// for what was told: "that was wrong".
func begins(rd *reading.Reading, i int) bool {
	for i--; i >= 0; i-- {
		if e := rd.Elems[i]; e.Pause == 0 && !e.Polite() && !rd.TermAt(i).Apology && !e.Marked(lexicon.MarkPronoun|lexicon.MarkArticle) {
			return false
		}
	}
	return true
}

// passTree passes over the tree at n wherever it is named: "pino 5 pies, no es
// pino es cedro".
func passTree(rd *reading.Reading, n int) { passNamed(rd, n, rd.TermAt(n).Tree.Sci) }

// passNamed does so from the element at n back.
func passNamed(rd *reading.Reading, n int, sci string) {
	for k := n; k >= 0; k-- {
		if t := rd.TermAt(k).Tree; t != nil && t.Sci == sci {
			rd.Pass(k, k+1)
		}
	}
}

// eitherWay says whether the word at i could as well deny the number behind it,
// which is the smaller: "16 pulgadas no 14".
func eitherWay(rd *reading.Reading, i, p, n int) bool {
	is, not := rd.Elems[p].Fig, rd.Elems[n].Fig
	return rd.TermAt(i).Denies && rd.At(i+1).Pause == 0 && is != nil && not.In(is) < is.High
}

// clearDoubt takes the doubt from the words that take back, from i up to a fact.
func clearDoubt(rd *reading.Reading, i, fact int) {
	for ; i < fact; i++ {
		if t := rd.TermAt(i); t.Corrects || t.Denies {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
}

// deniedTree says whether the fact at i is a tree that is denied before another
// is named: "no es oak es hickory", "not the oak the ash".
func deniedTree(rd *reading.Reading, i int) bool {
	next := nextFact(rd, i+1)
	return next > i && OtherTree(rd, i, next)
}

// OtherTree says whether two trees of different kinds stand at i and j.
func OtherTree(rd *reading.Reading, i, j int) bool {
	a, b := rd.TermAt(i).Tree, rd.TermAt(j).Tree
	return a != nil && b != nil && a.Sci != b.Sci && !Narrows(a, b) && !Narrows(b, a)
}

// nextFact finds the number or the tree that stands behind i with nothing
// between but what says nothing, -1 where something else comes first.
func nextFact(rd *reading.Reading, i int) int {
	for ; i < len(rd.Elems); i++ {
		e := rd.Elems[i]
		switch {
		case e.Fig != nil, e.Term != nil && e.Term.Tree != nil:
			return i
		case e.Pause > 2, e.Pause == 0 && !saysNothing(rd, i):
			return -1
		}
	}
	return -1
}

// saysNothing says whether the term at i says nothing between a correction and
// what it puts right.
func saysNothing(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return t.Corrects || t.Denies || t.Ask == "" && lexicon.Says(t, lexicon.MarkHello|lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkFollow|lexicon.MarkPronoun)
}

// takenBack finds the fact before i that the one at n puts right: the last of
// its kind, or the last that has the same words behind it; -1 for none. A number
// far from the other is rather another.
func takenBack(rd *reading.Reading, i, n int) int {
	const farthestBack, most = 8, 2
	if p := sameWords(rd, i, n); p >= 0 {
		return p
	}
	words := RoleBehind(rd, n)
	for p := saidBefore(rd, i); p >= max(0, i-farthestBack) && (rd.Elems[p].Pause < 4 || askedAt(rd, p)); p-- {
		if OtherTree(rd, p, n) {
			return p
		}
		a, b := rd.Elems[p].Fig, rd.Elems[n].Fig
		if a == nil || b == nil || a.Pair || b.Pair {
			continue
		}
		own := RoleBehind(rd, p)
		if words != "" && own != "" && own != words {
			continue
		}
		if a.Unit == nil && b.Unit != nil && a.Dim == parser.DimCount && own == "" && (p == i-1 || p == i-2) {
			if x, y := a.High, b.High/b.Unit.Factor; x <= most*y && y <= most*x {
				return p // "hitch at 30 no 35 ft"
			}
			return -1
		}
		if x, y := a.High, b.In(a); b.Unit != nil && b.Unit != a.Unit || x <= 0 || x > most*y || y > most*x {
			return onlyOfUnit(rd, i, n)
		}
		if b.Unit == nil && nearerThan(rd, i, p, n) {
			return -1
		}
		return p
	}
	return -1
}

// saidBefore is the last that is said before the word at i. What plainly takes back may
// begin what is said anew: "8 ft long. scratch that, 10".
func saidBefore(rd *reading.Reading, i int) int {
	p := i - 1
	if rd.TermAt(p).Chatter {
		p-- // "3 ft. no scrap that, 4 ft"
	}
	for p >= 0 && rd.Elems[p].Pause > 2 && !rd.TermAt(i).Lacks && !rd.TermAt(i).Denies {
		p--
	}
	return p
}

// askedAt says whether a question mark stands at p: "¿abedul? no, haya".
func askedAt(rd *reading.Reading, p int) bool {
	return rd.Text[rd.Elems[p].Start:rd.Elems[p].End] == "?"
}

// RoleBehind is the field of the words right behind the number at i, "" for
// none.
func RoleBehind(rd *reading.Reading, i int) parser.Field {
	for _, r := range rd.TermAt(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkArticle|lexicon.MarkIs)).Roles {
		if r.Side&lexicon.Before != 0 {
			return r.Field
		}
	}
	return ""
}

// sameWords finds the number before i that has the very words behind it that the
// one at n has, -1 for none: "40 abajo 25 arriba 3 m, no no 35 arriba".
func sameWords(rd *reading.Reading, i, n int) int {
	const farthestBack, most = 8, 2
	words := rd.Word(rd.At(n + 1))
	b := rd.At(n).Fig
	if b == nil || b.Pair || words == "" || !rd.At(n+1).Looks(lexicon.Before) || rd.At(n+1).Looks(lexicon.After) {
		return -1
	}
	for p := i - 1; p >= max(0, i-farthestBack) && (rd.Elems[p].Pause < 4 || askedAt(rd, p)); p-- {
		a := rd.Elems[p].Fig
		if a == nil || a.Pair || rd.Word(rd.At(p+1)) != words {
			continue
		}
		if a.Unit != b.Unit || a.Dim != b.Dim || a.High > most*b.High || b.High > most*a.High {
			return -1
		}
		return p
	}
	return -1
}

// Narrows says whether a is one of the trees that b could be: one of those that share
// its name, "oak, red oak", one that is called by it and a word more, "gum, blue gum", or
// one of the genus that it is alone, "euc, blue gum".
func Narrows(a, b *parser.Tree) bool {
	genus, whole := strings.CutSuffix(b.Sci, "spp.")
	longer := len(b.Others) > 0 && strings.HasSuffix(a.Name, " "+b.Name)
	return len(a.Others) == 0 && (slices.Contains(b.Others, a.Sci) || longer || whole && len(b.Others) == 0 && a.Sci != b.Sci && strings.HasPrefix(a.Sci, genus))
}
