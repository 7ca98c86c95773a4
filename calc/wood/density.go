package wood

import "heft/calc/unit"

// water is the density that specific gravity refers to, kg/m³.
const water = 1000

// airDryMoisture is the moisture of wood in balance with outdoor air, percent
// of the oven-dry mass: the usual figure of wood tables (from memory).
const airDryMoisture = 12

// wall is the specific gravity of wood without its pores: the usual figure of
// wood handbooks (from memory).
const wall = 1.54

// Green is the density of a green log over bark:
//
//	ρ = (ρw + b·ρb)/(1 + b),  ρw, ρb = 1000·SG·(1 + MC/100)
//
// in kg/m³, with SG the oven-dry mass over the green volume, MC the moisture
// in percent of the oven-dry mass, and b the bark volume as a fraction of the
// wood volume. It holds for sound green logs and stems; needles, leaves and
// rot are not in it.
//
// Errors: a single tree may lie 20 % off the mean of its species (US Forest
// Products Laboratory, Technical Note 218); means of a genus were up to 25 %
// too light for European trees (against the German guide to green log
// weights).
//
// Source: USDA Forest Service, reference species table and the biomass
// calculation that goes with it.
func (r Row) Green() unit.Density {
	return r.overBark(r.WoodMoisture, r.BarkMoisture)
}

// AirDry is the density over bark with wood and bark at 12 % moisture, in
// kg/m³, the volume as it was when green: shrinkage, up to about a tenth of
// the volume (from memory), is left out, which makes the figure light. It
// serves for the low end of a dead piece only, since a piece dead for long
// may still be wet.
func (r Row) AirDry() unit.Density {
	return r.overBark(min(r.WoodMoisture, airDryMoisture), min(r.BarkMoisture, airDryMoisture))
}

func (r Row) overBark(woodMoisture, barkMoisture float64) unit.Density {
	return r.withBark(unit.Density(water*r.WoodSG*(1+woodMoisture/100)), barkMoisture)
}

func (r Row) withBark(wood unit.Density, barkMoisture float64) unit.Density {
	bark := water * r.BarkSG * (1 + barkMoisture/100)
	b := r.BarkOfWood / 100
	return (wood + unit.Density(b*bark)) / unit.Density(1+b)
}

// Likely is the green density to expect, in kg/m³: Green, or that of the
// tree's own wood where it is the denser, with the moisture of the row as far
// as its pores hold it.
func (r Row) Likely() unit.Density {
	own := min(water*unit.Density(r.OwnSG*(1+r.WoodMoisture/100)), full(r.OwnSG))
	return max(r.Green(), r.withBark(own, r.BarkMoisture))
}

// Soaked is the density of the tree's own wood with every pore full of water:
//
//	ρ = 1000·(SG + 1 − SG/1.54)
//
// in kg/m³, with SG the oven-dry mass over the green volume; for a genus as a
// whole the heaviest of its species, and 0 where no OwnSG is known. No green
// wood is heavier. It stands for trees whose moisture nobody has published.
//
// Errors: bark is taken for as heavy as the wood; gum and gravel are not in it.
func (r Row) Soaked() unit.Density {
	if r.OwnSG == 0 {
		return r.soaked
	}
	return max(r.soaked, full(r.OwnSG))
}

// Unsure is the green density of a row that is an average, with no second
// table beside it; for a genus as a whole the heaviest of such species, and 0
// where there is none. It may be further off than a mean of the species.
func (r Row) Unsure() unit.Density {
	if r.Basis != GenusAverage && r.Basis != GroupDefault || r.Heavier > 0 {
		return r.unsure
	}
	return max(r.unsure, r.Green())
}

func full(sg float64) unit.Density { return unit.Density(water * (sg + 1 - sg/wall)) }

// Light is the lightest of the published means that apply to the row: its
// own, the second table's and, for a genus as a whole, those of its species.
func (r Row) Light() unit.Density {
	light := r.Green()
	if r.Heavier > 0 {
		light = min(light, r.Heavier)
	}
	if r.lightest > 0 {
		light = min(light, r.lightest)
	}
	return light
}

// Heavy is the heaviest of the published means that apply to the row: its
// own, the second table's and, for a genus as a whole, those of its species.
func (r Row) Heavy() unit.Density {
	return max(r.Green(), r.Heavier, r.heaviest)
}
