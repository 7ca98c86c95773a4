package parser

// A sling or a shackle is called by its size: "eslinga de 2 pulgadas", "3/4 shackle".
// What it carries stands on its label, so that the size is left out and said back.

// gearSizes leaves out such sizes, which no piece has.
func (rd *reading) gearSizes() {
	const widest = 4 * 0.0254
	for i := 0; i < len(rd.elems); i++ {
		fig := rd.elems[i].fig
		small := fig != nil && !fig.pair && (fig.unit == nil && rd.fraction(fig) || fig.dim == dimLength && fig.unit.fine && fig.high <= widest)
		if small && fig.told == "" && fig.claimed == "" && rd.sizesGear(i) {
			rd.pass(i, i+1)
			i--
		}
	}
}

// sizesGear says whether the number at i stands right before a sling or a connector, or
// right behind it, where it ends or its strength follows. The size of a piece has no
// gear beside it: "3 in limb, sling WLL 3200 lb".
func (rd *reading) sizesGear(i int) bool {
	gear := func(k int) bool {
		part := rd.at(k).part()
		return (part == partSling || part == partConnector) && rd.at(k).fig == nil
	}
	if rd.at(i-1).cross || rd.at(i+1).cross {
		return false
	}
	behind := gear(rd.past(i-1, -1, markMade|markArticle)) && (rd.endsBreath(i+1) || rd.at(i+1).strength() != "" || rd.heavy(i+1) || rd.at(i+1).marked(markWhere))
	return behind || gear(i+1)
}
