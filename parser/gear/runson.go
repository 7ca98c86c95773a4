package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Which strength it is is said once before a list, and its unit with the first number:
// "rope WLL is 680 kg, block 1000 and strap 1500", "breaks: rope 9 t, sling 5 t". Where
// the word stands behind its number, "rope 16,000 lb break, sling 12,000 lb", it may be
// of that one alone, and the next is asked about.

// RunsOn is the gear and the strength that the number at i goes on with in such a list,
// and where its gear is named; "" where it does not.
func RunsOn(rd *reading.Reading, i int) (scan.Part, scan.Strength, int) {
	k := listed(rd, i)
	p := Part(rd.At(k))
	led := rd.Past(k-1, -1, lexicon.MarkArticle)
	sep := rd.At(led)
	if s := opens(rd, k-1); p != "" && s != "" && rd.EndsBreath(i+1) {
		return p, s, k
	}
	if p == "" || !rd.EndsBreath(i+1) || !(sep.Pause == 2 || sep.Marked(lexicon.MarkAnd)) {
		return "", "", -1
	}
	before := rd.Past(led, -1, lexicon.MarkAnd)
	for rd.At(before).Pause == 2 {
		before--
	}
	s := strengthOf(rd, before)
	if s == "" || !headed(rd, before, rd.At(i-1).Marked(lexicon.MarkAt)) || strings.HasPrefix(string(rd.At(before).Fig.Sure), string(p)) {
		return "", "", -1
	}
	return p, s, k
}

// opens is the strength whose word opens a list that ends at i: "WLLs: rope", "WLL rope".
func opens(rd *reading.Reading, i int) scan.Strength {
	if rd.Colon(i) {
		i--
	}
	if e := rd.At(i); i >= 0 && !e.Spent && !fromBehind(rd, i) {
		return Strength(e)
	}
	return ""
}

// InUnitOf gives the bare number at i the unit of the one before it in its list.
func InUnitOf(rd *reading.Reading, i, at int) {
	for k := at; k >= 0; k-- {
		if f := rd.Elems[k].Fig; f != nil {
			if fig := rd.Elems[i].Fig; fig.Unit == nil && fig.Dim == parser.DimCount {
				fig.Lent(f.Unit)
			}
			return
		}
	}
}

// listed goes back from the number at i over what links it to its gear.
func listed(rd *reading.Reading, i int) int {
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkIs) || rd.Colon(k) {
		k--
	}
	return k
}

// strengthOf is which strength the number at i was settled to be, "" for none.
func strengthOf(rd *reading.Reading, i int) scan.Strength {
	if rd.At(i).Fig == nil {
		return ""
	}
	sure := string(rd.At(i).Fig.Sure)
	for _, s := range []scan.Strength{lexicon.Working, lexicon.Breaking} {
		if strings.HasSuffix(sure, "_"+string(s)+"_n") {
			return s
		}
	}
	return ""
}

// headed says whether the word for the strength at i stands before it, or before the list
// that it goes on with. "Breaks at" is said of one, but for "and the rope at" behind it.
func headed(rd *reading.Reading, i int, at bool) bool {
	k := i - 1
	for ; k >= 0; k-- {
		e := rd.Elems[k]
		switch {
		case Strength(e) != "":
			return Strength(rd.At(i+1)) == "" && !fromBehind(rd, k) && (at || !e.Term.Leads)
		case e.Fig != nil && strengthOf(rd, k) == "", e.Fig == nil && Part(e) == "" && e.Pause == 0 && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAnd|lexicon.MarkRating):
			return false
		}
	}
	return false
}

// fromBehind says whether the word for a strength at i stands behind a number of its own.
func fromBehind(rd *reading.Reading, i int) bool {
	f := rd.At(i - 1).Fig
	return f != nil && Rates(f)
}
