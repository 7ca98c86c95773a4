package turning

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// "Not" turns most meanings round and is asked about. It does not where it
// only says again what stands right before it: "200 kg not lb", "a log not a
// limb", "14 in not 16".

// Denials takes out what such a word puts aside, and says so of a number.
func Denials(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if interjected(rd, i) {
			rd.Elems[i].Term = &scan.Term{}
			continue
		}
		if !rd.TermAt(i).Denies {
			deniedKind(rd, i)
			continue
		}
		start, led := rd.Elems[i].Start, ledBack(rd, i)
		putAside(rd, i)
		if at := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Start == start }); at < 0 || !rd.TermAt(at).Denies {
			ledOn(rd, led)
		}
	}
}

// putAside takes out what the word at i denies, where another is told.
func putAside(rd *reading.Reading, i int) {
	j, is := rd.Past(i+1, +1, lexicon.MarkArticle), i-1
	if rd.At(i+1).Marked(lexicon.MarkMade) && rd.At(i+2).Fig != nil {
		j = i + 2 // "6 pies no de 4"
	}
	if rd.At(is).Pause == 2 {
		is-- // "let it run, not snubbed"
	}
	if toldWith := asideBack(rd, is); rd.At(toldWith).Fig != nil {
		is = toldWith // "we're 4 today, not 5"
	}
	switch {
	case rd.At(i+1).Pause == 2:
		Corrected(rd, i) // "el sauce no, el álamo"
	case otherUnit(rd, i-1, j), unitPutAside(rd, i, j), otherKind(rd, is, j), otherKind(rd, kindAhead(rd, j), j), girthNotAcross(rd, i-1, j):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		rd.Alter(j, func(t *scan.Term) { *t = scan.Term{} })
	case otherNumber(rd, i-1, j), is < i-1 && otherNumber(rd, is, j) && rd.SaidOut(j+1), rd.Cued(rd.At(i-1), lexicon.CueNow) && otherNumber(rd, i-2, j):
		notSo(rd, i, j+1) // "max 180 now not 250"
	case farNumber(rd, i, j):
		notSo(rd, i, j+1)
	case handsPutAside(rd, i, j):
		rd.Pass(i, j+1)
	case measurePutAside(rd, i) > 0:
		rd.Pass(i, measurePutAside(rd, i))
	case otherWork(rd, is, j):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		rd.Alter(j, func(t *scan.Term) { *t = scan.Term{} })
	case deniedTree(rd, j):
		sci := rd.TermAt(j).Tree.Sci
		rd.Pass(i, j+1)
		passNamed(rd, i-1, sci) // "elm 3 m, sorry not elm its horse chestnut"
	case OtherTree(rd, i-1, j), OtherTree(rd, is, j) && rd.EndsBreath(j+1):
		rd.Pass(i, j+1) // "thats the walnut, not cottonwood"
	case deniedNumber(rd, i+1):
		rd.Pass(i, pastWas(rd, i+1)+1)
	case chokePutAside(rd, j):
		rd.Pass(i, j+1)
	case basketPutAside(rd, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkIn)):
		rd.Pass(i, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkIn)+1)
	case otherJob(rd, i+1):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{} })
	}
}

// ledBack is where words of taking back start in the text that stand right before the denial
// at i, "sorry not elm its horse chestnut", -1 for none.
func ledBack(rd *reading.Reading, i int) int {
	k := i - 1
	if rd.At(k).Pause == 2 {
		k--
	}
	if t := rd.TermAt(k); !t.Corrects || t.Ask != parser.Twist && !t.Apology {
		return -1
	}
	return rd.Elems[k].Start
}

// ledOn takes the doubt from the words that start at a place in the text: what is denied
// behind them, and what is so, says all that they put right.
func ledOn(rd *reading.Reading, start int) {
	for k, e := range rd.Elems {
		if e.Start == start && e.Term != nil {
			rd.PutRight = rd.PutRight || !rd.First && begins(rd, k)
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
			return
		}
	}
}

