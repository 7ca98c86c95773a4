package piece

import (
	"math"

	"heft/calc/unit"
	"heft/calc/wood"
)

// How far a weight may be off, as shares of it. Independent causes are
// combined as the root of the sum of their squares.
const (
	// One green tree against the mean of its species: up to 20 % (US Forest
	// Products Laboratory, Technical Note 218).
	treeToTree = 0.20
	// Diameters read from the ground are good to 5 %, and count twice
	// (common practice, no source).
	byEye = 0.10
	// A genus mean against the species: European trees came out up to 25 %
	// heavier in the German guide to green log weights, and hardly lighter.
	genusHeavier = 0.25
	genusLighter = 0.10
	// The default of all hardwoods or softwoods is no better to either side:
	// the species measured lie from a third below it to a third above.
	groupLighter = 0.25
	// A tree with a fifth more wood than its species weighs hardly more once
	// its pores are full: 7 % at the most, for the densest wood there is.
	soakedHeavier = 0.07
)

// densities finds what the wood allows, with the spread of tree, eye and
// average taken in, and notes what holds the ends apart.
func (p *Piece) densities(w *Weight) (light, likely, heavy unit.Density) {
	own, least, most := p.Wood.Green(), p.Wood.Light(), p.Wood.Heavy()
	w.Spread = append(w.Spread, TreeToTree, ByEye)
	w.noteAverages(&p.Wood, own, least, most)

	leastOwn := own
	likely = p.Wood.Likely()
	if p.Condition == Dead {
		dry := p.Wood.AirDry()
		leastOwn, least = dry, min(least, dry)
		likely = (dry + likely) / 2
		w.Spread = append(w.Spread, MaybeDry)
	}
	// Each published mean brings its own spread; the ends are the outermost.
	light = min(least*(1-combined(0)), leastOwn*(1-combined(lighterOfAverage(p.Wood.Basis, p.Wood.Heavier > 0))))
	heavy = max(most*(1+combined(0)), p.Wood.Unsure()*(1+combined(genusHeavier)), p.Wood.Soaked()*(1+bySoaking))
	return light, likely, heavy
}

// bySoaking is the spread of tree and eye where the wood is taken for soaked.
var bySoaking = unit.Density(math.Sqrt(soakedHeavier*soakedHeavier + byEye*byEye))

// combined is the spread of tree and eye and one further cause, independent
// of each other.
func combined(further float64) unit.Density {
	return unit.Density(math.Sqrt(treeToTree*treeToTree + byEye*byEye + further*further))
}

// lighterOfAverage is how far a tree may be lighter than the row's own figure
// because that is an average: not at all where it is the species' own, or where
// a second table stands beside it. What it may be heavier is with wood.Unsure.
func lighterOfAverage(basis wood.Basis, second bool) float64 {
	switch {
	case basis == wood.Species || basis == wood.AnyOfGroup || second:
		return 0
	case basis == wood.GenusAverage:
		return genusLighter
	}
	return groupLighter
}

// noteAverages notes what is behind the row's figures: its own mean, that of
// a second table or 0, and the least and most of all that apply.
func (w *Weight) noteAverages(row *wood.Row, own, least, most unit.Density) {
	second := row.Heavier
	switch {
	case row.Basis == wood.AnyOfGroup:
		w.Spread = append(w.Spread, AnyOfGroup)
		return
	case row.OwnSG > 0:
		w.Spread = append(w.Spread, NoMoisture)
	case row.Basis == wood.GenusAverage:
		w.Spread = append(w.Spread, GenusAverage)
	case row.Basis == wood.GroupDefault:
		w.Spread = append(w.Spread, GroupDefault)
	}
	// Within 1 % two tables say the same.
	if second > 0 && math.Abs(float64(second/own-1)) > 0.01 {
		w.Spread = append(w.Spread, SecondTable)
	}
	if most > max(own, second) || least < own && least != second {
		w.Spread = append(w.Spread, SpeciesOfGenus)
	}
}
