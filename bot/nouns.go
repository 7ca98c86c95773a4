package bot

import (
	"slices"
	"strings"

	"heft/calc/limits"
	"heft/parser"
)

// noun is what a crew calls a field.
var noun = map[parser.Field]string{
	parser.SpeciesField: "the tree", parser.ShapeField: "log or limb", parser.ConditionField: "green or dead",
	parser.Diameter: "the diameter", parser.ButtDiameter: "the butt diameter",
	parser.MidDiameter: "the middle diameter", parser.TipDiameter: "the tip diameter",
	parser.Length: "the length", parser.HitchHeight: "the hitch height", parser.Weight: "the weight",
	parser.Parts: "the parts of line", parser.People: "the people on the rope",
	parser.WinchPull: "the winch", parser.BlockAngle: "the angle at the block", parser.Wraps: "the wraps",
	parser.RopeBreak: "the rope's strength", parser.RopeLength: "the rope's length", parser.SecondRope: "the other rope's length", parser.RopeDiameter: "the rope's thickness",
	parser.DropHeight: "the fall", parser.BlockBelow: "how far the block is below the cut", parser.HitchAbove: "how far the hitch is above the cut", parser.HitchToBlock: "how far the block is below the hitch", parser.MiddleAbove: "how far the middle is above the block", parser.RunLength: "the run", parser.Limit: "the limit", parser.LongestPiece: "the longest piece",
	parser.BlockHeight: "the block above the cut", parser.Tie: "the tie from the cut", parser.TieAlong: "the tie", parser.PieceHeight: "the piece's height", parser.LimbAngle: "the limb's angle",
	parser.Efficiency: "the sheave efficiency", parser.LineOut: "the line out", parser.Sideways: "how far to the side",
	parser.StartAngle: "the line's angle", parser.Turn: "how far the rope turns at each block named", parser.Redirects: "the redirects", parser.PersonPull: "what each pulls",
	parser.DrumAway: "the drum's distance from the tree", parser.Tail: "the tail", parser.LandsOut: "how far out it lands", parser.DrumAcross: "the drum's diameter", parser.TrunkAcross: "the trunk's diameter at the block",
	parser.BlockBehind: "the block behind the hinge", parser.BlockOut: "the block out toward the limb", parser.Closed: "the length of the tackle closed",
	parser.Apart: "how far apart the blocks are", parser.Rise: "how far it comes up", parser.LoadHeight: "how high the load is tied", parser.CutHeight: "how high the cut is",
	parser.RopeWorking: "the rope's working load", parser.BlockBreak: "the block's strength", parser.BlockWorking: "the block's working load",
	parser.SlingBreak: "the sling's strength", parser.SlingWorking: "the sling's working load",
	parser.ConnectorBreak: "the shackle's strength", parser.ConnectorWorking: "the shackle's working load",
	parser.DrumBreak: "the drum's strength", parser.DrumWorking: "the drum's working load",
	parser.DesignFactor: "the design factor", parser.Legs: "the sling's legs",
	parser.ChokeAngle: "the choke's angle", parser.Payload: "the payload",
	parser.SecondTie: "the second tie from the cut", parser.LegAngle: "the legs' angle above level", parser.SecondLeg: "the second leg's angle",
	parser.Alike: "how many pieces", parser.Lines: "how many lines", parser.Strands: "the rope's strands",
	parser.SideBranch: "the side branch's weight", parser.SideBranchOut: "how far the side branch sticks out",
	parser.ObstacleOut: "how far past the block it stands", parser.ObstacleHeight: "how high it reaches",
	slingHeight: "how high the sling is", hangOut: "how far out it hangs",
}

// called is what a crew calls a quantity of the calculator, also one that
// nobody says.
func (s speaker) called(q limits.Quantity) string {
	if n := noun[parser.Field(q)]; n != "" {
		return s.word(n)
	}
	return s.word(calculated[q])
}

// calculated are the quantities that only the calculator speaks of.
var calculated = map[limits.Quantity]string{
	limits.Tension: "the pull on the line", limits.WorkingLoad: "the working load",
	limits.BalancePoint: "the balance point", limits.Offset: "the block's offset",
	limits.PersonPull: "the pull of one person", limits.Redirects: "the redirects", limits.Turn: "the turn of the rope",
	limits.Side: "the side", limits.SecondTie: "the second tie", limits.Sideways: "how far to the side",
	limits.Stiffness: "the rope's stretch", limits.Obstacle: "the obstacle", limits.ObstacleTop: "the top of the obstacle",
	limits.DesignFactor: "the design factor", limits.LineShare: "the share of the line", limits.Lever: "how far out it hangs",
	limits.Legs: "the legs", limits.LegAngle: "the angle of the legs", limits.ChokeAngle: "the angle of the choke",
}

func nouns[F ~string](s speaker, fields []F) []string {
	out := make([]string, len(fields))
	for i, f := range fields {
		out[i] = s.word(noun[parser.Field(f)])
	}
	return out
}