// deniedKind takes out what "aint" and "isnt" put aside for what is so: "it isnt a limb
// its a log", "dead, it aint green".
func deniedKind(rd *reading.Reading, i int) {
	if rd.TermAt(i).Turning != parser.TurnsDenied || !rd.Cued(rd.Elems[i], lexicon.CueNot) {
		return
	}
	j, is := rd.Past(i+1, +1, lexicon.MarkArticle), rd.Past(i-1, -1, lexicon.MarkPronoun)
	if rd.At(is).Pause == 2 {
		is--
	}
	switch {
	case otherKind(rd, is, j), otherKind(rd, kindAhead(rd, j), j):
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		rd.Alter(j, func(t *scan.Term) { *t = scan.Term{} })
	case deniedTree(rd, j):
		rd.Pass(i, j+1)
	}
}

// handsPutAside says whether it is denied at j that people pull, where a winch is told in
// the message with its pull: "not by hand, we have a winch of 1500 lb".
func handsPutAside(rd *reading.Reading, i, j int) bool {
	winch := func(k int) bool {
		return rd.Elems[k].Plays(parser.WinchPull) && !sizes.Denial(rd, k-1)
	}
	pull := func(k int) bool { return k > j && gear.Heavy(rd, k) }
	return rd.Cued(rd.At(j), lexicon.CueByHand) && rd.EndsBreath(j+1) && rd.AnyAt(winch) && rd.AnyAt(pull)
}

// chokePutAside says whether it is denied at j that a sling is choked, "straight, not
// choked": what it hangs in then is as strong or stronger.
func chokePutAside(rd *reading.Reading, j int) bool {
	next := rd.At(j + 1)
	return rd.TermAt(j).Note == parser.NoteChoker && next.Fig == nil && (next.Term == nil || rd.EndsBreath(j+1) || next.Polite())
}

// basketPutAside says whether it is denied at j that a sling hangs in a basket which is
// told to be choked, "choked, not in a basket": the weaker of the two holds.
func basketPutAside(rd *reading.Reading, j int) bool {
	choked := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Note == parser.NoteChoker })
	return choked && rd.TermAt(j).Note == parser.NoteBasket && (rd.SaidOut(j+1) || rd.At(j+1).Polite())
}

// workings are what can be done with a piece.
var workings = []parser.Intent{parser.AskLower, parser.AskLift, parser.AskRaise, parser.AskDrop}

// otherJob says whether what stands at i is a way of working that is put aside
// for another, named right behind it: "not lowering it, raising it", "not neg
// rigging just a straight lower". With a number in between it could be of either.
func otherJob(rd *reading.Reading, i int) bool {
	out := rd.TermAt(i)
	if !slices.Contains(workings, out.Intent) || out.Besides || out.Stop != "" {
		return false
	}
	for j := i + 1; j < len(rd.Elems); j++ {
		e, t := rd.Elems[j], rd.TermAt(j)
		switch {
		case e.Pause > 2, e.Fig != nil, t.Denies, t.Corrects, t.Ask != "", e.Piece():
			return false
		case t.Intent != "" && !t.Besides:
			return slices.Contains(workings, t.Intent) && t.Intent != out.Intent && nowhereElse(rd, i, out.Intent)
		case e.Pause == 0 && !e.Polite() && !e.Marked(lexicon.MarkAdverb) && !saysNothing(rd, j):
			return false
		}
	}
	return false
}

// otherWork says whether a way of working is told at i and another that it is not at j:
// "its a lift not a lower".
func otherWork(rd *reading.Reading, i, j int) bool {
	is, not := rd.TermAt(i), rd.TermAt(j)
	ways := slices.Contains(workings, is.Intent) && slices.Contains(workings, not.Intent) && is.Intent != not.Intent
	plain := !is.Besides && !not.Besides && not.Stop == "" && not.Note == "" && not.Shape == "" && rd.EndsBreath(j+1)
	return ways && plain && !rd.At(i).Plays(parser.Wraps) && !rd.At(j).Plays(parser.Wraps) && nowhereElse(rd, j, not.Intent)
}

