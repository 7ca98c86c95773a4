package wood

import "heft/calc/unit"

// water is the density that specific gravity refers to, kg/m³.
const water = 1000

// airDryMoisture is the moisture of wood in balance with outdoor air, percent
// of the oven-dry mass: the usual figure of wood tables (from memory).
const airDryMoisture = 12

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
	wood := water * r.WoodSG * (1 + woodMoisture/100)
	bark := water * r.BarkSG * (1 + barkMoisture/100)
	b := r.BarkOfWood / 100
	return unit.Density((wood + b*bark) / (1 + b))
}

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
