package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews put the unit right alone, and say its number no second time: "350 kilos no wait
// lbs", "350, sorry, kilos". The answer says how the number was read.

// UnitsAnew gives the number right before words that take back the unit behind them. Where
// the number is told with its unit further on, "no hang on thats feet, i meant metres. 12
// m", those words say nothing more.
func UnitsAnew(rd *reading.Reading) {
	for i := range rd.Elems {
		c, u := unitBack(rd, i)
		if c < 0 {
			continue
		}
		p := c - 1
		for rd.At(p).Pause == 2 || rd.Cued(rd.At(p), lexicon.CueOneself) {
			p--
		}
		switch fig := rd.At(p).Fig; {
		case fig != nil && !fig.Pair && fig.Unit != u && (fig.Unit == nil && bareCount(rd, p) || fig.Unit != nil && fig.Unit.Dim == u.Dim):
			measureBy(rd, p, i, u)
		case !toldBy(rd, i, u):
			continue
		}
		end := i + 1
		if denied := rd.At(i + 2); rd.TermAt(i+1).Denies && denied.Marked(lexicon.MarkUnit) && denied.Fig == nil {
			end = i + 3 // "kilos not pounds"
		}
		for k := c; k < end; k++ {
			rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{Chatter: true}}
		}
	}
}

// unitBack finds the words of taking back that lead to the unit at i, and the unit; -1 where
// it stands with a number of its own, or is what an answer is wanted in.
func unitBack(rd *reading.Reading, i int) (c int, u *scan.UnitWord) {
	e := rd.Elems[i]
	u = rd.In.Units[rd.Word(e)]
	if e.Fig != nil || !e.Marked(lexicon.MarkUnit) || u == nil || u.Unsure || !endsUnit(rd, i) {
		return -1, nil
	}
	c = rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkArticle)
	for rd.Cued(rd.At(c), lexicon.CueItIs) {
		c--
	}
	if rd.At(c).Pause == 2 && c+1 == i {
		c--
	}
	if t := rd.TermAt(c); !t.Corrects || t.Lacks || t.Denies || t.Ask == "" && !t.Apology {
		return -1, nil // "350 kg, no pounds" may deny them
	}
	return c, u
}

// endsUnit says whether nothing behind the unit at i could be of it: the breath ends there,
// or another unit is denied, "sorry kilos not pounds".
func endsUnit(rd *reading.Reading, i int) bool {
	return rd.EndsBreath(i+1) || rd.TermAt(i+1).Denies || rd.TermAt(i+1).Corrects || rd.TermAt(i+1).Intent != ""
}

// bareCount says whether the number at p has no unit, and counts nothing.
func bareCount(rd *reading.Reading, p int) bool {
	return rd.Elems[p].Fig.Unit == nil && !CountedBy(rd, p+1) && rd.Elems[p].Fig.Told == ""
}

// measureBy tells the number at p by the unit at i.
func measureBy(rd *reading.Reading, p, i int, u *scan.UnitWord) {
	fig := rd.Elems[p].Fig
	words, number := fig.Words(rd.Text), fig.Words(rd.Text)
	if old := fig.Unit; old != nil {
		fig.Low, fig.High, fig.Unit = fig.Low/old.Factor, fig.High/old.Factor, nil
		if at := strings.LastIndexAny(number, "0123456789½¼¾"); at >= 0 {
			number = number[:at+1]
		}
	}
	fig.Lent(u)
	rd.Fixes = append(rd.Fixes, parser.Fix{Words: words, As: strings.TrimSpace(number) + " " + rd.Word(rd.Elems[i])})
}

// toldBy says whether a number behind the unit at i, or the unit behind it, says how it is
// measured: in that unit, or in another of its kind behind more words of taking back.
func toldBy(rd *reading.Reading, i int, u *scan.UnitWord) bool {
	return rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return k > i && fig != nil && fig.Unit != nil && fig.Unit.Dim == u.Dim && fig.Unit.Fine == u.Fine
	})
}
