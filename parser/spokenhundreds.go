package parser

import "math"

// Who dictates leaves out the hundred: "log is two fifty", "pesa uno ochenta". Of a
// weight it is that; of a length it may be metres and centimetres, and "two fifty kilo
// logs" may be two: these stay asked about.

// spokenHundreds puts one number in the place of two that are spoken so.
func (rd *reading) spokenHundreds() {
	for i := 0; i+1 < len(rd.elems); i++ {
		a, b := rd.elems[i].fig, rd.elems[i+1].fig
		if !rd.runsOn(i) || !a.between(1, 9) || b.low != b.high || rd.text[a.end:b.start] != " " || !rd.weighedSo(i) {
			continue
		}
		scale := 1.0
		if b.unit != nil {
			scale = b.unit.factor
		}
		if n := math.Round(b.low / scale); n < 10 || n >= 100 || math.Abs(n*scale-b.low) > 1e-9 {
			continue
		}
		whole := *b
		whole.low, whole.start = b.low+100*a.low*scale, a.start
		whole.high = whole.low
		rd.join(i, i+2, &whole)
	}
}

// between says whether the number is a whole one without a unit, from one to another.
func (f *figure) between(least, most float64) bool {
	return f.dim == dimCount && f.unit == nil && f.low == f.high && f.low == float64(int(f.low)) && f.low >= least && f.low <= most
}

// weighedSo says whether the numbers at i and behind it are what something weighs: in
// pounds or kilograms, or where a word for it leads to them.
func (rd *reading) weighedSo(i int) bool {
	next := rd.at(i + 2)
	if next.fig != nil && next.pause == 0 && rd.at(i+1).pause == 0 {
		return false
	}
	if u := rd.elems[i+1].fig.unit; u != nil {
		one := rd.at(i-1).marked(markArticle) && rd.at(i+2).piece() && !rd.pluralAt(i+2)
		return (u == pound || u == unitNamed["kilogram"]) && (one || rd.endsBreath(i+2) || !next.piece() && next.part() == "" && !rd.termAt(i+2).unnamed)
	}
	if !rd.endsBreath(i+2) && (len(rd.termAt(i+2).roles) > 0 || next.piece() || next.part() != "" || rd.termAt(i+2).unnamed || next.marked(markUnit|markThick)) {
		return false
	}
	k := i - 1
	for rd.termAt(k).note == "about" || rd.at(k).marked(markIs) && !rd.at(k).plays(Weight) {
		k--
	}
	return rd.at(k).plays(Weight) || k < i-1 && (rd.at(k).piece() || rd.termAt(k).unnamed)
}
