package parser

// tops takes "punta de abeto" for the top of a tree, which is a limb, where no
// number is the tip's and the cut is measured: "punta de abeto 20 pulgadas en
// el corte". Between "punta" and the tree stands "de", so that "rama de abeto
// de 14 pulgadas, punta de 6" stays what it is.
func (rd *reading) tops() {
	if rd.shaped() {
		return
	}
	for i, e := range rd.elems {
		if !e.plays(TipDiameter) || !rd.at(i+1).marked(markMade) || rd.at(i-1).fig != nil || rd.at(rd.past(i-1, -1, markArticle|markIn)).fig != nil {
			continue
		}
		if tree := rd.at(rd.past(i+2, +1, markArticle)); tree.term != nil && tree.term.tree != nil {
			rd.elems[i].term = &term{shape: Limb}
			return
		}
	}
}
