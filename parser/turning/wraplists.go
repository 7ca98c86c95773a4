package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A crew that cannot agree tells each count, "one wrap, two wraps, three wraps, what's
// yours": how many it takes is what is answered, and none of them is on the drum.

// WrapLists passes over such counts and asks how many it takes.
func WrapLists(rd *reading.Reading) {
	const least = 3 // two may be what is on and what was
	for i := range rd.Elems {
		n, end := 0, i
		for k := i; wrapsAt(rd, k) && !toldAgain(rd, i, k); {
			n, end = n+1, k+2
			k = end
			for rd.At(k).Pause == 2 || rd.At(k).Marked(lexicon.MarkAnd) || rd.TermAt(k).Note == "about" {
				k++
			}
		}
		if n < least {
			continue
		}
		e := reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[end-1].End, Term: &scan.Term{Intent: parser.AskLower}}
		rd.Pass(i, end, e)
		return
	}
}

// wrapsAt says whether a bare count of wraps stands at i.
func wrapsAt(rd *reading.Reading, i int) bool {
	fig, next := rd.At(i).Fig, rd.At(i+1)
	return fig != nil && fig.Unit == nil && fig.Dim == parser.DimCount && next.Fig == nil && next.Plays(parser.Wraps)
}

// toldAgain says whether the count at k stands before it, from i on.
func toldAgain(rd *reading.Reading, i, k int) bool {
	for n := i; n < k; n++ {
		if wrapsAt(rd, n) && rd.Elems[n].Fig.Low == rd.Elems[k].Fig.Low {
			return true
		}
	}
	return false
}
