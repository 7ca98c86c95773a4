package bot

import "heft/parser"

// noun is what a crew calls a field.
var noun = map[parser.Field]string{
	parser.SpeciesField: "the tree", parser.ShapeField: "log or limb", parser.ConditionField: "green or dead",
	parser.Diameter: "the diameter", parser.ButtDiameter: "the butt diameter",
	parser.MidDiameter: "the middle diameter", parser.TipDiameter: "the tip diameter",
	parser.Length: "the length", parser.HitchHeight: "the hitch height", parser.Weight: "the weight",
	parser.Parts: "the parts of line", parser.People: "the people on the rope",
	parser.WinchPull: "the winch", parser.BlockAngle: "the angle at the block", parser.Wraps: "the wraps",
	parser.RopeBreak: "the rope's strength", parser.RopeLength: "the rope's length",
	parser.DropHeight: "the fall", parser.RunLength: "the run", parser.Limit: "the limit",
	parser.BlockHeight: "the block above the cut", parser.Tie: "the tie", parser.LimbAngle: "the limb's angle",
	parser.Efficiency: "the sheave efficiency",
}

func nouns[F ~string](fields []F) []string {
	out := make([]string, len(fields))
	for i, f := range fields {
		out[i] = noun[parser.Field(f)]
	}
	return out
}

// asTyped is how to type a field that is missing.
var asTyped = map[parser.Field]string{
	parser.SpeciesField: "red oak", parser.Diameter: "14 in", parser.ButtDiameter: "14 in",
	parser.Length: "22 ft long", parser.HitchHeight: "hitched at 35 ft",
}

var asTypedMetric = map[parser.Field]string{
	parser.SpeciesField: "red oak", parser.Diameter: "35 cm", parser.ButtDiameter: "35 cm",
	parser.Length: "7 m long", parser.HitchHeight: "hitched at 10 m",
}

// typed is how to type the fields, in the units that are being spoken.
func (s speaker) typed(fields []parser.Field) string {
	from := asTyped
	if s.metric {
		from = asTypedMetric
	}
	var out string
	for _, f := range fields {
		if from[f] == "" {
			continue
		}
		if out != "" {
			out += ", "
		}
		out += from[f]
	}
	return out
}