// asTyped is how to type a field that is missing.
var asTyped = map[parser.Field]string{
	parser.SpeciesField: "red oak", parser.Diameter: "14 in", parser.ButtDiameter: "14 in", parser.TipDiameter: "tip 8 in", parser.RopeDiameter: "0.5 in rope",
	parser.Length: "22 ft long", parser.HitchHeight: "hitched at 35 ft",
	parser.Parts: "2:1", parser.Limit: "limit 600 lb", parser.LimbAngle: "20° above level",
	parser.Tie: "tied 12 ft from the cut", parser.BlockHeight: "block 20 ft above the cut",
	parser.RunLength:  "let it run 6 ft",
	parser.BlockBelow: "block 1 ft below the cut", parser.DropHeight: "drop 4 ft", parser.RopeBreak: "16,000 lb break", parser.RopeLength: "60 ft of rope",
	parser.BlockWorking: "block 4,000 lb WLL", parser.ConnectorWorking: "shackle 6,500 lb WLL", parser.DrumWorking: "drum 2,000 lb WLL",
	parser.SlingBreak: "sling 10,000 lb break", parser.Payload: "truck takes 8,000 lb",
	parser.SecondTie: "tip line at 15 ft", parser.LegAngle: "legs at 45°", parser.SideBranch: "150 lb side branch",
	parser.SideBranchOut: "side branch sticking out 6 ft",
	parser.ObstacleOut:   "roof 12 ft past the block", parser.ObstacleHeight: "roof 14 ft high",
	parser.PieceHeight: "piece at 30 ft", parser.LineOut: "15 ft of line out", parser.Sideways: "8 ft to the side", parser.Weight: "600 lb",
	parser.Turn: "rope turns 30° at the redirect", parser.TrunkAcross: "20 in trunk",
	parser.Apart: "blocks 16 ft apart", parser.Rise: "10 ft of rise", parser.LoadHeight: "limb tied at 30 ft", parser.CutHeight: "cut at 30 ft",
	parser.DrumAway: "drum 20 ft from the tree", parser.Tail: "30 ft of tail", parser.People: "3 people", parser.Wraps: "3 wraps",
	slingHeight: "sling 3 ft up", hangOut: "3 ft out from the trunk",
}

var asTypedMetric = map[parser.Field]string{
	parser.SpeciesField: "red oak", parser.Diameter: "35 cm", parser.ButtDiameter: "35 cm", parser.TipDiameter: "tip 20 cm", parser.RopeDiameter: "13 mm rope",
	parser.Length: "7 m long", parser.HitchHeight: "hitched at 10 m",
	parser.Parts: "2:1", parser.Limit: "limit 300 kg", parser.LimbAngle: "20° above level",
	parser.Tie: "tied 4 m from the cut", parser.BlockHeight: "block 6 m above the cut",
	parser.RunLength:  "let it run 2 m",
	parser.BlockBelow: "block 0.3 m below the cut", parser.DropHeight: "drop 1 m", parser.RopeBreak: "70 kN break", parser.RopeLength: "20 m of rope",
	parser.BlockWorking: "block 20 kN WLL", parser.ConnectorWorking: "shackle 3,250 kg WLL", parser.DrumWorking: "drum 1,000 kg WLL",
	parser.SlingBreak: "sling 45 kN break", parser.Payload: "truck takes 3500 kg",
	parser.SecondTie: "tip line at 5 m", parser.LegAngle: "legs at 45°", parser.SideBranch: "70 kg side branch",
	parser.SideBranchOut: "side branch sticking out 2 m",
	parser.ObstacleOut:   "roof 4 m past the block", parser.ObstacleHeight: "roof 4 m high",
	parser.PieceHeight: "piece at 9 m", parser.LineOut: "5 m of line out", parser.Sideways: "2 m to the side", parser.Weight: "300 kg",
	parser.Turn: "rope turns 30° at the redirect", parser.TrunkAcross: "50 cm trunk",
	parser.Apart: "blocks 5 m apart", parser.Rise: "3 m of rise", parser.LoadHeight: "limb tied at 9 m", parser.CutHeight: "cut at 9 m",
	parser.DrumAway: "drum 6 m from the tree", parser.Tail: "9 m of tail", parser.People: "3 people", parser.Wraps: "3 wraps",
	slingHeight: "sling 1 m up", hangOut: "1 m out from the trunk",
}

// typed is how to type the fields, in the units that are being spoken.
func (s speaker) typed(fields []parser.Field) string {
	from := asTyped
	if s.metric {
		from = asTypedMetric
	}
	var out []string
	for _, f := range fields {
		if from[f] != "" {
			out = append(out, s.word(from[f]))
		}
	}
	return strings.Join(out, ", ")
}

// slingHeight is what the hitch height is called of an anchor: how high a sling
// goes round its stem.
const slingHeight parser.Field = "sling-height"

// hangOut is what the tie is called of one: how far from the trunk it is loaded.
const hangOut parser.Field = "hang-out"

// calledHere are the fields by what this question calls them.
func (a *answer) calledHere(fields []parser.Field) []parser.Field {
	out := slices.Clone(fields)
	for i, f := range out {
		switch {
		case a.question.Intent != parser.AskAnchor:
		case f == parser.HitchHeight:
			out[i] = slingHeight
		case f == parser.Tie:
			out[i] = hangOut
		}
	}
	return out
}