// nowhereElse says whether no other words ask for what is put aside at i.
func nowhereElse(rd *reading.Reading, i int, in parser.Intent) bool {
	return !rd.AnyAt(func(k int) bool { return k != i && rd.TermAt(k).Intent == in })
}

// otherUnit says whether a number with its unit is told, and then another unit
// that it is not in.
func otherUnit(rd *reading.Reading, i, j int) bool {
	fig, unit := rd.At(i).Fig, rd.At(j)
	return fig != nil && fig.Unit != nil && unit.Marked(lexicon.MarkUnit) && unit.Fig == nil &&
		!strings.HasSuffix(strings.ToLower(fig.Words(rd.Text)), strings.ToLower(rd.Text[unit.Start:unit.End]))
}

// girthNotAcross says whether a girth is told, and then that it is no thickness:
// "75 in circumference, not diameter".
func girthNotAcross(rd *reading.Reading, i, j int) bool {
	tells := func(k int) bool {
		t := rd.TermAt(k)
		return k <= i && (t.Ask == parser.Girth && (k == i || rd.EndsBreath(j+1)) || k == i && (t.GirthAround || t.GirthBehind))
	}
	return rd.AnyAt(tells) && places.OnlyPlays(rd.At(j), parser.Diameter) && rd.At(j+1).Fig == nil
}

// unitPutAside says whether a message without a number names a unit, and then one of
// another system that is not wanted: "kilos from here on not pounds".
func unitPutAside(rd *reading.Reading, i, j int) bool {
	system := func(k int) parser.System {
		if e := rd.At(k); e.Marked(lexicon.MarkUnit) && e.Fig == nil && rd.In.Units[rd.Word(e)] != nil {
			return rd.In.Units[rd.Word(e)].System
		}
		return rd.TermAt(k).Units
	}
	not := system(j)
	other := func(k int) bool {
		return k != j && system(k) != "" && system(k) != not && (rd.TermAt(k).Units != "" || !Measured(rd))
	}
	return not != "" && rd.AnyAt(other)
}

// otherKind says whether what a thing is stands at i, and at j the other that it is
// not: "a log not a limb", "dead, not green", "break not wll", "a run not a snub".
func otherKind(rd *reading.Reading, i, j int) bool {
	is, not := rd.TermAt(i), rd.TermAt(j)
	if i < 0 || is.Tree != nil || not.Tree != nil || rd.At(j+1).Fig != nil {
		return false
	}
	runs := is.Note == parser.LetRun || rd.At(i).Plays(parser.RunLength) || rd.At(i).Fig != nil && rd.At(i-1).Plays(parser.RunLength)
	return is.Shape != "" && not.Shape != "" && is.Shape != not.Shape ||
		is.Condition != "" && not.Condition != "" && is.Condition != not.Condition ||
		is.Strength != "" && not.Strength != "" && is.Strength != not.Strength ||
		runs && not.Note == parser.Snubbed
}

// kindAhead is the place behind what is denied at j where the other that is so may
// stand, by its own article: "not a limb, a log", "its not green, its dead". It is -1
// where none stands there.
func kindAhead(rd *reading.Reading, j int) int {
	k := j + 1
	if rd.At(k).Pause == 2 {
		k++
	}
	from := k
	for rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkPronoun) || rd.Cued(rd.At(k), lexicon.CueItIs) {
		k++
	}
	if k == from && rd.TermAt(j).Note != parser.Snubbed {
		return -1
	}
	return k
}

// asideBack is what is told before the talk that stands at i and before it, "4 today",
// "3 y".
func asideBack(rd *reading.Reading, i int) int {
	for rd.At(i).Pause == 0 && rd.At(i).Fig == nil && (rd.At(i).Polite() || rd.At(i).Marked(lexicon.MarkAnd)) {
		i--
	}
	return i
}

