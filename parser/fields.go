package parser

// AcrossField is the field of how thick a piece is: a limb at its butt.
func AcrossField(limb bool) Field {
	if limb {
		return ButtDiameter
	}
	return Diameter
}

// Ratings are the strengths of gear, a break strength and a working load for
// each part of the chain.
var Ratings = []Field{
	RopeBreak, RopeWorking, BlockBreak, BlockWorking, SlingBreak, SlingWorking,
	ConnectorBreak, ConnectorWorking, DrumBreak, DrumWorking,
}