// lessServes says whether the number at i, or what it counts, is one of which the lesser
// is on the safe side: how many pull, what a piece may weigh, what gear bears. What is
// denied behind it stays denied, "somos 4 no 5".
func lessServes(rd *reading.Reading, i int) bool {
	if rd.At(i).Fig == nil {
		return rd.At(i).Plays(parser.People)
	}
	by := rd.At(rd.Back(i - 1))
	return by.Plays(parser.People) || by.Plays(parser.Limit) || by.Marked(lexicon.MarkBound|lexicon.MarkRating)
}

// otherNumber says whether a number is told, alone or with what it counts,
// and then another of its kind that has no place of its own: "3 wraps not 4".
func otherNumber(rd *reading.Reading, i, j int) bool {
	not := rd.At(j).Fig
	is := rd.At(i).Fig
	counts := is == nil && len(rd.TermAt(i).Roles) > 0
	if counts {
		is = rd.At(i - 1).Fig
	}
	switch {
	case is == nil || not == nil || is.Pair || not.Pair:
		return false
	case rd.TermAt(rd.Past(j-1, -1, lexicon.MarkMade)).Corrects && not.In(is) > is.High && !lessServes(rd, i) && !setsRight(rd, i) && !rd.TypedBefore(i, lexicon.CueNewly):
		return false // "14 pulgadas no 16" may put it right
	case counts && rd.At(i).Plays(parser.People) && rd.At(j+1).Plays(parser.People) && not.Unit == nil && not.Dim == parser.DimCount:
		return true // "two guys not one on the rope"
	case counts && not.Unit != nil, (counts || is.Unit != nil) && not.Unit == nil && len(rd.TermAt(j+1).Roles) > 0:
		return false // "22 ft, not 3 wraps"
	}
	return not.Unit == nil && not.Dim == parser.DimCount || not.Unit == is.Unit
}

// setsRight says whether the number at i is what puts another right that was told before in
// the talk, "perdón, eran 30 no 35": what is denied behind it is what it was.
func setsRight(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkArticle)
	was := rd.Cued(rd.At(k), lexicon.CueWas)
	if was && rd.TermAt(k-1).Apology {
		k--
	}
	return !rd.First && ((was || rd.TermAt(k).Apology) && begins(rd, k) || amended(rd, i))
}

// amended says whether the message begins with words that put right what was told before,
// "error mío: mide 60 cm no 70": what is denied behind the number at i is what it was.
func amended(rd *reading.Reading, i int) bool {
	for k := range i {
		if rd.Cued(rd.Elems[k], lexicon.CueAmends) {
			return begins(rd, k)
		}
	}
	return false
}

// pastWas is where what a number was meant to be stands from i on, behind "eran" and "it's".
func pastWas(rd *reading.Reading, i int) int {
	i = rd.Past(i, +1, lexicon.MarkIs|lexicon.MarkArticle)
	if rd.At(i).Polite() && rd.Cued(rd.At(i), lexicon.CueWas) {
		return rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkArticle)
	}
	return i
}

// deniedNumber reads "no son 3, son 4 vueltas" and "it's not 14, it's 16 in" at the
// word behind "not": the number right behind the next such word is what is so.
func deniedNumber(rd *reading.Reading, i int) bool {
	j := pastWas(rd, i)
	k := j + 1
	for rd.At(k).Pause == 2 || rd.At(k).Marked(lexicon.MarkPronoun) {
		k++
	}
	it := rd.Cued(rd.At(k), lexicon.CueItIs) // "not 14 in, its 16 in"
	if it {
		k++
	}
	if rd.Cued(rd.At(k), lexicon.CueMore) && rd.At(k+1).Marked(lexicon.MarkIs) {
		k++ // "not 600 lb more like 700 lb"
	}
	told := pastWas(rd, k)
	not, is := rd.At(j).Fig, rd.At(told).Fig
	if told == k && !it || not == nil || is == nil || not.Pair || not.Low == is.Low {
		return false
	}
	plain := is.Unit != nil || len(rd.TermAt(told+1).Roles) > 0 || !rd.First && rd.SaidOut(told+1) // "no eran 200, eran 250"
	return (not.Unit == nil && not.Dim == parser.DimCount || not.Unit != nil && not.Unit == is.Unit) && plain
}
